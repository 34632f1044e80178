import ts from "typescript";
import { expect, test } from "vitest";

const code = import.meta.glob<string>("../../../{app,service-worker}/**/*.{ts,tsx}", {
  query: "?raw",
  import: "default",
  eager: true,
});

/** Attributes whose text a person sees or hears. */
const SHOWN =
  /^(?:aria-(?:label|description|valuetext|roledescription)|alt|title|placeholder|label|name|hint|detail|fault|note|heading|text)$/u;
/** Two words or more, or one with a capital: an id or a class is neither. */
const PROSE = /\p{L}{2,}[,.:;!?]? +\p{L}{2,}|^\p{Lu}\p{Ll}+[.!?…]?$/u;

/** What a node itself shows to a person, where it does. */
function shownBy(node: ts.Node): string | undefined {
  if (ts.isJsxText(node)) return /\p{L}{2,}/u.test(node.text) ? node.text.trim() : undefined;
  if (ts.isJsxAttribute(node)) {
    const text = node.initializer && ts.isStringLiteral(node.initializer) && node.initializer.text;
    return text && SHOWN.test(node.name.getText()) && PROSE.test(text) ? text : undefined;
  }
  const said = ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateTail(node);
  return said && !ts.isJsxAttribute(node.parent) && PROSE.test(node.text) ? node.text : undefined;
}

/** What a person may read although it stands in no catalogue. */
function shownIn(path: string, text: string): readonly string[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    // What is thrown is for us.
    if (ts.isImportDeclaration(node) || ts.isTypeNode(node) || ts.isThrowStatement(node)) return;
    const shown = shownBy(node);
    if (shown !== undefined) found.push(shown);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** What looks like words and is none for a person. */
const NO_WORDS: readonly RegExp[] = [
  // Keys of a keyboard, and what a browser may lack.
  /^(?:Enter|Escape|Backspace|Delete|Audio|Notification)$/u,
  // Style, selectors, fonts, headers, the commands of a PDF.
  /^(?:column|input[:,]|\(pointer|mm; margin|text\/plain|inline; filename|Helvetica| Tj ET)/u,
  // Each language in itself, and the one sentence that the worker says in all three.
  /^(?:English|Español|Français)$|^This file is no longer kept/u,
];

test("what a person would read is found; ids, classes and what is thrown are not", () => {
  const page = `<p class="kit-part" aria-label="Close the sheet">Saved</p>;
    const hint = late ? "Type it again." : "idle"; throw new RangeError("must be above zero");
    const told = \`Poured \${amount} of it\`;`;
  expect(shownIn("x.tsx", page)).toEqual(["Close the sheet", "Saved", "Type it again.", " of it"]);
});

// Rules of sums have their words by key: see the languages' rule texts.
test("no words for a person stand outside the catalogues", () => {
  const modules = Object.entries(code).filter(
    ([path]) => !/\/app\/(?:words|demo)\/|-table\.ts$/u.test(path),
  );
  expect(modules.length).toBeGreaterThan(150);
  const found = modules.flatMap(([path, text]) =>
    shownIn(path, text)
      .filter((words) => !NO_WORDS.some((none) => none.test(words)))
      .map((words) => `${path.replace("../../../", "")}: ${words}`),
  );
  expect(found).toEqual([]);
}, 30_000);
