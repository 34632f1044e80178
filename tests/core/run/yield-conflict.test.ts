import { expect, test } from "vitest";
import type { RunEvent } from "../../../core/run/event.ts";
import { foldRun } from "../../../core/run/fold.ts";
import { mergeEvents } from "../../../core/run/order.ts";
import { differingYields } from "../../../core/run/yield-conflict.ts";
import { dripped, type Played, resumed, started } from "../../support/world/play-run.ts";

const MADE = Date.parse("2025-11-25T10:00:00Z");
const waiting = dripped(started("a", "PB-2511", MADE));
const measured = (ml: number, minutes: number, device: string) =>
  waiting.finish({ answer: { of: "yield", ml } }, minutes, device);

/** What one phone adds to a log that both know. */
const added = (known: Played, later: Played): readonly RunEvent[] =>
  later.events.slice(known.events.length);

const named = (events: readonly RunEvent[], phone: string): readonly RunEvent[] =>
  events.map((event) => ({ ...event, id: `${phone}-${event.id}`, act: `${phone}-${event.act}` }));

const here = measured(3700, 5, "phone-a");
const there = named(added(waiting, measured(3900, 6, "phone-b")), "b");
const both = mergeEvents(here.events, there);

const asked = (events: readonly RunEvent[]): readonly number[] => {
  const run = foldRun(events);
  if (run === undefined) throw new RangeError("the log has no start");
  return differingYields(run).map(({ ml }) => ml);
};

test("nothing is asked before a yield, nor of one phone that corrects itself, nor of two that agree", () => {
  expect(asked(waiting.events)).toEqual([]);
  expect(asked(here.events)).toEqual([]);
  const again = named(added(waiting, measured(3650, 8, "phone-a")), "again");
  expect(asked(mergeEvents(here.events, again))).toEqual([]);
  const same = named(added(waiting, measured(3700, 6, "phone-b")), "b");
  expect(asked(mergeEvents(here.events, same))).toEqual([]);
});

test.each([3700, 3900])("once %i ml is said to count, nothing is asked, on either phone", (ml) => {
  expect(asked(both)).toEqual([3700, 3900]);
  const settled = resumed(both).then({ type: "settle-yield", ml }, 10);
  expect(settled.run.yields.at(-1)).toMatchObject({ ml, settles: true });
  expect(asked(settled.events)).toEqual([]);
  // The other phone learns of it later, whatever came first.
  expect(asked(mergeEvents(there, settled.events))).toEqual([]);
  // Taken back, it is asked again.
  const act = settled.events.at(-1)?.act ?? "";
  expect(asked(settled.then({ type: "undo", act }).events)).toEqual([3700, 3900]);
});

test("two phones that settle it differently: the later word counts, and nothing is asked", () => {
  const a = resumed(both).then({ type: "settle-yield", ml: 3700 }, 10, "phone-a");
  const b = resumed(both).then({ type: "settle-yield", ml: 3900 }, 12, "phone-b");
  const merged = mergeEvents(a.events, named(b.events.slice(both.length), "b-later"));
  expect(asked(merged)).toEqual([]);
  expect(foldRun(merged)?.yields.at(-1)?.ml).toBe(3900);
});

test("a phone that measures anew after it was settled is asked about again", () => {
  const settled = resumed(both).then({ type: "settle-yield", ml: 3700 }, 10, "phone-a");
  const late = named(added(waiting, measured(3950, 60, "phone-b")), "late");
  expect(asked(mergeEvents(settled.events, late))).toEqual([3700, 3950]);
});

test("what was weighed stays weighed when it is said to count", () => {
  const weighing = waiting.then({ type: "note-tare", vessel: "clear-run", grams: 800 });
  const scale = weighing.finish({ answer: { of: "yield", gross: 4600 } }, 5, "phone-a");
  const jug = named(
    weighing
      .finish({ answer: { of: "yield", ml: 3000 } }, 6, "phone-b")
      .events.slice(weighing.events.length),
    "b",
  );
  const log = mergeEvents(scale.events, jug);
  const [first] = asked(log);
  const settled = resumed(log).then({ type: "settle-yield", ml: first ?? 0 }, 10);
  expect(settled.run.yields.at(-1)?.weighed).toEqual({ gross: 4600, tare: 800 });
});
