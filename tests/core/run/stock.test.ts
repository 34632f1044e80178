import fc from "fast-check";
import { afterEach, expect, test } from "vitest";
import type { AfterOrder } from "../../../core/run/afterwards.ts";
import { mergeEvents } from "../../../core/run/order.ts";
import { barDaysBetween, stockOf } from "../../../core/run/stock.ts";
import { dripped, madeWhole, type Played, resumed, started } from "../../support/world/play-run.ts";

const own = process.env.TZ;
afterEach(() => {
  if (own === undefined) delete process.env.TZ;
  else process.env.TZ = own;
});

const MADE = Date.parse("2025-11-25T10:00:00Z");
const DAY = 24 * 60;
const begun = started("a", "PB-2511", MADE);
const bottled = madeWhole(begun, { yield: 3700, topUp: 450, useBy: MADE + 7 * DAY * 60_000 });
const pour = (count: number): AfterOrder => ({ type: "pour-stock", unit: "ml", count });
const lastAct = ({ events }: Played) => events.at(-1)?.act ?? "";

test("nothing before it is bottled; then all of it, less what went out", () => {
  expect(stockOf(dripped(begun).run)).toBeUndefined();
  expect(stockOf(bottled.run)).toEqual({ bottledMl: 4500, leftMl: 4500, overMl: 0, poured: [] });
  const some = bottled.then(pour(1200)).then({ type: "pour-stock", unit: "bottles", count: 1 });
  expect(stockOf(some.run)).toMatchObject({ leftMl: 2550, overMl: 0 });
});

test("spent or discarded leaves nothing, with its reason, until that is taken back", () => {
  const gone = bottled
    .then(pour(1000))
    .then({ type: "end-stock", how: "discarded", reason: "past its use-by" });
  expect(stockOf(gone.run)).toMatchObject({
    leftMl: 0,
    overMl: 0,
    ended: { how: "discarded", reason: "past its use-by" },
  });
  const back = stockOf(gone.then({ type: "undo", act: lastAct(gone) }).run);
  expect(back).toMatchObject({ leftMl: 3500 });
  expect(back?.ended).toBeUndefined();
});

test("a pour after midnight is still last night's; after six it is the next day's", () => {
  process.env.TZ = "Europe/London";
  const at = (moment: string) => Date.parse(moment);
  expect(barDaysBetween(at("2025-11-26T01:00:00Z"), at("2025-11-25T20:00:00Z"))).toBe(0);
  expect(barDaysBetween(at("2025-11-26T05:59:00Z"), at("2025-11-25T20:00:00Z"))).toBe(0);
  expect(barDaysBetween(at("2025-11-26T06:00:00Z"), at("2025-11-25T20:00:00Z"))).toBe(1);
  // The clocks went back at two on 26 October 2025 and forward at one on 30 March 2025 (tz database).
  expect(barDaysBetween(at("2025-10-26T05:30:00Z"), at("2025-10-25T20:00:00Z"))).toBe(0);
  expect(barDaysBetween(at("2025-10-26T06:00:00Z"), at("2025-10-25T20:00:00Z"))).toBe(1);
  expect(barDaysBetween(at("2025-03-30T04:59:00Z"), at("2025-03-29T20:00:00Z"))).toBe(0);
  expect(barDaysBetween(at("2025-03-30T05:00:00Z"), at("2025-03-29T20:00:00Z"))).toBe(1);
  // Made at 10:00 and bottled at about 18:00: an evening, past midnight, and the next evening.
  const evenings = bottled
    .then(pour(100), 60)
    .then(pour(50), 7 * 60)
    .then(pour(25), 18 * 60);
  expect(stockOf(evenings.run)?.poured.map(({ ml }) => ml)).toEqual([150, 25]);
});

test("evenings stand in their order, whoever logged them first", () => {
  process.env.TZ = "UTC";
  const { run } = bottled.then(pour(1));
  const poured = (at: string, ml: number) => ({
    act: at,
    device: "phone-b",
    at: Date.parse(at),
    ml,
    count: ml,
    unit: "ml" as const,
  });
  const stockPoured = [
    poured("2025-11-27T20:00:00Z", 30),
    poured("2025-11-26T22:00:00Z", 20),
    poured("2025-11-26T20:00:00Z", 10),
  ];
  expect(stockOf({ ...run, stockPoured })?.poured).toEqual([
    { at: Date.parse("2025-11-26T22:00:00Z"), ml: 30 },
    { at: Date.parse("2025-11-27T20:00:00Z"), ml: 30 },
  ]);
});

test("no more than the last forty evenings are kept, and all of them count", () => {
  const many = Array.from({ length: 45 }).reduce<Played>((so) => so.then(pour(10), DAY), bottled);
  const stock = stockOf(many.run);
  expect(stock?.poured).toHaveLength(40);
  expect(stock?.leftMl).toBe(4050);
});

const amounts = fc.array(fc.integer({ min: 1, max: 3000 }), { maxLength: 8 });
const all = (from: Played, some: readonly number[], device = "phone-a") =>
  some.reduce((so, count) => so.then(pour(count), 5, device), from);

test("property: never below nothing, and what is over is said to the millilitre", () => {
  fc.assert(
    fc.property(amounts, (some) => {
      const stock = stockOf(all(bottled, some).run);
      const sum = some.reduce((total, ml) => total + ml, 0);
      expect(stock?.leftMl).toBeGreaterThanOrEqual(0);
      expect((stock?.leftMl ?? 0) - (stock?.overMl ?? 0)).toBeCloseTo(4500 - sum, 6);
      expect(Math.min(stock?.leftMl ?? 0, stock?.overMl ?? 0)).toBe(0);
    }),
    { numRuns: 60 },
  );
});

test("property: taking a pour back gives back what was there before it", () => {
  fc.assert(
    fc.property(amounts, fc.integer({ min: 1, max: 6000 }), (some, more) => {
      const before = all(bottled, some);
      const after = before.then(pour(more));
      const back = after.then({ type: "undo", act: lastAct(after) });
      expect(stockOf(back.run)).toEqual(stockOf(before.run));
    }),
    { numRuns: 60 },
  );
});

test("property: what two phones poured out adds up when they meet, whoever comes first", () => {
  fc.assert(
    fc.property(amounts, amounts, (mine, theirs) => {
      const here = all(bottled, mine, "phone-a");
      const there = all(bottled, theirs, "phone-b")
        .events.slice(bottled.events.length)
        .map((event) => ({ ...event, id: `b-${event.id}`, act: `b-${event.act}` }));
      const sum = [...mine, ...theirs].reduce((total, ml) => total + ml, 0);
      for (const log of [mergeEvents(here.events, there), mergeEvents(there, here.events)]) {
        const stock = stockOf(resumed(log).run);
        expect((stock?.leftMl ?? 0) - (stock?.overMl ?? 0)).toBeCloseTo(4500 - sum, 6);
      }
    }),
    { numRuns: 40 },
  );
});
