import fc from "fast-check";
import { afterEach, expect, test, vi } from "vitest";
import { withinText } from "../../../app/words/change-text.ts";
import {
  degrees,
  degreesApart,
  degreesBare,
  degreesDown,
  degreesRead,
  degreesTyped,
} from "../../../app/words/degrees.ts";
import { volume } from "../../../app/words/format.ts";
import {
  degreesChosen,
  degreeUnit,
  fromHouse,
  inHouse,
  volumeUnit,
} from "../../../app/words/house-units.ts";
import { sayLater } from "../../../app/words/say-later.ts";
import { ENGLISH, tongue } from "../../../app/words/tongue.ts";
import { celsiusIn } from "../../../app/words/typed-in.ts";
import { figure } from "../../../core/quantity/figure.ts";
import { TONGUES } from "../../support/world/tongues.ts";

afterEach(() => {
  tongue.value = ENGLISH;
  degreesChosen.value = "C";
  vi.unstubAllGlobals();
});

test.each(TONGUES)(
  "property, %s: what is typed in the house's unit is shown the same",
  (_, one) => {
    fc.assert(
      fc.property(
        fc.constantFrom("C" as const, "F" as const),
        fc.integer({ min: -2200, max: 23_000 }),
        (unit, hundredths) => {
          tongue.value = one;
          degreesChosen.value = unit;
          const typed = degreesTyped(fromHouse(hundredths / 100));
          // By the field, stored as JSON, and back.
          const stored = Number(JSON.stringify(celsiusIn(typed)));
          expect(degreesTyped(stored)).toBe(typed);
          expect(degreesRead(stored)).toBe(`${typed}${one.gap}°${unit}`);
          expect(inHouse(stored)).toBeCloseTo(hundredths / 100, 3);
          // By the pad, which hands over a number.
          expect(degreesTyped(fromHouse(hundredths / 100))).toBe(typed);
        },
      ),
    );
  },
);

test("in degrees F everything that is told is", () => {
  degreesChosen.value = "F";
  expect([
    ...[degrees(5), degrees(-18), degreesBare(2), degreesRead(3.5), degreesTyped(-4)],
    ...[degreesApart(3), degreesDown(22), degreesDown(-10)],
  ]).toEqual([...["41 °F", "0 °F", "36", "38.3 °F", "24.8"], ...["5 °F", "71 °F", "14 °F"]]);
  degreesChosen.value = "C";
  expect([degrees(5), degrees(-18), degreesRead(3.5), degreesApart(3), degreesDown(22)]).toEqual([
    ...["5 °C", "−18 °C", "3.5 °C", "3 °C", "22 °C"],
  ]);
});

test("a typed sign counts before the house's unit; what is no temperature is none", () => {
  degreesChosen.value = "F";
  expect(["41", "41 °F", "41f", "5 °C", "5c", "−4°", "- 4 F", "5,5 C"].map(celsiusIn)).toEqual([
    ...[5, 5, 5, 5, 5, -20, -20, 5.5],
  ]);
  expect(["", "warm", "5 K", "41 °F or so", "--4", "4000"].map(celsiusIn)).toEqual(
    Array(6).fill(undefined),
  );
  degreesChosen.value = "C";
  expect(["5", "41 °F", "−18 °C"].map(celsiusIn)).toEqual([5, 5, -18]);
});

test("half the width of an interval is a difference, not a temperature", () => {
  const rule = { key: "", formula: "", source: "" };
  const freezing = figure("freezing", -8, "degC", rule, [], 1);
  const style = { volumes: "ml", ounce: "bar" } as const;
  expect(withinText(freezing, style)).toBe("1 °C");
  degreesChosen.value = "F";
  expect([withinText(freezing, style), withinText(freezing, style, true)]).toEqual(["2 °F", "2"]);
});

const phoneIn = (...languages: readonly string[]) => vi.stubGlobal("navigator", { languages });

test("a house that chose nothing measures as its phone's country does", () => {
  phoneIn("en-US");
  expect([volumeUnit("auto"), degreeUnit("auto")]).toEqual(["oz", "F"]);
  expect(volume(60, { volumes: "auto", ounce: "bar" })).toBe("2.00 oz");
  // What was chosen comes first.
  expect([volumeUnit("ml"), degreeUnit("C")]).toEqual(["ml", "C"]);
  phoneIn("en-GB");
  expect([volumeUnit("auto"), degreeUnit("auto")]).toEqual(["ml", "C"]);
  expect(volume(60, { volumes: "auto", ounce: "bar" })).toBe("60 ml");
  expect([volumeUnit("oz"), degreeUnit("F")]).toEqual(["oz", "F"]);
});

/** Every text of the catalogue that needs nothing filled in, with what it stands under. */
function textsUnder(words: object): readonly string[] {
  return Object.keys(words).flatMap((key) => {
    const value: unknown = Reflect.get(words, key);
    if (typeof value === "string") return [value];
    return typeof value === "object" && value !== null ? textsUnder(value) : [];
  });
}

/** Sources keep the unit that they are written in, and so does Kit where it says so. */
const kept = () => [
  sayLater.plan.care.sources.overproof,
  sayLater.kit.units.note,
  sayLater.kit.units.C,
];

test.each(TONGUES)("%s: no sentence keeps degrees C where the house tells degrees F", (_, one) => {
  tongue.value = one;
  degreesChosen.value = "F";
  const said = [
    ...textsUnder(sayLater),
    ...["keep-cold", "oil-infusion"].flatMap((code) => [
      sayLater.cautions.short(code),
      sayLater.cautions.full(code),
    ]),
    sayLater.run.warm.within("1 h"),
    sayLater.sums.faults.temperature(degreesBare(-40), degrees(20)),
    sayLater.events.reading(
      { what: "temperature", value: 3.5, unit: "degC" },
      { volumes: "ml", ounce: "bar" },
    ),
  ];
  expect(said.filter((text) => text.includes("°F")).length).toBeGreaterThan(25);
  expect(said.filter((text) => text.includes("°C") && !kept().includes(text))).toEqual([]);
});
