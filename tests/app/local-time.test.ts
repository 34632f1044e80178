import { expect, test } from "vitest";
import { wallAhead } from "../../app/local-time.ts";
import { clockTime } from "../../app/words/format.ts";

// Whatever zone the tests run in: the two ways of reading the wall's clock must agree.
test.each([0, 1_773_151_234_567, 1_790_000_000_000, 1_767_225_599_999])(
  "at %d the clock on the wall shows UTC and what it is ahead",
  (at) => {
    const minutes = Math.floor((at + wallAhead(at)) / 60_000);
    const day = ((minutes % 1440) + 1440) % 1440;
    const two = (value: number) => String(value).padStart(2, "0");
    expect(`${two(Math.floor(day / 60))}:${two(day % 60)}`).toBe(clockTime(at));
  },
);

test("it is whole minutes, less than a day", () => {
  const ahead = wallAhead(1_773_151_234_567);
  expect(ahead % 60_000).toBe(0);
  expect(Math.abs(ahead)).toBeLessThan(86_400_000);
});
