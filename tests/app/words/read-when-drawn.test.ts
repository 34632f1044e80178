import ts from "typescript";
import { expect, test } from "vitest";
import { say } from "../../../app/words/say.ts";
import { sayLater } from "../../../app/words/say-later.ts";

const code = import.meta.glob<string>("../../../app/**/*.{ts,tsx}", {
  query: "?raw",
  import: "default",
  eager: true,
});

const ROOTS: Readonly<Record<string, object>> = { say, sayLater };

/** The dotted path an expression reads; nothing for any other expression. */
function pathOf(node: ts.Expression): readonly string[] | undefined {
  if (ts.isIdentifier(node)) return [node.text];
  if (!ts.isPropertyAccessExpression(node)) return undefined;
  const before = pathOf(node.expression);
  return before && [...before, node.name.text];
}

type Aliases = ReadonlyMap<string, object>;

/** What a path of words holds: a part of the catalogue, a word, or nothing. */
function wordAt(path: readonly string[], aliases: Aliases): unknown {
  const [root = "", ...rest] = path;
  let at: unknown = aliases.get(root);
  for (const key of rest) {
    if (typeof at !== "object" || at === null) return undefined;
    at = Reflect.get(at, key);
  }
  return at;
}

const isPart = (value: unknown): value is object => typeof value === "object" && value !== null;
const isWord = (value: unknown): boolean =>
  typeof value === "string" || typeof value === "function";

/** Binds what a declaration names to the part of the catalogue it holds; words it takes are told. */
function bind(
  name: ts.BindingName,
  value: unknown,
  aliases: Map<string, object>,
): readonly string[] {
  if (!isPart(value)) return [];
  if (ts.isIdentifier(name)) {
    aliases.set(name.text, value);
    return [];
  }
  return name.elements.flatMap((one) => {
    if (!ts.isBindingElement(one)) return [];
    const key = one.propertyName ?? one.name;
    const part: unknown = ts.isIdentifier(key) ? Reflect.get(value, key.text) : undefined;
    return isWord(part) ? [one.getText()] : bind(one.name, part, aliases);
  });
}

/** Whether an expression reads a word: by its name, or by any key of a part of the catalogue. */
function readsWord(node: ts.Node, aliases: Aliases): boolean {
  if (ts.isPropertyAccessExpression(node)) {
    const path = pathOf(node);
    return path !== undefined && isWord(wordAt(path, aliases));
  }
  if (!ts.isElementAccessExpression(node)) return false;
  const path = pathOf(node.expression);
  return path !== undefined && wordAt(path, aliases) !== undefined;
}

/** Words (not whole parts of the catalogue) that a module reads while it is loaded. */
function readOnLoading(path: string, text: string): readonly string[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const aliases = new Map<string, object>(Object.entries(ROOTS));
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node)) return;
    const whole = ts.isVariableDeclaration(node) && node.initializer && pathOf(node.initializer);
    if (whole) found.push(...bind(node.name, wordAt(whole, aliases), aliases));
    if (readsWord(node, aliases)) found.push(node.getText());
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

test("a word that is taken while a module is loaded is found, a part of the catalogue is not", () => {
  const taken = `const words = sayLater.kit; const label = words.title;
    const { title, sound: { play } } = sayLater.kit; const by = sayLater.kit.theme["dark"];
    const options = [{ label: words.theme.dark }]; const later = () => words.title;`;
  expect(readOnLoading("x.ts", taken)).toEqual([
    "words.title",
    "title",
    "play",
    'sayLater.kit.theme["dark"]',
    "words.theme.dark",
  ]);
});

test("no module takes a word while it is loaded: it would keep the language of that moment", () => {
  const modules = Object.entries(code).filter(([path]) => !path.includes("/words/"));
  expect(modules.length).toBeGreaterThan(100);
  const taken = modules.flatMap(([path, text]) =>
    readOnLoading(path, text).map((word) => `${path.replace("../../../", "")}: ${word}`),
  );
  expect(taken).toEqual([]);
}, 30_000);
