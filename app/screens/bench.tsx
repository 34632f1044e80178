import { firstLook } from "../first-look.ts";
import { later } from "../later.tsx";
import { LinkButton } from "../parts/link-button.tsx";
import { routes } from "../routes.ts";
import { openRuns, planned } from "../state.ts";
import { say } from "../words/say.ts";
import type { BenchRowsProps } from "./bench/rows.tsx";
import "./bench.css";
import "./bench/low.css";

/** Fetched while storage opens: a bench on which nothing stands does not need them. */
const Rows = later(async () => (await import("./bench/rows.tsx")).BenchRows);
export const fetchRows = Rows.fetch;

/**
 * What the hours ahead ask for is worked out once the batches stand there. The ways on from here come
 * with it: what is there must not move under a finger.
 */
const Ahead = later(async () => {
  await firstLook;
  const [{ Ahead: shown }, { readyAhead }] = await Promise.all([
    import("../ahead/ahead.tsx"),
    import("../ahead/ready.ts"),
  ]);
  await readyAhead();
  return shown;
}, true);

/** On a phone on which nothing was made yet. */
const FirstStart = later(async () => {
  await firstLook;
  return (await import("./bench/first-start.tsx")).FirstStart;
}, true);

/** Comes last, as above. */
const BackupLine = later(async () => {
  await firstLook;
  return (await import("../ahead/backup-line.tsx")).BackupLine;
}, true);

/** What is running now, soonest wanted first; or that nothing is. */
export function BenchNow(told: BenchRowsProps) {
  const none = openRuns.value.length === 0;
  return (
    <>
      <h1 class="visually-hidden">{say.bench.title}</h1>
      {none ? <p class="bench-empty">{say.bench.empty}</p> : <Rows {...told} />}
      {none && (
        <LinkButton href={routes.specs} tone="main">
          {say.bench.toSpecs}
        </LinkButton>
      )}
    </>
  );
}

/** What is running now, and what the hours ahead ask for. */
export function BenchScreen() {
  const none = openRuns.value.length === 0;
  return (
    <main class="bench">
      <BenchNow />
      {none && planned.value.length === 0 ? (
        <>
          <FirstStart />
          <BackupLine />
        </>
      ) : (
        <Ahead />
      )}
    </main>
  );
}
