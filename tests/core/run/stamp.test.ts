import fc from "fast-check";
import { expect, test } from "vitest";
import type { Draft } from "../../../core/run/event.ts";
import { eventSchema } from "../../../core/run/event.ts";
import { compareHlc, HLC_ZERO } from "../../../core/run/hlc.ts";
import { type StampWith, stampDrafts } from "../../../core/run/stamp.ts";

const NOTE: Draft = { type: "note.added", text: "smells of tea" };
const shift = (byMs: number): Draft => ({ type: "clock.shifted", byMs, keepElapsed: true });

function stamping(rest: Partial<StampWith> = {}): StampWith {
  let made = 0;
  return {
    runId: "run-1",
    device: "phone-a",
    act: "act-1",
    now: 1000,
    last: HLC_ZERO,
    notBefore: 0,
    newId: () => `event-${made++}`,
    ...rest,
  };
}

test("drafts become events of one act, in order, each with an id and a stamp of its own", () => {
  const finished: Draft = { type: "step.finished", visit: "build#1" };
  const events = stampDrafts([NOTE, finished], stamping());
  const common = { runId: "run-1", device: "phone-a", act: "act-1", at: 1000, v: 1 };
  expect(events).toEqual([
    { ...common, id: "event-0", hlc: { ms: 1000, n: 0 }, ...NOTE },
    { ...common, id: "event-1", hlc: { ms: 1000, n: 1 }, ...finished },
  ]);
  for (const event of events) expect(eventSchema.parse(event)).toEqual(event);
  expect(stampDrafts([], stamping())).toEqual([]);
});

test.each<[string, Partial<StampWith>, Draft, number]>([
  ["the phone's clock", { now: 5000, notBefore: 4000 }, NOTE, 5000],
  ["not before the log's latest moment", { now: 3000, notBefore: 4000 }, NOTE, 4000],
  ["a clock before 1970 counts from there", { now: -10 }, NOTE, 0],
  [
    "a clock that was put back takes the log back",
    { now: 1000, notBefore: 4000 },
    shift(-3000),
    1000,
  ],
  ["a clock that was put forward does not", { now: 4500, notBefore: 4600 }, shift(3000), 4600],
])("the moment of an act: %s", (_, by, draft, at) => {
  expect(stampDrafts([draft], stamping(by)).map((event) => event.at)).toEqual([at]);
});

test("property: stamps strictly rise over acts, and no act goes back unless the log says why", () => {
  const acts = fc.array(
    fc.record({
      now: fc.integer({ min: 0, max: 100_000 }),
      drafts: fc.array(fc.constantFrom(NOTE, shift(-500), shift(500)), {
        minLength: 1,
        maxLength: 4,
      }),
    }),
  );
  fc.assert(
    fc.property(acts, (all) => {
      let last = HLC_ZERO;
      let notBefore = 0;
      for (const { now, drafts } of all) {
        const putBack = drafts.some((draft) => draft.type === "clock.shifted" && draft.byMs < 0);
        const events = stampDrafts(drafts, stamping({ now, last, notBefore }));
        for (const { hlc, at } of events) {
          expect(compareHlc(hlc, last)).toBeGreaterThan(0);
          expect(at).toBeGreaterThanOrEqual(putBack ? now : notBefore);
          last = hlc;
        }
        notBefore = events.at(-1)?.at ?? notBefore;
      }
    }),
  );
});

test.each([0.5, Number.NaN, Number.POSITIVE_INFINITY])(
  "a clock that says %s is our mistake",
  (now) => {
    expect(() => stampDrafts([NOTE], stamping({ now }))).toThrow(
      new RangeError(`a clock must give whole milliseconds, got ${now}`),
    );
  },
);
