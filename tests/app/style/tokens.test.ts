import { expect, test } from "vitest";
import { HOLD_FOR, WET_HOLD_FOR } from "../../../app/parts/press-rules.ts";

const [css = ""] = Object.values(
  import.meta.glob("../../../app/style/tokens.css", {
    query: "?raw",
    import: "default",
    eager: true,
  }),
).map(String);

/** The declarations of the first block after a heading. */
function blockAfter(heading: string): ReadonlyMap<string, string> {
  const from = css.indexOf(heading);
  if (from < 0) throw new RangeError(`tokens.css must hold ${heading}`);
  const open = css.indexOf("{", from + heading.length - 1);
  const body = css.slice(open + 1, css.indexOf("}", open)).replace(/\/\*[\s\S]*?\*\//g, "");
  return new Map(
    [...body.matchAll(/(--[\w-]+|color-scheme):\s*([^;]+);/g)].map((m) => [m[1] ?? "", m[2] ?? ""]),
  );
}

const dark = blockAfter(":root {");
const light = blockAfter(':root[data-theme="light"] {');
const lightUnset = blockAfter(":root:not([data-theme]) {");
const forced = blockAfter(":root[data-theme] {");

/** @source WCAG 2.2, "relative luminance" (from memory; checked below against its own examples) */
function luminance(hex: string): number {
  const channels = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255);
  const [r = Number.NaN, g = Number.NaN, b = Number.NaN] = channels.map((c) =>
    c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4,
  );
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
}

// Well-known figures: black on white 21, #767676 the lightest grey with 4.5, #595959 with 7.
test.each([
  ["#000000", "#ffffff", 21],
  ["#767676", "#ffffff", 4.54],
  ["#595959", "#ffffff", 7.0],
  ["#ff0000", "#ffffff", 4.0],
])("contrast of %s on %s is %d", (a, b, expected) => {
  expect(contrast(a, b)).toBeCloseTo(expected, 2);
});

const GROUNDS = ["--ground", "--panel", "--raised"];
/** Every pairing of words and ground the page may use. */
const WORDS: readonly (readonly [string, string])[] = [
  ...["--ink", "--ink-quiet", "--punch-ink", "--signal-ink"].flatMap((ink) =>
    GROUNDS.map((ground) => [ink, ground] as const),
  ),
  ["--on-accent", "--accent"],
  ["--on-accent", "--accent-held"],
  ["--on-signal", "--signal"],
  ["--on-signal", "--signal-held"],
  ["--on-plain", "--plain"],
  ["--on-plain", "--plain-held"],
  ["--on-punch", "--punch"],
  ["--on-curd", "--curd"],
  ["--watch-ink", "--watch-ground"],
];
/** Edges and shapes that carry meaning: 3 is WCAG 1.4.11. */
const SHAPES: readonly (readonly [string, string])[] = [
  ...["--line", "--focus", "--accent-edge", "--glass"].flatMap((edge) =>
    GROUNDS.map((ground) => [edge, ground] as const),
  ),
  ["--signal", "--ground"],
  ["--curd-grain", "--curd"],
];
const THEMES = [
  ["dark", dark],
  ["light", light],
] as const;

const rows = (pairs: readonly (readonly [string, string])[]) =>
  THEMES.flatMap(([name, theme]) => pairs.map(([a, b]) => [a, b, name, theme] as const));

test.each(rows(WORDS))("%s on %s in %s: at least 7", (a, b, _, theme) => {
  expect(contrast(theme.get(a) ?? "", theme.get(b) ?? "")).toBeGreaterThanOrEqual(7);
});

test.each(rows(SHAPES))("%s on %s in %s: at least 3", (a, b, _, theme) => {
  expect(contrast(theme.get(a) ?? "", theme.get(b) ?? "")).toBeGreaterThanOrEqual(3);
});

test("no other role is as near to the signal as to be taken for it", () => {
  for (const [, theme] of THEMES) {
    const shared = [...theme].filter(([name, value]) => {
      return (
        !name.includes("signal") &&
        [theme.get("--signal"), theme.get("--signal-ink")].includes(value)
      );
    });
    expect(shared).toEqual([]);
  }
});

test("both ways into the light theme give the same page", () => {
  expect([...lightUnset]).toEqual([...light]);
});

const isColour = ([, value]: readonly [string, string]) => value.startsWith("#");

test("light and forced colours leave no colour of the dark theme standing", () => {
  const colours = [...dark].filter(isColour).map(([name]) => name);
  expect(colours.length).toBeGreaterThan(20);
  expect(colours.filter((name) => !light.has(name))).toEqual([]);
  expect(colours.filter((name) => !forced.has(name))).toEqual([]);
  expect([...forced].filter(isColour)).toEqual([]);
});

/** A length with the phone as small as it gets: the floor of max(), in CSS px. */
const floorOf = (token: string): number =>
  Number(/^(?:max\()?([\d.]+)px/.exec(dark.get(token) ?? "")?.[1] ?? Number.NaN);

// Read at 2 m, 1 m and 0.5 m; pressed at 15 mm and 10 mm.
test.each([
  ["--type-countdown", 103],
  ["--type-verb", 57],
  ["--type-detail", 26],
  ["--touch-primary", 96],
  ["--touch-secondary", 64],
  ["--touch-least", 48],
  ["--gap-touch", 12],
])("%s is never under %d px", (token, least) => {
  expect(floorOf(token)).toBeGreaterThanOrEqual(least);
});

test("the fill takes as long as the hold", () => {
  expect(dark.get("--hold-time")).toBe(`${HOLD_FOR}ms`);
  expect(blockAfter(":root[data-wet] {").get("--hold-time")).toBe(`${WET_HOLD_FOR}ms`);
});

// Judgement: a glove is about a third wider than a finger.
test.each([
  ["--touch-primary", 128],
  ["--touch-secondary", 88],
  ["--touch-least", 64],
  ["--gap-touch", 20],
])("for gloves %s is %d px", (token, size) => {
  expect(blockAfter(":root[data-glove] {").get(token)).toBe(`${size}px`);
});

test("a pulse is slower than three flashes a second (WCAG 2.3.1)", () => {
  expect(Number.parseFloat(dark.get("--pulse") ?? "0")).toBeGreaterThan(1000 / 3);
});
