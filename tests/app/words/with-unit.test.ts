import { afterEach, expect, test } from "vitest";
import { figureIn } from "../../../app/words/compared.ts";
import { french } from "../../../app/words/fr.ts";
import { ENGLISH, tongue } from "../../../app/words/tongue.ts";
import { withUnit } from "../../../app/words/with-unit.ts";

afterEach(() => {
  tongue.value = ENGLISH;
});

test("a figure and its unit are parted as the language parts them", () => {
  expect(withUnit("4", "g/L")).toBe("4 g/L");
  expect(figureIn("yield-share", 0.815)).toBe("81.5 %");
  tongue.value = french;
  expect(withUnit("4", "g/L")).toBe(`4${french.gap}g/L`);
  expect(figureIn("yield-share", 0.815)).toBe(`81,5${french.gap}%`);
  expect(figureIn("milk-ratio", 0.25)).toBe(`0,25${french.gap}L`);
});

const code = import.meta.glob<string>(
  "../../../app/{ahead,label,parts,screens,settle,words}/**/*.{ts,tsx}",
  {
    query: "?raw",
    import: "default",
    eager: true,
  },
);

test("no screen joins a figure and its unit by hand", () => {
  const modules = Object.entries(code).filter(([path]) => !/words\/(?:en|es|fr)\//u.test(path));
  expect(modules.length).toBeGreaterThan(150);
  const byHand = modules.flatMap(([path, text]) =>
    [...text.matchAll(/\} (?:%|g\/L|L|°Bx)`/gu)].map(([found]) => `${path}: ${found}`),
  );
  expect(byHand).toEqual([]);
});
