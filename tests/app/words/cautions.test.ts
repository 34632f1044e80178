import { afterEach, expect, test } from "vitest";
import { sources as inEnglish } from "../../../app/words/en/caution-sources.ts";
import { sources as inSpanish } from "../../../app/words/es/caution-sources.ts";
import { sources as inFrench } from "../../../app/words/fr/caution-sources.ts";
import { sayLater } from "../../../app/words/say-later.ts";
import { ENGLISH, tongue } from "../../../app/words/tongue.ts";
import { CAUTIONS } from "../../../core/spec/caution-table.ts";
import { TONGUES } from "../../support/world/tongues.ts";

afterEach(() => {
  tongue.value = ENGLISH;
});

const FROM_A_PLAN = ["milk-stays", "over-seven-days", "local-use-by", "local-sale"] as const;
const CASES = TONGUES.flatMap(([name, spoken]) =>
  [...CAUTIONS, ...FROM_A_PLAN].map((code) => [name, code, spoken] as const),
);

test.each(CASES)("%s: %s has its words, not its code", (_, code, spoken) => {
  tongue.value = spoken;
  expect(sayLater.cautions.short(code)).not.toBe(code);
  expect(sayLater.cautions.full(code).length).toBeGreaterThan(30);
});

test.each([
  ["English", inEnglish],
  ["Spanish", inSpanish],
  ["French", inFrench],
])("%s: every ingredient's caution says where it comes from", (_, sources) => {
  const without = CAUTIONS.filter((code) => (sources[code] ?? "").length < 20);
  expect(without).toEqual([]);
});

test("each language says a caution in its own words", () => {
  const said = TONGUES.map(([, spoken]) => {
    tongue.value = spoken;
    return sayLater.cautions.full("keep-cold");
  });
  expect(new Set(said).size).toBe(TONGUES.length);
});
