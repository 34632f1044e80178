import { expect, test } from "vitest";
import {
  nextPress,
  type Press,
  type PressEvent,
  type PressKind,
} from "../../../app/parts/press.ts";
import { down, filled, up } from "../../support/world/press-events.ts";

const move = (inside: boolean, width = 20, pointer = 1): PressEvent => ({
  type: "move",
  pointer,
  inside,
  width,
});
const key = (at: number, repeat = false, quietUntil = -1): PressEvent => ({
  type: "key",
  at,
  repeat,
  quietUntil,
});

/** What came of a row of events: every outcome in turn, none left out. */
function outcomes(kind: PressKind, events: readonly PressEvent[]) {
  let press: Press = { type: "idle" };
  return events.flatMap((event) => {
    const step = nextPress(kind, press, event);
    press = step.press;
    return step.outcome ? [step.outcome] : [];
  });
}

// A hold of 600 ms; contacts under 60 ms, wide ones, second ones and those
// within 350 ms of the last action come to nothing.
test.each<[string, PressKind, readonly PressEvent[], readonly string[]]>([
  [
    "a full hold acts when it is full, not again on release",
    "hold",
    [down(0), filled(600), up(900)],
    ["acted"],
  ],
  ["a hold acts on release when the fill's end came late", "hold", [down(0), up(600)], ["acted"]],
  ["a fill that ends a frame early still counts", "hold", [down(0), filled(584)], ["acted"]],
  [
    "an early end of some other animation does not",
    "hold",
    [down(0), filled(300), up(400)],
    ["let-go"],
  ],
  ["let go at 599 ms", "hold", [down(0), up(599), filled(605)], ["let-go"]],
  ["a drop on a hold", "hold", [down(0), up(59)], ["too-short"]],
  ["a drop on a tap", "tap", [down(0), up(59)], ["too-short"]],
  ["a tap of 60 ms", "tap", [down(0), up(60)], ["acted"]],
  ["a fill says nothing to a tap", "tap", [down(0), filled(700)], []],
  [
    "a mouse may click faster than a drop falls",
    "tap",
    [down(0, { touch: false }), up(8)],
    ["acted"],
  ],
  [
    "a second contact ends a hold for good",
    "hold",
    [down(0), { type: "another-contact" }, filled(600), up(700)],
    ["another-contact"],
  ],
  [
    "a contact while another lies elsewhere",
    "hold",
    [down(0, { contacts: 2 }), filled(600), up(700)],
    ["another-contact"],
  ],
  [
    "a second contact on the same control",
    "hold",
    [down(0), down(100, { pointer: 2 }), filled(600)],
    ["another-contact"],
  ],
  ["a grip at the edge of the screen", "hold", [down(0, { edge: true }), filled(600)], ["edge"]],
  ["a tap there is only a tap", "tap", [down(0, { edge: true }), up(100)], ["acted"]],
  [
    "a longer hold, while hands are wet",
    "hold",
    [down(0, { holdFor: 900 }), filled(600), filled(900)],
    ["acted"],
  ],
  ["the same let go too early", "hold", [down(0, { holdFor: 900 }), up(899)], ["let-go"]],
  ["a palm", "hold", [down(0, { width: 81 }), filled(600)], ["wide"]],
  ["a finger that becomes a palm", "hold", [down(0), move(true, 90), filled(600)], ["wide"]],
  ["moved within", "hold", [down(0), move(true), filled(600)], ["acted"]],
  [
    "moved off and back",
    "hold",
    [down(0), move(false), move(true), filled(600), up(700)],
    ["moved-off"],
  ],
  [
    "another pointer's moves and lifts are not ours",
    "hold",
    [down(0), move(false, 20, 2), up(80, 2), filled(600)],
    ["acted"],
  ],
  [
    "taken away by the browser",
    "hold",
    [down(0), { type: "lost" }, filled(600), up(700)],
    ["lost"],
  ],
  ["just after an action", "tap", [down(349, { quietUntil: 350 }), up(500)], ["too-soon"]],
  ["once the quiet is over", "tap", [down(350, { quietUntil: 350 }), up(500)], ["acted"]],
  ["a key acts at once", "hold", [key(0)], ["acted"]],
  [
    "a key kept down does not act again",
    "hold",
    [key(0), key(500, true), key(530, true)],
    ["acted"],
  ],
  ["a key that bounces", "hold", [key(0), key(200, false, 350)], ["acted", "too-soon"]],
  [
    "a touch reader's press acts at once",
    "hold",
    [{ type: "assistant", at: 0, quietUntil: -1 }],
    ["acted"],
  ],
  [
    "a lift with nothing pressed",
    "tap",
    [up(500), filled(600), { type: "lost" }, { type: "another-contact" }],
    [],
  ],
])("%s", (_, kind, events, expected) => {
  expect(outcomes(kind, events)).toEqual(expected);
});
