import fc from "fast-check";
import { expect, test } from "vitest";
import { logActsOf, phonesOf } from "../../../core/logbook/log-acts.ts";
import type { RunEvent } from "../../../core/run/event.ts";
import { mergeEvents } from "../../../core/run/order.ts";
import { started } from "../../support/world/play-run.ts";

const MADE = Date.parse("2025-11-25T10:00:00Z");
const begun = () => started("a", "PB-2511", MADE);
const shown = (events: readonly RunEvent[]) =>
  logActsOf(events).map(
    ({ events: mine, undone }) =>
      `${undone ? "taken back: " : ""}${mine.map(({ type }) => type).join(" ")}`,
  );

test("what one tap did stands together, in order, with its time and phone", () => {
  const { events } = begun().finish({}, 20, "phone-b");
  expect(shown(events)).toEqual(["run.started step.started", "step.finished step.started"]);
  expect(logActsOf(events)).toMatchObject([
    { at: MADE, device: "phone-a" },
    { at: MADE + 20 * 60_000, device: "phone-b" },
  ]);
});

test("an undone act stays in the log, marked with all it did", () => {
  const built = begun().finish();
  const taken = built.then({ type: "undo", act: built.events.at(-1)?.act ?? "" });
  expect(shown(taken.events)).toEqual([
    "run.started step.started",
    "taken back: step.finished step.started",
    "event.undone",
  ]);
});

test("an undo taken back is marked itself, and the act stands again", () => {
  const built = begun().finish();
  const taken = built.then({ type: "undo", act: built.events.at(-1)?.act ?? "" });
  const back = taken.then({ type: "undo", act: taken.events.at(-1)?.act ?? "" });
  expect(shown(back.events).slice(1)).toEqual([
    "step.finished step.started",
    "taken back: event.undone",
    "event.undone",
  ]);
});

test("an act that another phone's event falls into stands in two parts", () => {
  const { events } = begun();
  const [first, second] = events;
  if (first === undefined || second === undefined) throw new RangeError("a start is two events");
  const between = begun().then({ type: "add-note", text: "x" }).events.at(-1);
  if (between === undefined) throw new RangeError("a note is an event");
  const slipped = { ...between, hlc: { ...first.hlc, n: first.hlc.n }, device: "phone-b" };
  expect(shown([...events, slipped])).toEqual(["run.started", "note.added", "step.started"]);
});

test("no event is left out or doubled, whatever order they came in", () => {
  const log = begun()
    .finish()
    .finish({ answer: { of: "milk", ml: 900 } })
    .then({ type: "add-note", text: "cold today" });
  const all = mergeEvents(log.events, []);
  fc.assert(
    fc.property(fc.shuffledSubarray([...all], { minLength: all.length }), (some) => {
      expect(logActsOf([...some, ...some]).flatMap(({ events }) => events)).toEqual(all);
    }),
    { numRuns: 20 },
  );
});

test("phones stand in the order they first wrote", () => {
  const log = begun().finish({}, 1, "phone-b").then({ type: "add-note", text: "cold today" });
  expect(phonesOf([...log.events].reverse())).toEqual(["phone-a", "phone-b"]);
  expect(phonesOf([])).toEqual([]);
});
