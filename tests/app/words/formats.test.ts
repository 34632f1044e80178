import fc from "fast-check";
import { afterEach, expect, test } from "vitest";
import { inCountry } from "../../../app/words/es/country.ts";
import { spanish } from "../../../app/words/es.ts";
import {
  abv,
  clockTime,
  countdown,
  day,
  dayMonth,
  decimals,
  duration,
  fileDate,
  mass,
  money,
  percent,
  typed,
  volume,
} from "../../../app/words/format.ts";
import { french } from "../../../app/words/fr.ts";
import { named } from "../../../app/words/joined.ts";
import { storageSize } from "../../../app/words/storage-size.ts";
import { ENGLISH, type Tongue, tongue } from "../../../app/words/tongue.ts";
import { amountIn, lengthIn, lineIn, numberIn } from "../../../app/words/typed-in.ts";
import { asWritten, typedLength } from "../../../app/words/written.ts";
import { UNIT_WORDS } from "../../../core/quantity/unit-words-table.ts";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import { TONGUES } from "../../support/world/tongues.ts";

afterEach(() => {
  tongue.value = ENGLISH;
});

const ML = { volumes: "ml", ounce: "bar" } as const;
const OUNCES = { volumes: "oz", ounce: "bar" } as const;
const AT = new Date(2026, 10, 26, 9, 5).getTime();

// Decimal comma, no mark in four digits, a point in more: the language academies' and CLDR's es-ES.
// Comma, thin spaces, and one before units and %: the French printers' custom and CLDR's fr-FR.
const SHOWN: readonly (readonly [string, Tongue, readonly string[]])[] = [
  [
    "English",
    ENGLISH,
    ["12.5", "1,250", "12,500 ml", "1.10 oz", "2.5 g", "20.4 %", "38 %", "€12.30", "12.30 kr"],
  ],
  [
    "Spanish",
    spanish,
    ["12,5", "1250", "12.500 ml", "1,10 oz", "2,5 g", "20,4 %", "38 %", "12,30 €", "12,30 kr"],
  ],
  [
    "French",
    french,
    ["12,5", "1 250", "12 500 ml", "1,10 oz", "2,5 g", "20,4 %", "38 %", "12,30 €", "12,30 kr"],
  ],
];

// Decimal point from Mexico to Peru, comma in Spain and the south: Unicode CLDR, as this engine has it.
test.each([
  [["es-MX", "es"], "1,234.5", 1.25, 1250, "$12.30"],
  [["es-PE"], "1,234.5", 1.25, 1250, "$12.30"],
  [["es-ES"], "1234,5", 1250, 1.25, "12,30 $"],
  [["es-AR"], "1234,5", 1250, 1.25, "12,30 $"],
  [["es"], "1234,5", 1250, 1.25, "12,30 $"],
  [["en-US", "fr-FR"], "1234,5", 1250, 1.25, "12,30 $"],
])(
  "Spanish on a phone set to %j writes and reads its country's figures",
  (tags, shown, point, comma, cost) => {
    tongue.value = inCountry(spanish, tags);
    expect(decimals(1234.5, 1)).toBe(shown);
    expect([numberIn("1.250")?.value, numberIn("1,250")?.value]).toEqual([point, comma]);
    expect(numberIn(typed(1234.5))?.value).toBe(1234.5);
    expect(money(12.3, "$").replace("\u00a0", " ")).toBe(cost);
    // The clock and the days stay as they were.
    expect([clockTime(AT), day(AT)]).toEqual(["09:05", "jue, 26 nov"]);
  },
);

test.each(SHOWN)("figures as %s writes them", (_, one, wanted) => {
  tongue.value = one;
  const shown = [
    decimals(12.5, 1),
    decimals(1250, 0),
    volume(12_500, ML),
    volume(33, OUNCES),
    mass(2.5),
    abv(0.204),
    percent(0.38),
    money(12.3, "€"),
    money(12.3, "kr"),
  ];
  expect(shown.map((text) => text.replaceAll(/[\u00a0\u202f]/gu, " "))).toEqual(wanted);
  // In English a line may end between a figure and its unit, elsewhere not.
  const parted = one === ENGLISH ? 6 : 0;
  expect(shown.filter((text) => text.includes(" "))).toHaveLength(parted);
});

