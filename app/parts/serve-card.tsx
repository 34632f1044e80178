import type { ServeCard as Card } from "../../core/label/serve-card.ts";
import type { VolumeStyle } from "../words/format.ts";
import { sayLater } from "../words/say-later.ts";
import "./serve-card.css";

export interface ServeCardProps {
  readonly card: Card;
  readonly style: VolumeStyle;
}

/** How one drink is served, as it prints for whoever is on shift. */
export function ServeCard({ card, style }: ServeCardProps) {
  const words = sayLater.label;
  return (
    <article class="serve-card" aria-label={words.serveCard}>
      <h2 class="serve-card-name">
        {card.name} <span class="serve-card-batch">{card.batch}</span>
      </h2>
      <dl class="serve-card-rows">
        {words.serveRows(card, style).map(({ term, says }) => (
          <div class="serve-card-row" key={term}>
            <dt>{term}</dt>
            <dd>{says}</dd>
          </div>
        ))}
      </dl>
      <p class="serve-card-contains">
        <strong>{words.contains(card.allergens)}</strong> {words.garnishNote}
      </p>
    </article>
  );
}
