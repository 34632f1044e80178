import { expect, test } from "vitest";
import { namedIn, knownInitials as ofBatches } from "../../../core/run/initials.ts";
import type { Run } from "../../../core/run/run.ts";
import { type Played, started } from "../../support/world/play-run.ts";

const knownInitials = (runs: readonly Run[]) =>
  ofBatches(runs.map((run) => ({ named: namedIn(run) })));
const AT = 1_000_000_000_000;

const resting = (run: string, at: number): Played =>
  started(run, run, at)
    .finish({}, 1)
    .finish({ answer: { of: "milk", ml: 1000 } }, 1)
    .finish({}, 1);

const watch = (who?: string) =>
  ({
    type: "hand-alarm",
    visit: "curdle#1",
    dueAt: AT,
    to: "person",
    ...(who === undefined ? {} : { who }),
  }) as const;

test("nobody is known before anybody was named", () => {
  expect(knownInitials([])).toEqual([]);
  expect(knownInitials([resting("a", AT).then(watch()).run])).toEqual([]);
});

test("hands and watches of all batches, the latest first, each once", () => {
  const early = resting("a", AT).then({ type: "change-hands", initials: "AB" }).then(watch("CD"));
  const late = resting("b", AT + 3_600_000)
    .then({ type: "change-hands", initials: "EF" }, 30)
    .then(watch("AB"));
  expect(knownInitials([early.run, late.run])).toEqual(["EF", "AB", "CD"]);
});

test("no more than five", () => {
  const names = ["A", "B", "C", "D", "E", "F", "G"];
  const { run } = names.reduce(
    (so, initials) => so.then({ type: "change-hands", initials }),
    started("a", "a", AT),
  );
  expect(knownInitials([run])).toEqual(["G", "F", "E", "D", "C"]);
});