test("dates, lengths and sizes follow the language; names of batches and files do not", () => {
  const all = () => [day(AT), clockTime(AT), duration(75 * 3_600_000), storageSize(1_200_000)];
  const machine = () => [dayMonth(AT), fileDate(AT)];
  expect([...all(), ...machine()]).toEqual([
    ...["Thu 26 Nov", "09:05", "3 d 3 h", "1.2 MB", "2611", "2026-11-26"],
  ]);
  tongue.value = spanish;
  expect([...all(), ...machine()]).toEqual([
    ...["jue, 26 nov", "09:05", "3 d 3 h", "1,2 MB", "2611", "2026-11-26"],
  ]);
  tongue.value = french;
  expect([...all(), ...machine()]).toEqual([
    ...["jeu. 26 nov.", "09:05", "3 j 3 h", "1,2 Mo", "2611", "2026-11-26"],
  ]);
  expect([named("Lait", "900 ml"), countdown(75 * 3_600_000)]).toEqual([
    "Lait\u202f: 900 ml",
    "3 j 3 h",
  ]);
});

const units = [...new Set(Object.values(UNIT_WORDS))];

test.each(TONGUES)("%s: what a field shows reads back as the same figure", (_, one) => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 9_999_999 }),
      fc.constantFrom(1, 10, 100, 1000),
      fc.constantFrom(...units),
      (parts, of, unit) => {
        tongue.value = one;
        const value = parts / of;
        expect(numberIn(typed(value))).toEqual({ value, rest: "" });
        if (value === 0 || value > 200) return;
        expect(amountIn(asWritten({ value, unit }))).toMatchObject({
          ok: true,
          value: { value: expect.closeTo(value, 6), unit, rest: "" },
        });
        expect(lengthIn(typedLength(Math.round(value) * 1500 + 1500))).toBe(
          Math.round(value) * 1500 + 1500,
        );
      },
    ),
  );
});

// Either mark parts tenths in each language; three digits after the mark of thousands are thousands.
test.each([
  [
    "English",
    ENGLISH,
    { "22,5": 22.5, "22.5": 22.5, "1,250": 1250, "1.250": 1.25, "1,250.5": 1250.5 },
  ],
  [
    "Spanish",
    spanish,
    { "22,5": 22.5, "22.5": 22.5, "1,250": 1.25, "1.250": 1250, "1.250,5": 1250.5 },
  ],
  [
    "French",
    french,
    { "22,5": 22.5, "22.5": 22.5, "1,250": 1.25, "1.250": 1.25, "1\u202f250,5": 1250.5 },
  ],
  ["all three", french, { "0,125": 0.125, ",5": 0.5, "1 1/2": 1.5, "¾": 0.75 }],
] as const)("%s: typed figures", (_, one, figures) => {
  tongue.value = one;
  const read = Object.keys(figures).map((text) => [text, numberIn(text)?.value]);
  expect(Object.fromEntries(read)).toEqual(figures);
});

test("a line is read as it is said in each language", () => {
  const named = ({ words = {} }: Tongue) =>
    CUPBOARD.map((one) => ({
      ...one,
      name: String(Reflect.get(words.ingredientNames ?? {}, one.id)),
    }));
  const meant = (one: Tongue, text: string) => {
    tongue.value = one;
    const read = lineIn(text, named(one));
    return read.ok
      ? [read.value.amount.value, read.value.amount.unit, read.value.match.sure?.id]
      : read;
  };
  expect(meant(spanish, "22,5 ml de zumo de limón")).toEqual([22.5, "ml", "lemon-juice"]);
  expect(meant(spanish, "2 golpes amargo")).toEqual([2, "dash", "aromatic-bitters-44"]);
  expect(meant(spanish, "1 cucharilla sirope de agave")).toEqual([1, "barspoon", "agave-syrup"]);
  expect(meant(french, "22,5 ml de jus d’orange")).toEqual([22.5, "ml", "orange-juice"]);
  expect(meant(french, "2 traits d'amer")).toEqual([2, "dash", "aromatic-bitters-44"]);
  expect(meant(french, "1 cuillère sirop d'agave")).toEqual([1, "barspoon", "agave-syrup"]);
});

test("lengths of time are read in each language", () => {
  expect(
    ["2 días", "1 h 30 min", "1,5 horas", "2 jours", "1 j 3 h", "45 minutos"].map(lengthIn),
  ).toEqual([48, 1.5, 1.5, 48, 27, 0.75].map((hours) => hours * 3_600_000));
});
