import { useState } from "preact/hooks";
import { type Label, labelOf } from "../../core/label/label.ts";
import { serveCardOf } from "../../core/label/serve-card.ts";
import { LabelCard } from "../parts/label-card.tsx";
import { LinkButton } from "../parts/link-button.tsx";
import { ServeCard } from "../parts/serve-card.tsx";
import { routes } from "../routes.ts";
import { runOf, settings } from "../state.ts";
import { volume } from "../words/format.ts";
import { sayLater } from "../words/say-later.ts";
import { Acts, type Paper } from "./label/act.tsx";
import "./label.css";

/** One label for each size of bottle. */
function Labels({ label }: { readonly label: Label }) {
  const style = settings.value;
  const { bottles } = label;
  if (bottles.length === 0) return <LabelCard label={label} style={style} />;
  return (
    <>
      {bottles.map(({ count, size }) => (
        <div class="label-one" key={`${count}x${size}`}>
          <p class="label-copies">{sayLater.label.copies(count, volume(size, style))}</p>
          <LabelCard label={label} size={size} style={style} />
        </div>
      ))}
    </>
  );
}

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
      </ul>
    </section>
  );
}

/** The label and the serve card of a batch, as they print. */
export function LabelScreen({ id }: { readonly id: string }) {
  const [paper, setPaper] = useState<Paper>("roll");
  const run = runOf(id);
  const words = sayLater.label;
  if (run === undefined) {
    return (
      <main class="label">
        <p class="label-lost">{words.lost}</p>
        <LinkButton href={routes.shelf}>{words.toShelf}</LinkButton>
      </main>
    );
  }
  const label = labelOf(run);
  const serve = serveCardOf(run);
  const style = settings.value;
  return (
    <main class="label">
      <h1>{words.title}</h1>
      {!label.bottled && <p class="label-planned">{words.planned}</p>}
      <div class="label-sheet" data-paper={paper}>
        <Labels label={label} />
        {serve === undefined ? (
          <p class="label-copies">{words.noServe}</p>
        ) : (
          <ServeCard card={serve} style={style} />
        )}
      </div>
      <Acts
        title={words.shareTitle(label.name, label.batch)}
        text={words.asText(label, serve, style)}
        paper={paper}
        onPaper={setPaper}
      />
      <Meanings label={label} />
      <p class="label-ways">
        <LinkButton href={routes.shelf}>{words.toShelf}</LinkButton>
        <LinkButton href={routes.batch(id)}>{words.toLog}</LinkButton>
      </p>
    </main>
  );
}
