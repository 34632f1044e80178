import { cautionRank } from "../../core/label/caution-rank.ts";
import type { Label } from "../../core/label/label.ts";
import { type Content, NOTE_RANK } from "../../core/label/lay-out.ts";
import type { ServeCard } from "../../core/label/serve-card.ts";
import type { Part } from "../../core/label/set-part.ts";
import type { VesselLabel } from "../../core/label/vessel-label.ts";
import type { VolumeStyle } from "../words/format.ts";
import { sayLater } from "../words/say-later.ts";
import { stepTitle } from "../words/step-title.ts";
import { moment } from "./moment.ts";

/** A figure and its unit are never parted. */
const whole = (text: string): string => text.replaceAll(" ", "\u00a0");

const NEEDED = 0;
const MADE_RANK = 2;

const allergens = (some: Label["allergens"]): Part => ({
  key: "contains",
  look: "barred",
  text: sayLater.label.contains(some),
  rank: NEEDED,
});

/** What a bottle's label says. `size` in ml, where it is known. */
export function bottleContent(label: Label, size: number | undefined, style: VolumeStyle): Content {
  const words = sayLater.label;
  const useBy = words.useBy(label);
  const [batch, made, strength, bottle] = words.rows(label, size, style);
  const figures = [strength, bottle].flatMap((row) => (row === undefined ? [] : whole(row.says)));
  const cautions = label.cautions.map((code, at): Part => {
    const look = code === "keep-cold" ? "strong" : "plain";
    const text = sayLater.cautions.short(code);
    return { key: code, look, text, joins: at > 0, rank: cautionRank(code) };
  });
  return {
    parts: [
      { key: "name", look: "title", text: label.name, rank: NEEDED },
      { key: "use-by", look: "boxed", lead: useBy.term, text: useBy.says, rank: NEEDED },
      { key: "batch", look: "strong", lead: batch?.term ?? "", text: label.batch, rank: NEEDED },
      {
        key: "strength",
        look: "strong",
        text: figures.join(" ·\u00a0"),
        joins: true,
        rank: NEEDED,
      },
      allergens(label.allergens),
      ...cautions.filter(({ rank }) => rank === NEEDED),
      {
        key: "made",
        look: "strong",
        lead: made?.term ?? "",
        text: made?.says ?? "",
        rank: MADE_RANK,
      },
      ...cautions.filter(({ rank }) => rank !== NEEDED),
    ],
  };
}

/** What a serve card says. */
export function serveContent(card: ServeCard, style: VolumeStyle): Content {
  const words = sayLater.label;
  const rows = words.serveRows(card, style).map(
    ({ term, says }): Part => ({
      key: term,
      look: "strong",
      lead: term,
      text: says,
      rank: NEEDED,
    }),
  );
  return {
    parts: [
      { key: "name", look: "title", text: card.name, rank: NEEDED },
      { key: "batch", look: "plain", text: card.batch, rank: NEEDED },
      ...rows,
      allergens(card.allergens),
      { key: "garnish", look: "plain", text: words.garnishNote, rank: NEEDED },
    ],
  };
}

const TO_WRITE_ON = "_".repeat(14);

/** What stands on a vessel that waits. */
export function vesselContent(label: VesselLabel): Content {
  const words = sayLater.vessel;
  const { stands } = label;
  const keep: readonly Part[] =
    stands === "counter"
      ? []
      : [{ key: "keep", look: "strong", text: words.keep[stands], rank: NEEDED }];
  const watched = `${words.watched} ${TO_WRITE_ON}`;
  return {
    parts: [
      { key: "batch", look: "title", text: label.batch, rank: NEEDED },
      { key: "name", look: "strong", text: label.name, rank: NEEDED },
      { key: "step", look: "plain", text: stepTitle(label.step), rank: NEEDED },
      { key: "due", look: "boxed", lead: words.due, text: moment(label.dueAt), rank: NEEDED },
      ...keep,
      allergens(label.allergens),
      { key: "since", look: "plain", text: words.since(moment(label.since)), rank: MADE_RANK },
      { key: "watched", look: "plain", text: watched, rank: NOTE_RANK },
    ],
  };
}
