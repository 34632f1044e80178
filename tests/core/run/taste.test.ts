import { expect, test } from "vitest";
import { ASPECTS, MOST_SCORE, REPEATS, scoresSchema, VERDICTS } from "../../../core/run/taste.ts";

test("every aspect is scored from nothing to the most, in whole steps, or not at all", () => {
  for (const aspect of ASPECTS) {
    expect(scoresSchema.parse({ [aspect]: 0 })).toEqual({ [aspect]: 0 });
    expect(scoresSchema.parse({ [aspect]: MOST_SCORE })).toEqual({ [aspect]: MOST_SCORE });
    for (const wrong of [-1, MOST_SCORE + 1, 2.5, "7", null, Number.NaN]) {
      expect(scoresSchema.safeParse({ [aspect]: wrong }).success, `${aspect} ${wrong}`).toBe(false);
    }
  }
  expect(scoresSchema.parse({})).toEqual({});
  // What nobody knows is not taken in.
  expect(scoresSchema.parse({ colour: 4, loudness: 9 })).toEqual({ colour: 4 });
});

test("a sip goes from the eye to the throat; three answers each for the whole", () => {
  expect([ASPECTS[0], ASPECTS.at(-1)]).toEqual(["clarity", "finish"]);
  expect(ASPECTS).toHaveLength(8);
  expect(VERDICTS).toEqual(["good", "fair", "poor"]);
  expect(REPEATS).toEqual(["yes", "with-changes", "no"]);
});
