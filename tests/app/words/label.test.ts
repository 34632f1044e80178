import { expect, test } from "vitest";
import { cautions } from "../../../app/words/en/cautions.ts";
import { label as words } from "../../../app/words/en/label.ts";
import { labelOf } from "../../../core/label/label.ts";
import { serveCardOf } from "../../../core/label/serve-card.ts";
import { ALLERGENS } from "../../../core/spec/allergen-table.ts";
import { CAUTIONS } from "../../../core/spec/caution-table.ts";
import { SERVE_METHODS } from "../../../core/spec/spec.ts";
import { demoSpec, madeWhole, planned, started } from "../../support/world/play-run.ts";

const style = { volumes: "ml", ounce: "bar" } as const;
const MADE = Date.parse("2025-11-25T10:00:00Z");
const run = madeWhole(started("r", "PB-2511", MADE), {
  yield: 3700,
  topUp: 450,
  useBy: Date.parse("2025-12-01T12:00:00Z"),
}).run;
const label = labelOf(run);
const serve = serveCardOf(run);

test("the text that is shared says all that the cards say", () => {
  const text = words.asText(label, serve, style);
  for (const said of [
    "Pear Beacon",
    "Use by: Mon, 1 Dec 2025",
    "Batch: PB-2511",
    "Made: Tue, 25 Nov 2025",
    "Bottles: 6 × 750 ml",
    "Contains MILK",
    "Keep at 5 °C or colder",
    "Pour: 85 ml",
    "How: Stir on ice",
    "Garnish: Thin slice of pear",
    words.garnishNote,
  ]) {
    expect(text.split("\n")).toContain(said);
  }
  expect(text).toMatch(/^Strength: about \d+\.[05] % vol$/m);
  for (const code of label.cautions) expect(text).toContain(cautions.short(code));
});

test("a label alone is a text too", () => {
  expect(words.asText(label, undefined, style)).not.toMatch(/Pour|Garnish/);
});

test("a drink without allergens in the cupboard is not called free of them", () => {
  expect(words.contains([])).toMatch(/check the packs/);
  expect(words.contains(ALLERGENS).match(/[A-Z]{3,}/g)?.length).toBeGreaterThan(13);
});

test.each(SERVE_METHODS)("%s says where the water comes from", (method) => {
  const spec = demoSpec("Pear Beacon");
  const plan = planned({ ...spec, serve: { ...spec.serve, method, dilution: 0.2 } });
  const card = serveCardOf(started("r", "PB", MADE, plan).run);
  if (card === undefined) throw new RangeError("a plan has a serve");
  const water = words.serveRows(card, style).find(({ term }) => term === "Water")?.says;
  const expected = { blended: /as ice$/, straight: /^Add 17 ml$/ };
  const from = method === "blended" || method === "straight" ? expected[method] : /from the ice$/;
  expect(water).toMatch(from);
});

test("nothing poured in is said so", () => {
  const spec = demoSpec("Pear Beacon");
  const plan = planned({ ...spec, serve: { ...spec.serve, method: "straight" } });
  const card = serveCardOf(started("r", "PB", MADE, plan).run);
  expect(card && words.serveRows(card, style)).toContainEqual({
    term: "Water",
    says: "Nothing is added",
  });
});

const CODES = [...CAUTIONS, "milk-stays", "over-seven-days", "local-use-by", "local-sale"];

test.each(CODES)("%s has its words", (code) => {
  expect(cautions.short(code)).not.toBe(code);
  expect(cautions.full(code).length).toBeGreaterThan(30);
  expect(cautions.short(code).length).toBeLessThanOrEqual(48);
});

test("a caution from elsewhere shows as it was written", () => {
  expect(cautions.short("sesame-oil")).toBe("sesame-oil");
});

test("nothing is ever called safe", () => {
  const all = [
    ...CODES.flatMap((code) => [cautions.short(code), cautions.full(code)]),
    ...Object.values(cautions.house),
    words.asText(label, serve, style),
    words.strengthRule,
    words.allergenRule,
  ];
  expect(all.filter((text) => /\bsafe/i.test(text))).toEqual([]);
});
