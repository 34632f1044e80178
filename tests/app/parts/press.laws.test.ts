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
import { down, filled, up } from "../../support/world/press-events.ts";

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
