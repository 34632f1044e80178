import { expect, test } from "vitest";
import { unitsWhere } from "../../../core/quantity/region-units.ts";

const metric = { volumes: "ml", degrees: "C" };
const american = { volumes: "oz", degrees: "F" };

// Unicode CLDR, measurementData: see the table. Bars in Britain pour in ml: common practice.
test.each([
  ["the United States", ["en-US", "en"], american],
  ["the United States in Spanish", ["es-US"], american],
  ["Britain", ["en-GB", "en-US", "en"], metric],
  ["Canada in French", ["fr-CA", "fr"], metric],
  ["Mexico", ["es-MX"], metric],
  ["Latin America", ["es-419", "en-US"], metric],
  ["Belize", ["en-BZ"], { volumes: "ml", degrees: "F" }],
  ["Puerto Rico", ["es-PR"], { volumes: "ml", degrees: "F" }],
  ["Liberia", ["en-LR"], { volumes: "oz", degrees: "C" }],
  ["a tag with a script", ["zh-Hant-TW"], metric],
  ["a tag with a script in the United States", ["zh-Hans-US"], american],
  ["a tag with more behind it", ["en-US-u-hc-h23"], american],
  ["a tag in small letters", ["en-us"], american],
  ["no country in the first language", ["es", "en-US"], american],
  ["no country at all", ["en"], metric],
  ["a variant that is no country", ["sl-rozaj"], metric],
  ["no language at all", [], metric],
])("%s", (_, tags, units) => {
  expect(unitsWhere(tags)).toEqual(units);
});
