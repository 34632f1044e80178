import { expect, test } from "vitest";
import { bottleSizes } from "../../../app/screens/run/bottle-sizes.ts";

test("a batch planned for small bottles is bottled in them", () => {
  const { sizes, first } = bottleSizes({ by: "bottles", bottles: 12, size: 330 });
  expect(first).toBe(330);
  expect(sizes).toEqual([330, 500, 700, 750, 1000]);
});

test("each size is offered once; where the plan names none, 700 ml comes first", () => {
  expect(bottleSizes({ by: "bottles", bottles: 6, size: 750 })).toEqual({
    sizes: [500, 700, 750, 1000],
    first: 750,
  });
  expect(bottleSizes({ by: "volume", volume: 5000 }).first).toBe(700);
});
