import { expect, test } from "vitest";

const sources = import.meta.glob<string>("../../core/**/*.ts", {
  query: "?raw",
  import: "default",
  eager: true,
});
const modules = import.meta.glob<Record<string, unknown>>("../../core/**/*.ts", { eager: true });
const units = Object.assign({}, ...Object.values(modules));

const EXAMPLE =
  /^ *\* (?<call>\S.*?);? \/\/ => (?<want>-?[\d.]+(?:e[-+]?\d+)?)(?: ± (?<by>[\d.]+(?:e[-+]?\d+)?))?$/;

const examples = Object.entries(sources).flatMap(([path, text]) =>
  text
    .split("\n")
    .filter((line) => line.includes("// =>"))
    .map((line) => ({ path: path.replace("../../", ""), line, parts: EXAMPLE.exec(line)?.groups })),
);

test("there are examples, and each reads as one call, a number and a tolerance", () => {
  expect(examples.length).toBeGreaterThan(0);
  expect(examples.filter(({ parts }) => !parts).map(({ path, line }) => path + line)).toEqual([]);
});

test("no two core modules export the same name", () => {
  const names = Object.values(modules).flatMap((module) => Object.keys(module));
  expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
});

for (const { path, parts } of examples) {
  test(`${path}: ${parts?.call}`, () => {
    const run = new Function(...Object.keys(units), `return ${parts?.call}`);
    const got = run(...Object.values(units));
    expect(Math.abs(got - Number(parts?.want))).toBeLessThanOrEqual(Number(parts?.by ?? 0));
  });
}
