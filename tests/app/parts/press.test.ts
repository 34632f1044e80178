import fc from "fast-check";
import { expect, test } from "vitest";
import {
  nextPress,
  type Press,
  type PressEvent,
  type PressKind,
} from "../../../app/parts/press.ts";
import { makePressGuard } from "../../../app/parts/press-guard.ts";
import { HOLD_FOR, QUIET_AFTER_ACTION } from "../../../app/parts/press-rules.ts";

const down = (at: number, more: Partial<PressEvent & { type: "down" }> = {}): PressEvent => ({
  type: "down",
  at,
  pointer: 1,
  touch: true,
  width: 20,
  contacts: 1,
  quietUntil: Number.NEGATIVE_INFINITY,
  edge: false,
  holdFor: HOLD_FOR,
  ...more,
});
const up = (at: number, pointer = 1): PressEvent => ({ type: "up", at, pointer });
const filled = (at: number): PressEvent => ({ type: "filled", at });
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

interface Contact {
  readonly from: number;
  readonly lasts: number;
  readonly here: boolean;
}

interface Moment {
  readonly at: number;
  readonly pointer: number;
  readonly by: Contact;
  readonly what: "down" | "filled" | "up";
}

const momentsOf = (contacts: readonly Contact[]) =>
  contacts
    .flatMap((by, pointer): Moment[] => [
      { at: by.from, pointer, by, what: "down" },
      { at: by.from + HOLD_FOR, pointer, by, what: "filled" },
      { at: by.from + by.lasts, pointer, by, what: "up" },
    ])
    .sort((a, b) => a.at - b.at);

/** Plays contacts on a page with one control through the real guard; what acted, and when. */
function play(kind: PressKind, contacts: readonly Contact[]) {
  const guard = makePressGuard();
  const acted: { readonly at: number; readonly by: Contact }[] = [];
  let press: Press = { type: "idle" };
  const take = (event: PressEvent, at: number, by?: Contact) => {
    const step = nextPress(kind, press, event);
    press = step.press;
    if (step.outcome !== "acted" || !by) return;
    acted.push({ at, by });
    guard.acted(at, QUIET_AFTER_ACTION);
  };
  const eventOf = ({ at, pointer, what }: Moment): PressEvent | null => {
    switch (what) {
      case "down":
        guard.touched(pointer, "touch", guard.contacts() === 0);
        return down(at, {
          pointer,
          contacts: guard.contacts(),
          quietUntil: guard.quietUntil(),
        });
      case "up":
        guard.lifted(pointer);
        return up(at, pointer);
      case "filled":
        // The fill belongs to the press it was begun for.
        return press.type === "pressing" && press.pointer === pointer ? filled(at) : null;
    }
  };
  guard.listen((news) => take({ type: news }, 0));
  for (const moment of momentsOf(contacts)) {
    const event = eventOf(moment);
    if (event && moment.by.here) take(event, moment.at, moment.by);
  }
  return acted;
}

const kinds = fc.constantFrom<PressKind>("hold", "tap");
const contactsLasting = (lasts: fc.Arbitrary<number>) =>
  fc.array(fc.record({ from: fc.integer({ min: 0, max: 30_000 }), lasts, here: fc.boolean() }), {
    maxLength: 60,
  });

test("drops never act, however many and wherever they fall", () => {
  const drops = contactsLasting(fc.integer({ min: 0, max: 59 }));
  fc.assert(fc.property(kinds, drops, (kind, contacts) => play(kind, contacts).length === 0));
});

test("a contact that shared the glass with another never acts", () => {
  const any = contactsLasting(fc.integer({ min: 0, max: 2000 }));
  fc.assert(
    fc.property(kinds, any, (kind, contacts) => {
      for (const { at, by } of play(kind, contacts)) {
        const beside = contacts.filter(
          (other) => other !== by && other.from < at && other.from + other.lasts > by.from,
        );
        expect(beside).toEqual([]);
      }
    }),
  );
});

test("nothing acts that began within the quiet after an action", () => {
  const taps = fc.array(
    fc.record({ gap: fc.integer({ min: 1, max: 700 }), lasts: fc.constant(80) }),
  );
  fc.assert(
    fc.property(taps, (gaps) => {
      let end = 0;
      const contacts = gaps.map(({ gap, lasts }) => {
        const from = end + gap;
        end = from + lasts;
        return { from, lasts, here: true };
      });
      const acted = play("tap", contacts);
      for (const [i, { by }] of acted.entries()) {
        const before = acted[i - 1]?.at ?? Number.NEGATIVE_INFINITY;
        expect(by.from - before).toBeGreaterThanOrEqual(QUIET_AFTER_ACTION);
      }
    }),
  );
});

test("a lone, steady contact always acts", () => {
  const lasts = fc.integer({ min: HOLD_FOR, max: 5000 });
  fc.assert(
    fc.property(kinds, lasts, (kind, time) => {
      expect(play(kind, [{ from: 0, lasts: time, here: true }])).toHaveLength(1);
    }),
  );
});
