import { expect, test } from "vitest";
import { type EventAbout, events } from "../../../app/words/en/events.ts";
import { draftSchema, type RunEvent, type Stamp } from "../../../core/run/event.ts";
import { madeWhole, started } from "../../support/world/play-run.ts";

const MADE = Date.parse("2025-11-25T10:00:00Z");
const about: EventAbout = {
  style: { volumes: "ml", ounce: "bar" },
  step: (visit) => `<${visit}>`,
  line: (line) => `<${line}>`,
  ingredient: (id) => `<${id}>`,
  act: (act) => `<${act}>`,
};
const stamp: Stamp = {
  id: "e",
  runId: "r",
  device: "d",
  act: "a",
  at: MADE,
  hlc: { ms: MADE, n: 0 },
  v: 1,
};
const [start] = started("r", "PB-2511", MADE).events;
if (start?.type !== "run.started") throw new RangeError("a run starts with its start");
const visit = "curdle#1";

const SAYINGS: readonly (readonly [RunEvent, string])[] = [
  [start, "Started PB-2511: Pear Beacon, 4,500 ml planned. App version 0.0.0-test."],
  [{ ...stamp, type: "step.started", visit, step: "curdle" }, "Step started: <curdle#1>"],
  [{ ...stamp, type: "step.finished", visit }, "Step finished: <curdle#1>"],
  [{ ...stamp, type: "line.poured", visit, line: "rum" }, "In the vessel: <rum>"],
  [
    { ...stamp, type: "reading.logged", visit, what: "collected", value: 1500, unit: "ml" },
    "Collected so far: 1,500 ml",
  ],
  [
    { ...stamp, type: "reading.logged", visit, what: "temperature", value: 4.5, unit: "degC" },
    "Temperature: 4.5 °C",
  ],
  [
    {
      ...stamp,
      type: "reading.logged",
      visit,
      what: "collected",
      value: 2540.37,
      unit: "ml",
      weighed: { gross: 3412, tare: 812 },
    },
    "Collected so far: 2,540 ml (weighed: 3,412 g − 812 g = 2,600 g)",
  ],
  [
    { ...stamp, type: "run.repoured", visit, ml: 300, weighed: { gross: 710, tare: 405 } },
    "Cloudy run poured back: 300 ml (weighed: 710 g − 405 g = 305 g)",
  ],
  [
    { ...stamp, type: "yield.logged", visit, ml: 4400, weighed: { gross: 5312, tare: 812 } },
    "Yield measured: 4,400 ml (weighed: 5,312 g − 812 g = 4,500 g)",
  ],
  [
    { ...stamp, type: "yield.logged", visit, ml: 4400, settles: true },
    "The yield that counts: 4,400 ml",
  ],
  [
    {
      ...stamp,
      type: "taste.noted",
      scores: { clarity: 8, acid: 0 },
      words: ["sour-milk", "like tea"],
      by: "AB",
    },
    "Tasted by AB: clarity 8, acid 0; sour milk, like tea",
  ],
  [{ ...stamp, type: "taste.noted", scores: {}, words: ["dry"], by: "AB" }, "Tasted by AB: dry"],
  [
    { ...stamp, type: "verdict.given", verdict: "fair", repeat: "with-changes", text: "less milk" },
    "Fair, make it again with changes, less milk",
  ],
  [
    { ...stamp, type: "verdict.given", verdict: "poor", repeat: "no", text: "" },
    "Poor, do not make it again",
  ],
  [{ ...stamp, type: "tag.added", tag: "summer" }, "Tagged: summer"],
  [{ ...stamp, type: "tag.removed", tag: "summer" }, "Tag taken off: summer"],
  [
    {
      ...stamp,
      type: "photo.added",
      photo: "p",
      media: "image/jpeg",
      bytes: 9,
      width: 4,
      height: 3,
    },
    "Photo taken",
  ],
  [{ ...stamp, type: "photo.removed", photo: "p" }, "Photo removed"],
  [
    { ...stamp, type: "stock.poured", ml: 1080, count: 12, unit: "serves" },
    "Poured out: 12 serves (1,080 ml)",
  ],
  [
    { ...stamp, type: "stock.poured", ml: 750, count: 1, unit: "bottles" },
    "Poured out: 1 bottle (750 ml)",
  ],
  [{ ...stamp, type: "stock.poured", ml: 333, count: 333, unit: "ml" }, "Poured out: 333 ml"],
  [{ ...stamp, type: "stock.ended", how: "spent", reason: "" }, "All gone"],
  [
    { ...stamp, type: "stock.ended", how: "discarded", reason: "tastes off" },
    "Discarded: tastes off",
  ],
  [
    { ...stamp, type: "tare.noted", vessel: "clear-run", grams: 812 },
    "The vessel under the drip weighed empty: 812 g",
  ],
  [{ ...stamp, type: "shape.noted", visit, shape: "cone" }, "The filter hangs in a cone"],
  [{ ...stamp, type: "look.noted", visit, look: "hazy" }, "It ran hazy"],
  [{ ...stamp, type: "run.repoured", visit, ml: 400 }, "Cloudy run poured back: 400 ml"],
  [{ ...stamp, type: "yield.logged", visit, ml: 3700 }, "Yield measured: 3,700 ml"],
  [
    { ...stamp, type: "topup.poured", visit, ml: 450, planned: 483, advised: 445 },
    "Topped up with 450 ml (planned 483 ml, advised 445 ml)",
  ],
  [
    { ...stamp, type: "alarm.heard", visit, dueAt: MADE - 42 * 60_000 },
    "Alarm answered: <curdle#1>, 42 min after it was due",
  ],
  [{ ...stamp, type: "alarm.heard", visit, dueAt: MADE - 900 }, "Alarm answered: <curdle#1>"],
  [{ ...stamp, type: "note.added", text: "cold" }, "Note: cold"],
  [
    { ...stamp, type: "clock.shifted", byMs: -3_600_000, keepElapsed: true },
    "The phone's clock moved back by 1 h; waits kept their length",
  ],
  [
    { ...stamp, type: "clock.shifted", byMs: 120_000, keepElapsed: false },
    "The phone's clock moved on by 2 min; due times stayed",
  ],
  [{ ...stamp, type: "event.undone", undoes: "x" }, "Taken back: <x>"],
  [{ ...stamp, type: "run.abandoned", reason: "Milk went off" }, "Given up: Milk went off"],
  [{ ...stamp, type: "run.abandoned", reason: "" }, "Given up: no reason given"],
  [{ ...stamp, type: "look.noted", visit, look: "not-yet" }, "Tasted: not yet"],
  [{ ...stamp, type: "look.noted", visit, look: "cold-rest" }, "Would not clear: a cold rest"],
  [
    { ...stamp, type: "reading.logged", visit, what: "brix", value: 50.5, unit: "brix" },
    "°Brix read: 50.5 °Bx",
  ],
  [{ ...stamp, type: "run.paused" }, "Paused: its alarms are silent, its waits go on"],
  [{ ...stamp, type: "run.resumed" }, "Resumed"],
  [{ ...stamp, type: "vessel.moved", to: "fridge" }, "Put in the fridge"],
  [{ ...stamp, type: "hands.changed", initials: "AB" }, "Taken over by AB"],
  [
    { ...stamp, type: "lot.noted", ingredient: "milk-whole", lot: "L12" },
    "Lot of <milk-whole>: L12",
  ],
];

