import fc from "fast-check";
import { expect, test } from "vitest";
import { nextTurn, type Turn, type TurnEvent, TWICE_WITHIN } from "../../../app/parts/page-keys.ts";
import { HOLD_FOR, WET_HOLD_FOR } from "../../../app/parts/press-rules.ts";

type Rest = Partial<Extract<TurnEvent, { type: "forward" }>>;

const down = (at: number, on: string, rest: Rest = {}): TurnEvent => ({
  type: "forward",
  at,
  on,
  repeat: false,
  next: "Pour",
  quietUntil: Number.NEGATIVE_INFINITY,
  holdFor: HOLD_FOR,
  ...rest,
});
const again = (at: number, on = "Pour", rest: Rest = {}) => down(at, on, { repeat: true, ...rest });
const up = (at: number, on = "Pour", holdFor = HOLD_FOR): TurnEvent => ({
  type: "up",
  at,
  on,
  holdFor,
});
const back = (at: number): TurnEvent => ({ type: "back", at });

/** What the page did about a row of events, nothings left out. */
function done(events: readonly TurnEvent[]) {
  let turn: Turn = { type: "rest" };
  return events.flatMap((event) => {
    const step = nextTurn(turn, event);
    turn = step.turn;
    return step.outcome === null ? [] : [step.outcome];
  });
}

test.each<[string, readonly TurnEvent[], readonly string[]]>([
  ["one short press only goes to it", [down(0, ""), up(90)], ["next"]],
  ["let go at 599 ms", [down(0, ""), up(599)], ["next"]],
  ["kept down, with a keyboard's repeats", [down(0, ""), again(500), again(600)], ["next", "act"]],
  [
    "and kept down still, it does nothing more",
    [down(0, "Pour"), again(600), again(640), again(2000), up(2100)],
    ["act"],
  ],
  ["kept down, by a key that does not repeat", [down(0, "Pour"), up(600)], ["act"]],
  ["repeats before its time", [down(0, "Pour"), again(300), again(599)], []],
  ["repeats of a key that was down before", [again(0), again(700), again(1400)], []],
  ["pressed twice", [down(0, ""), up(40), down(400, "Pour"), up(440)], ["next", "act"]],
  ["the second just in time", [down(0, "Pour"), up(40), down(1200, "Pour")], ["act"]],
  [
    "the second too late goes on to the next",
    [down(0, "Pour"), up(40), down(1201, "Pour"), up(1240)],
    ["next"],
  ],
  [
    "something else stands there by the second press",
    [down(0, "Pour"), up(40), down(400, "Bottle"), up(440, "Bottle")],
    [],
  ],
  [
    "something else stands there while it is kept down",
    [down(0, "Pour"), again(620, "Heard"), up(700, "Heard")],
    ["cancel"],
  ],
  [
    "after it acted all is quiet",
    [down(0, "Pour"), up(600), down(700, "", { quietUntil: 950 }), up(740)],
    ["act"],
  ],
  [
    "a press in the quiet is not the first of two",
    [down(700, "Pour", { quietUntil: 950 }), up(740), down(960, "Pour"), up(990)],
    [],
  ],
  ["three presses act once", [down(0, "Pour"), up(9), down(99, "Pour"), up(109), up(120)], ["act"]],
  ["while hands are wet it takes longer", [down(0, "Pour"), up(700, "Pour", WET_HOLD_FOR)], []],
  [
    "the same by repeats",
    [down(0, "Pour"), again(899, "Pour", { holdFor: WET_HOLD_FOR }), up(899, "Pour", WET_HOLD_FOR)],
    [],
  ],
  ["back cancels what was begun", [down(0, "Pour"), back(300), up(700)], ["cancel"]],
  [
    "back between two presses",
    [down(0, "Pour"), up(40), back(300), down(500, "Pour"), up(540)],
    ["cancel"],
  ],
  ["back with nothing begun", [back(0)], ["back"]],
  ["back long after one press", [down(0, "Pour"), up(40), back(1201)], ["back"]],
  ["the page goes out of sight", [down(0, "Pour"), { type: "lost" }, up(900)], ["cancel"]],
  ["the page goes out of sight with nothing begun", [{ type: "lost" }], []],
])("%s", (_, events, expected) => {
  expect(done(events)).toEqual(expected);
});

const gap = fc.integer({ min: TWICE_WITHIN + 1, max: 10_000 });
const press = fc.record({ gap, lasts: fc.integer({ min: 0, max: HOLD_FOR - 1 }) });

test("short presses that are far apart never act, whatever they stand on", () => {
  const presses = fc.array(fc.tuple(press, fc.constantFrom("", "Pour", "Bottle")));
  fc.assert(
    fc.property(presses, (some) => {
      let at = 0;
      const events = some.flatMap(([{ gap: wait, lasts }, on]) => {
        at += wait;
        return [down(at, on), up(at + lasts, on || "Pour")];
      });
      expect(done(events)).not.toContain("act");
    }),
  );
});

test("a key that only repeats never acts, however long", () => {
  const repeats = fc.array(fc.integer({ min: 0, max: 60_000 }));
  fc.assert(
    fc.property(repeats, (moments) => {
      const events = [...moments].sort((a, b) => a - b).map((at) => again(at));
      expect(done(events)).toEqual([]);
    }),
  );
});
