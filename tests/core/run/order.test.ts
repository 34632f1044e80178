import fc from "fast-check";
import { expect, test } from "vitest";
import type { RunEvent } from "../../../core/run/event.ts";
import { byText, compareEvents, mergeEvents, undoneActs } from "../../../core/run/order.ts";

/** A note, or an undo of an act. */
function event(id: string, at: number, rest: { device?: string; undoes?: string } = {}): RunEvent {
  const { device = "a", undoes } = rest;
  const stamp = {
    id,
    runId: "run-1",
    device,
    act: `act-${id}`,
    at,
    hlc: { ms: at, n: 0 },
    v: 1,
  } as const;
  return undoes === undefined
    ? { ...stamp, type: "note.added", text: id }
    : { ...stamp, type: "event.undone", undoes };
}

const ids = (events: readonly RunEvent[]) => events.map((one) => one.id);

test("ids sort by code unit, not by the phone's language", () => {
  expect(["b", "ä", "a", "B", "a"].sort(byText)).toEqual(["B", "a", "a", "b", "ä"]);
});

test("events sort by logical clock, then phone, then id", () => {
  const sorted = [
    event("z", 1, { device: "b" }),
    event("a", 2, { device: "a" }),
    event("b", 2, { device: "a" }),
    event("a2", 2, { device: "b" }),
    event("0", 3),
  ];
  expect([...sorted].reverse().sort(compareEvents)).toEqual(sorted);
  expect(compareEvents(event("a", 1), event("a", 1))).toBe(0);
});

test("a log that comes twice, or with a forged twin, is the same on every phone", () => {
  const one = event("a", 1);
  const forged: RunEvent = { ...one, type: "note.added", text: "not what was said" };
  expect(mergeEvents([one], [one])).toEqual([one]);
  expect(mergeEvents([one, forged], [])).toEqual(mergeEvents([forged], [one]));
  expect(mergeEvents([one], [forged])).toHaveLength(1);
});

// Undo is an event, and the latest word counts.
test.each<[string, RunEvent[], string[]]>([
  ["nothing taken back", [event("1", 1), event("2", 2)], []],
  ["one taken back", [event("1", 1), event("u", 2, { undoes: "act-1" })], ["act-1"]],
  [
    "taken back, and that taken back",
    [event("1", 1), event("u", 2, { undoes: "act-1" }), event("v", 3, { undoes: "act-u" })],
    ["act-u"],
  ],
  [
    "taken back three times over",
    [
      event("1", 1),
      event("u", 2, { undoes: "act-1" }),
      event("v", 3, { undoes: "act-u" }),
      event("w", 4, { undoes: "act-v" }),
    ],
    ["act-v", "act-1"],
  ],
  [
    "taken back by two phones",
    [event("1", 1), event("u", 2, { undoes: "act-1" }), event("v", 3, { undoes: "act-1" })],
    ["act-1"],
  ],
])("undone acts: %s", (_, events, acts) => {
  expect([...undoneActs(events)].sort()).toEqual([...acts].sort());
});

test("the start of a run is never taken back, whatever a log says", () => {
  const { id, runId, device, act, at, hlc, v } = event("s", 1);
  const start = { id, runId, device, act, at, hlc, v, type: "run.started" as const };
  const plan = JSON.parse("{}");
  const log: RunEvent[] = [
    { ...start, batch: "b", plan, procedure: plan, appVersion: "0" },
    event("u", 2, { undoes: "act-s" }),
  ];
  expect([...undoneActs(log)]).toEqual([]);
});

const anyLog = fc.uniqueArray(
  fc
    .tuple(
      fc.nat({ max: 30 }),
      fc.nat({ max: 4 }),
      fc.constantFrom("a", "b"),
      fc.option(fc.nat(30)),
    )
    .map(([id, at, device, undoes]) =>
      event(String(id), at, { device, ...(undoes === null ? {} : { undoes: `act-${undoes}` }) }),
    ),
  { selector: (one) => one.id, maxLength: 12 },
);

test("property: merging is a union, whatever comes first", () => {
  fc.assert(
    fc.property(anyLog, fc.func(fc.boolean()), (log, goes) => {
      const left = log.filter((one) => goes(one.id));
      const right = log.filter((one) => !goes(one.id));
      const merged = mergeEvents(left, right);
      expect(merged).toEqual(mergeEvents(right, left));
      expect(merged).toEqual(mergeEvents(merged, left));
      expect(ids(merged).sort()).toEqual(ids(log).sort());
    }),
  );
});

// An undo always comes after what it takes back: the phone that orders it has seen it.
const honestLog = fc
  .array(fc.option(fc.nat({ max: 11 })), { maxLength: 12 })
  .map((undoes) =>
    undoes.map((of, at) =>
      event(String(at), at, of === null || at === 0 ? {} : { undoes: `act-${of % at}` }),
    ),
  );

test("property: an act stands unless a standing undo says otherwise", () => {
  fc.assert(
    fc.property(honestLog, (log) => {
      const stands = (act: string): boolean =>
        !log.some((one) => one.type === "event.undone" && one.undoes === act && stands(one.act));
      const undone = undoneActs(log);
      for (const { act } of log) expect(undone.has(act)).toBe(!stands(act));
    }),
  );
});
