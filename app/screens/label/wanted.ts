import { labelOf } from "../../../core/label/label.ts";
import type { Content } from "../../../core/label/lay-out.ts";
import { serveCardOf } from "../../../core/label/serve-card.ts";
import { vesselLabelOf } from "../../../core/label/vessel-label.ts";
import type { Run } from "../../../core/run/run.ts";
import { bottleContent, serveContent, vesselContent } from "../../label/content.ts";
import { type VolumeStyle, volume } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";

export const KINDS = ["bottle", "serve", "vessel"] as const;

/** What can be printed of a batch. */
export type Kind = (typeof KINDS)[number];

/** One thing to print: what it says, and how many there are to be without a number given. */
export interface Wanted {
  readonly title: string;
  readonly content: Content;
  readonly each: number;
}

/** What a batch has to print of a kind; nothing of a serve or a wait that there is not. */
export function wantedOf(run: Run, kind: Kind, style: VolumeStyle): readonly Wanted[] {
  const words = sayLater.label;
  switch (kind) {
    case "bottle": {
      const label = labelOf(run);
      const unknown = { count: 1, size: undefined };
      const bottles = label.bottles.length === 0 ? [unknown] : label.bottles;
      return bottles.map(({ count, size }) => ({
        title: size === undefined ? "" : words.copies(count, volume(size, style)),
        content: bottleContent(label, size, style),
        each: count,
      }));
    }
    case "serve": {
      const card = serveCardOf(run);
      return card ? [{ title: "", content: serveContent(card, style), each: 1 }] : [];
    }
    case "vessel": {
      const label = vesselLabelOf(run);
      return label ? [{ title: "", content: vesselContent(label), each: 1 }] : [];
    }
  }
}
