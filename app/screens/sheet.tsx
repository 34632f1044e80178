import { safetyClockOf } from "../../core/board/safety-clock.ts";
import { type ControlSheet, controlSheetOf } from "../../core/logbook/control-sheet.ts";
import { stepOf } from "../../core/method/procedure.ts";
import { bottledOf, endingOf, type Run } from "../../core/run/run.ts";
import { printPage } from "../device/print.ts";
import { LinkButton } from "../parts/link-button.tsx";
import { TapButton } from "../parts/tap-button.tsx";
import { routes } from "../routes.ts";
import { now, runOf } from "../state.ts";
import { degreesRead } from "../words/degrees.ts";
import { dateYear, duration, stampTime } from "../words/format.ts";
import { ingredientOf } from "../words/ingredient-of.ts";
import { named } from "../words/joined.ts";
import { say } from "../words/say.ts";
import { sayLater } from "../words/say-later.ts";
import { stepTitle } from "../words/step-title.ts";
import { NoteHands, NoteLot, NoteTemperature } from "./sheet/forms.tsx";
import "./sheet.css";

const words = sayLater.sheet;

function Head({ run }: { readonly run: Run }) {
  const ended = endingOf(run);
  const bottled = bottledOf(run);
  const clock = safetyClockOf(run, now.value);
  const facts = [
    [words.spec, run.plan.spec.name],
    [words.batch, run.batch],
    [words.started, stampTime(run.startedAt)],
    [words.ended, ended === undefined ? words.running : stampTime(ended.at)],
    ...(bottled === undefined ? [] : [[words.useBy, dateYear(bottled.useBy)]]),
    [words.warm, clock === undefined ? words.none : duration(clock.warmFor)],
  ];
  return (
    <dl class="sheet-facts">
      {facts.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

interface SheetProps {
  readonly run: Run;
  readonly sheet: ControlSheet;
}

function Steps({ run, sheet }: SheetProps) {
  return (
    <table class="sheet-table">
      <thead>
        <tr>
          <th scope="col">{words.steps}</th>
          <th scope="col">{words.from}</th>
          <th scope="col">{words.to}</th>
          <th scope="col">{words.by}</th>
        </tr>
      </thead>
      <tbody>
        {sheet.steps.map(({ step, round, from, to, by }) => (
          <tr key={`${step}#${round}`}>
            <th scope="row">
              {stepTitle(stepOf(run.procedure, step))}
              {round > 1 && ` ${round}`}
            </th>
            <td>{stampTime(from)}</td>
            <td>{to === undefined ? "" : stampTime(to)}</td>
            <td>{by ?? ""}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function List({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) {
  return (
    <section>
      <h2>{title}</h2>
      {lines.length === 0 && <p class="soft">{words.empty}</p>}
      <ul class="sheet-list">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

function Noted({ run, sheet }: SheetProps) {
  const { temperatures, lots, hands, earliestLot } = sheet;
  const lotLine = ({ ingredient, lot, useBy }: (typeof lots)[number]) => {
    const until = useBy === undefined ? [] : [words.lotUseBy(dateYear(useBy))];
    return [named(ingredientOf(run, ingredient), lot), ...until].join(", ");
  };
  return (
    <>
      <List
        title={words.temperatures}
        lines={temperatures.map(({ at, celsius }) => named(stampTime(at), degreesRead(celsius)))}
      />
      <List title={words.lots} lines={lots.map(lotLine)} />
      {earliestLot !== undefined && <p>{words.earliest(dateYear(earliestLot))}</p>}
      <List
        title={words.hands}
        lines={hands.map(({ at, initials }) => named(stampTime(at), initials))}
      />
    </>
  );
}

/** Times, temperatures, lots and hands of one batch, on one sheet that prints. */
export function SheetScreen({ id }: { readonly id: string }) {
  const run = runOf(id);
  if (run === undefined) return <p class="app-say">{say.places.lost}</p>;
  const open = endingOf(run) === undefined;
  const sheet = controlSheetOf(run);
  return (
    <main class="sheet">
      <LinkButton tone="quiet" href={open ? routes.run(id) : routes.batch(id)}>
        {words.toRun}
      </LinkButton>
      <div class="sheet-paper">
        <h1>{words.title}</h1>
        <Head run={run} />
        <Steps run={run} sheet={sheet} />
        <Noted run={run} sheet={sheet} />
        <p class="soft">{words.cautions}</p>
      </div>
      <TapButton onAct={() => void printPage()}>{words.print}</TapButton>
      {open && (
        <>
          <NoteTemperature run={run} />
          <NoteLot run={run} />
          <NoteHands run={run} />
        </>
      )}
    </main>
  );
}
