import type { Label } from "../../core/label/label.ts";
import type { VolumeStyle } from "../words/format.ts";
import { sayLater } from "../words/say-later.ts";
import "./label-card.css";

export interface LabelCardProps {
  readonly label: Label;
  /** The bottle it goes on, ml; none where bottles are not known yet. */
  readonly size?: number | undefined;
  readonly style: VolumeStyle;
}

/** The label of one bottle as it prints: black on white, the use-by first to be seen. */
export function LabelCard({ label, size, style }: LabelCardProps) {
  const words = sayLater.label;
  const useBy = words.useBy(label);
  return (
    <article class="label-card" aria-label={words.card}>
      <h2 class="label-card-name">{label.name}</h2>
      <p class="label-card-use-by">
        <span>{useBy.term}</span> <strong>{useBy.says}</strong>
      </p>
      <dl class="label-card-rows">
        {words.rows(label, size, style).map(({ term, says }) => (
          <div class="label-card-row" key={term}>
            <dt>{term}</dt>
            <dd>{says}</dd>
          </div>
        ))}
      </dl>
      <p class="label-card-contains">{words.contains(label.allergens)}</p>
      <ul class="label-card-cautions">
        {label.cautions.map((code) => (
          <li key={code}>{sayLater.cautions.short(code)}</li>
        ))}
      </ul>
    </article>
  );
}
