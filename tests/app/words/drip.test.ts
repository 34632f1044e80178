import { expect, test } from "vitest";
import { drip } from "../../../app/words/en/drip.ts";
import { refusals } from "../../../app/words/en/refusals.ts";
import { FILTER_SHAPES } from "../../../core/spec/spec.ts";

test("what was weighed reads as a sum, no figure parted from its unit", () => {
  expect(drip.weigh.net("3,412 g", "812 g", "2,600 g", "2,540 ml")).toBe(
    "3,412\u00a0g − 812\u00a0g = 2,600\u00a0g, that is 2,540\u00a0ml",
  );
});

test("a weight below its vessel's says both, and what to do", () => {
  const say = refusals["weight-below-tare"];
  expect(say?.({ gross: 700, tare: 812 })).toBe(
    "700 g is less than the empty vessel (812 g). Check the digits, or weigh the vessel again.",
  );
  expect(refusals["tare-missing"]?.({})).toMatch(/^Weigh the empty vessel first/u);
});

test("every shape can be chosen, and is told in the log", () => {
  for (const shape of FILTER_SHAPES) {
    expect(drip.shapes[shape].length).toBeGreaterThan(3);
    expect(drip.looked[shape]).toMatch(/filter/u);
  }
});

test("how it usually goes: one pass or several, and no range where all took the same", () => {
  const { usually, cloudy } = drip.pass;
  expect(usually("4 min", 2, 5, "3 min", "6 min")).toBe(
    "Usually clear after about 4 min, 2 passes (5 batches, mostly 3 min to 6 min)",
  );
  expect(usually("4 min", 1, 3, "4 min", "4 min")).toBe(
    "Usually clear after about 4 min, 1 pass (3 batches, mostly 4 min)",
  );
  expect(cloudy("400 ml", 1)).toBe("Cloudy run poured back: 400 ml in 1 pass");
  expect(cloudy("650 ml", 2)).toBe("Cloudy run poured back: 650 ml in 2 passes");
});

test("no end in sight names no time, and says what helps without promising it", () => {
  const said = `${drip.forecast.never("90 %")} ${drip.forecast.help}`;
  expect(said).toContain("may never get to 90 %");
  expect(said).toContain("fresh, wetted filter");
  expect(said).not.toMatch(/\d\d:\d\d|stir/u);
});

test("the drawing is told by its last reading and by where it goes", () => {
  const { chart } = drip;
  expect(chart.told(1, "1,500 ml", "15:00")).toBe("One reading, the last 1,500 ml at 15:00.");
  expect(chart.told(3, "2,200 ml", "16:00")).toBe("3 readings, the last 2,200 ml at 16:00.");
  expect(chart.ahead("90 %", "4,050 ml", "23:00", "21:00", "02:00")).toBe(
    "90 %, 4,050 ml, about 23:00, 8 in 10 times between 21:00 and 02:00.",
  );
});
