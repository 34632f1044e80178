import { type Label, labelOf } from "../../core/label/label.ts";
import { LinkButton } from "../parts/link-button.tsx";
import { routes } from "../routes.ts";
import { runOf } from "../state.ts";
import { sayLater } from "../words/say-later.ts";
import { Printing } from "./label/printing.tsx";
import "./label.css";
import "./label/low.css";

function Meanings({ label }: { readonly label: Label }) {
  const words = sayLater.label;
  return (
    <section class="label-means">
      <h2>{words.means}</h2>
      <ul class="label-list">
        {label.cautions.map((code) => (
          <li key={code}>{sayLater.cautions.full(code)}</li>
        ))}
        <li>{words.strengthRule}</li>
        <li>{words.allergenRule}</li>
        <li>{words.sizeRule}</li>
      </ul>
    </section>
  );
}

const WayBack = () => (
  <LinkButton tone="quiet" href={routes.shelf}>
    {sayLater.label.toShelf}
  </LinkButton>
);

/** The label, the serve card and the vessel's label of a batch, as they print. */
export function LabelScreen({ id }: { readonly id: string }) {
  const run = runOf(id);
  const words = sayLater.label;
  if (run === undefined) {
    return (
      <main class="label">
        <WayBack />
        <p class="label-lost">{words.lost}</p>
      </main>
    );
  }
  const label = labelOf(run);
  return (
    <main class="label">
      <WayBack />
      <h1>{words.title}</h1>
      {!label.bottled && <p class="label-planned">{words.planned}</p>}
      <Printing run={run} />
      <Meanings label={label} />
      <LinkButton href={routes.batch(id)}>{words.toLog}</LinkButton>
    </main>
  );
}
