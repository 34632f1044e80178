import { useState } from "preact/hooks";
import { type VesselLabel, vesselLabelOf } from "../../core/label/vessel-label.ts";
import { printPage } from "../device/print.ts";
import { moment } from "../label/moment.ts";
import { LinkButton } from "../parts/link-button.tsx";
import { TapButton } from "../parts/tap-button.tsx";
import { routes } from "../routes.ts";
import { runOf } from "../state.ts";
import { sayLater } from "../words/say-later.ts";
import { stepTitle } from "../words/step-title.ts";
import "./vessel.css";

/** The label as it prints: what it is, and when it is due, to be read from where it stands. */
function Card({ label }: { readonly label: VesselLabel }) {
  const { batch, name, step, since, dueAt, stands, allergens } = label;
  const words = sayLater.vessel;
  return (
    <article class="vessel-card" aria-label={words.card}>
      <h2 class="vessel-batch">{batch}</h2>
      <p class="vessel-name">{name}</p>
      <p class="vessel-due">
        <span>
          {stepTitle(step)}. {words.due}
        </span>{" "}
        <strong>{moment(dueAt)}</strong>
      </p>
      {stands !== "counter" && <p class="vessel-keep">{words.keep[stands]}</p>}
      <p>{words.since(moment(since))}</p>
      <p>{sayLater.label.contains(allergens)}</p>
      <p class="vessel-watched">{words.watched}</p>
    </article>
  );
}

/** What to print for a vessel that waits, and what to write on it where there is no printer. */
export function VesselScreen({ id }: { readonly id: string }) {
  const [printed, setPrinted] = useState(true);
  const words = sayLater.vessel;
  const run = runOf(id);
  const label = run && vesselLabelOf(run);
  return (
    <main class="vessel">
      <LinkButton tone="quiet" href={routes.run(id)}>
        {words.back}
      </LinkButton>
      <h1>{words.title}</h1>
      {label === undefined ? (
        <p>{words.none}</p>
      ) : (
        <>
          <div class="vessel-sheet">
            <Card label={label} />
          </div>
          <TapButton onAct={() => setPrinted(printPage())}>{words.print}</TapButton>
          {!printed && <p role="status">{words.cannotPrint}</p>}
          <LinkButton href={routes.label(id)}>{words.otherPaper}</LinkButton>
          <p>{words.byHand}</p>
          <p class="vessel-line">
            {words.line(label.batch, stepTitle(label.step), moment(label.dueAt))}
          </p>
          <p class="soft">{words.moves}</p>
        </>
      )}
    </main>
  );
}
