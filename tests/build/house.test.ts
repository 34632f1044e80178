import { expect, test } from "vitest";

const code = import.meta.glob<string>("../../{app,core,service-worker,tests}/**/*.{ts,tsx,mjs}", {
  query: "?raw",
  import: "default",
  eager: true,
});
const css = import.meta.glob<string>("../../app/{screens,parts}/**/*.css", {
  query: "?raw",
  import: "default",
  eager: true,
});

const files = Object.entries(code).map(([path, text]) => ({
  path: path.replace("../../", "").replace("../", "tests/").replace("./", "tests/build/"),
  text,
}));
const paths = files.map(({ path }) => path);
const named = (list: readonly { readonly path: string }[]) => list.map(({ path }) => path);
const lines = (text: string) => text.trimEnd().split("\n").length;

const TABLE = /-table\.ts$/;
const RUNS = /^export (?:async )?(?:function|const|class)/m;

test("the globs saw the house", () => {
  expect(paths).toEqual(
    expect.arrayContaining([
      "core/quantity/amount.ts",
      "app/main.tsx",
      "service-worker/service-worker.ts",
      "tests/build/budget.test.ts",
      "tests/support/tool/server.ts",
    ]),
  );
  const stylesheets = Object.entries(css);
  expect(stylesheets.filter(([, text]) => text.trim() === "").map(([path]) => path)).toEqual([]);
});

test("every core module that runs has its own test file", () => {
  const wanted = files
    .filter(({ path, text }) => path.startsWith("core/") && !TABLE.test(path) && RUNS.test(text))
    .map(({ path }) => `tests/${path.replace(/\.ts$/, ".test.ts")}`);
  expect(wanted.filter((path) => !paths.includes(path))).toEqual([]);
});

// One module may have several: decide.test.ts, and decide.refusals.test.ts beside it.
test("no core test has lost its module", () => {
  const wanted = paths
    .filter((path) => /^tests\/core\/.+\.test\.ts$/.test(path))
    .map((path) => path.replace(/^tests\//, "").replace(/(?:\.[a-z-]+)?\.test\.ts$/, ".ts"));
  expect(wanted.filter((path) => !paths.includes(path))).toEqual([]);
});

test("no module is longer than 250 lines", () => {
  const exempt = /-table\.ts$|\.test\.tsx?$/;
  const long = files.filter(({ path, text }) => !exempt.test(path) && lines(text) > 250);
  expect(named(long)).toEqual([]);
});

test("no file is a drawer for odds and ends", () => {
  const drawer = /\/(?:utils?|helpers?|common|types?|index|misc)\.\w+$/;
  expect(paths.filter((path) => drawer.test(path))).toEqual([]);
});

test("signals' batch() goes by another name: a batch is a drink being made", () => {
  const plain = /import \{[^}]*\bbatch\b(?! as )[^}]*\} from "@preact\/signals"/;
  const app = files.filter(({ path }) => path.startsWith("app/"));
  expect(named(app.filter(({ text }) => plain.test(text)))).toEqual([]);
});

// A sheet in a screen's own folder dresses that screen for a hand, a glove or wet glass, and with it
// the parts that stand on it.
const MODE = /\/screens\/([^/]+)\/[^/]+\.css$/;
const PARTS = Object.keys(css).flatMap((path) => /\/parts\/(.+)\.css$/.exec(path)?.[1] ?? []);

test("a class is named after its stylesheet", () => {
  const strays = Object.entries(css).flatMap(([path, text]) => {
    const block = path.replace(/^.*\/(.+)\.css$/, "$1");
    const screen = MODE.exec(path)?.[1];
    const dressed = screen === undefined ? [block] : [block, screen, ...PARTS];
    const bare = text.replace(/\/\*.*?\*\/|url\([^)]*\)|"[^"]*"/gs, "");
    return [...bare.matchAll(/\.([a-z][\w-]*)/g)]
      .map(([, name]) => name ?? "")
      .filter((name) => !dressed.some((one) => name === one || name.startsWith(`${one}-`)))
      .map((name) => `${path}: .${name}`);
  });
  expect(strays).toEqual([]);
});

test("a stylesheet stands beside the screen or part it dresses", () => {
  const alone = Object.keys(css)
    .filter((path) => !MODE.test(path))
    .map((path) => path.replace(/^(?:\.\.\/)+/, "").replace(/\.css$/, ".tsx"))
    .filter((path) => !paths.includes(path));
  expect(alone).toEqual([]);
});
