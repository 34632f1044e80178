import { expect, test } from "vitest";
import { type BenchOutline, toldLater, withOutline } from "../../../core/board/bench-outline.ts";

const NOON = 1_000_000_000_000;
const MINUTE = 60_000;

const PAGE = `<!doctype html>
<html lang="en" dir="ltr">
  <head><script type="module" src="./assets/index-a.js"></script></head>
  <body><div id="app"></div></body>
</html>`;

const OUTLINE: BenchOutline = {
  script: "./assets/index-a.js",
  page: '<html lang="fr" data-theme="light">',
  sheets: '<link rel="stylesheet" href="./assets/bench-b.css">',
  day: "j",
  views: [
    { inside: "<main>Pear Beacon</main>", until: NOON + MINUTE },
    { inside: "<main>Pear Beacon, due</main>", until: NOON + 60 * MINUTE },
  ],
};

/** The same with one view. */
const showing = (inside: string): BenchOutline => ({
  ...OUTLINE,
  views: [{ inside, until: NOON + MINUTE }],
});

test("the page begins with what the Bench showed, in its language, with its sheet", () => {
  expect(withOutline(PAGE, OUTLINE, NOON)).toBe(`<!doctype html>
<html lang="fr" data-theme="light">
  <head><script type="module" src="./assets/index-a.js"></script><link rel="stylesheet" href="./assets/bench-b.css"></head>
  <body><div id="app" data-outline><main>Pear Beacon</main></div></body>
</html>`);
});

test("times are told as of the moment the page is asked for", () => {
  const inside = [
    toldLater("left", NOON + 90_000),
    toldLater("left", NOON + 51 * 60 * MINUTE),
    `for ${toldLater("ago", NOON - 42 * MINUTE)}`,
  ].join("|");
  expect(withOutline(PAGE, showing(inside), NOON + 1000)).toContain(
    '<div id="app" data-outline>1:29|2 j 2 h|for 42 min</div>',
  );
});

test.each([
  ["the Bench looks otherwise by now", {}, NOON + 60 * MINUTE],
  ["another build drew it", { script: "./assets/index-z.js" }, NOON],
  ["until when it holds is not known", { views: [{ inside: "", until: Number.NaN }] }, NOON],
])("nothing where %s", (_, other, now) => {
  expect(withOutline(PAGE, { ...OUTLINE, ...other }, now)).toBeUndefined();
});

test("when a wait has ended, as the Bench stands then", () => {
  expect(withOutline(PAGE, OUTLINE, NOON + MINUTE - 1)).toContain("<main>Pear Beacon</main>");
  expect(withOutline(PAGE, OUTLINE, NOON + MINUTE)).toContain("<main>Pear Beacon, due</main>");
});

test("nothing where the page has no place for it", () => {
  expect(withOutline(PAGE.replace('id="app"', 'id="it"'), OUTLINE, NOON)).toBeUndefined();
});

test("a name may be any text: it is no pattern", () => {
  const inside = "<main>$&amp; $' $1 $$ {left 5}</main>";
  expect(withOutline(PAGE, showing(inside), NOON)).toContain(`data-outline>${inside}<`);
});