test.each(SAYINGS.map(([event, words]) => ({ event, words })))("$words", ({ event, words }) => {
  expect(events.of(event, about)).toBe(words);
});

// These name a time of day, which depends on where the test runs.
const TIMED: readonly (readonly [RunEvent, RegExp])[] = [
  [
    { ...stamp, type: "alarm.handed", visit, dueAt: MADE, to: "phone-clock" },
    /^The wait until \d\d:\d\d is also set in the phone's alarms$/,
  ],
  [
    { ...stamp, type: "alarm.handed", visit, dueAt: MADE, to: "person", who: "AB" },
    /^The wait until \d\d:\d\d is also watched by AB$/,
  ],
  [
    { ...stamp, type: "alarm.handed", visit, dueAt: MADE + 48 * 3_600_000, to: "vessel" },
    /^The wait until \w{3}.* \d\d:\d\d is also written on the vessel$/,
  ],
  [
    { ...stamp, type: "phone.slept", fromMs: MADE - 42 * 60_000, forMs: 42 * 60_000 },
    /^The phone was asleep 42 min, from \d\d:\d\d: nothing could ring here$/,
  ],
  [{ ...stamp, type: "ready.set", by: MADE }, /^To be ready \w{3}.*, \d\d:\d\d$/],
  [
    { ...stamp, type: "due.moved", visit, dueAt: MADE },
    /^<curdle#1> is now due \w{3}.* \d\d:\d\d$/,
  ],
  [
    { ...stamp, type: "run.bottled", visit, bottles: [{ count: 6, size: 750 }], useBy: MADE },
    /^Bottled 6 × 750 ml, use by \w{3}/,
  ],
];

test.each(TIMED.map(([event, words]) => ({ event, words })))("$words", ({ event, words }) => {
  expect(events.of(event, about)).toMatch(words);
});

test("every kind of event is said here", () => {
  const kinds = draftSchema.def.options.map((one) => one.def.shape.type.def.values[0]);
  const said = new Set([...SAYINGS, ...TIMED].map(([event]) => event.type));
  expect(kinds.length).toBeGreaterThan(12);
  expect(kinds.filter((kind) => kind === undefined || !said.has(kind))).toEqual([]);
});

test("a whole batch reads without a gap", () => {
  const { events: log } = madeWhole(started("r", "PB-2511", MADE), {
    yield: 3700,
    topUp: 450,
    useBy: MADE,
  });
  for (const event of log) expect(events.of(event, about)).toMatch(/^[A-Z<].{4,}[^ ]$/u);
});
