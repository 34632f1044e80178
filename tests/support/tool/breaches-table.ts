/** A small house with nothing wrong in it: the tools must pass it. */
export const SOUND_HOUSE: Readonly<Record<string, string>> = {
  "package.json": JSON.stringify({
    name: "planted",
    type: "module",
    dependencies: { preact: "*", idb: "*", zod: "*", "date-fns": "*" },
    devDependencies: { "fast-check": "*" },
  }),
  ...Object.fromEntries(
    ["quantity", "liquid", "acid", "spec", "method", "run", "board", "logbook", "label"].map(
      (floor) => [
        `core/${floor}/floor.ts`,
        `export type Shape = number;\nexport const ${floor} = 1;\n`,
      ],
    ),
  ),
  "app/main.tsx": `import { addDays } from "date-fns";
import { h, render } from "preact";
import { board } from "../core/board/floor.ts";
import { acid } from "../core/acid/floor.ts";
import { label } from "../core/label/floor.ts";
import { liquid } from "../core/liquid/floor.ts";
import { logbook } from "../core/logbook/floor.ts";
import { method } from "../core/method/floor.ts";
import { quantity } from "../core/quantity/floor.ts";
import { run } from "../core/run/floor.ts";
import { spec } from "../core/spec/floor.ts";
import type { Message } from "../service-worker/messages.ts";
import { now } from "./clock.ts";
import { Plain } from "./screens/plain.tsx";
import { open } from "./storage/database.ts";
export const message: Message = "hello";
export const all = [acid, board, label, liquid, logbook, method, quantity, run, spec];
render(h(Plain, {}), document.body);
open(addDays(now(), 1).getTime());
`,
  "app/clock.ts": "export const now = () => Date.now();\n",
  "app/screens/plain.tsx":
    'import { Word } from "../parts/word.tsx";\nexport const Plain = () => <Word />;\n',
  "app/screens/plain.css": ".plain { inline-size: 100%; color: var(--ink); }\n",
  "app/parts/word.tsx":
    'const KINDS = ["word"] as const;\nexport const Word = () => <b>{KINDS}</b>;\n',
  "app/storage/database.ts": `import { openDB } from "idb";
export const open = (version: number) => openDB("planted", version);
`,
  "app/style/tokens.css": ":root { --ink: #f1e7cf; }\n",
  "service-worker/service-worker.ts":
    'import type { Message } from "./messages.ts";\nexport const a: Message = "a";\n',
  "service-worker/messages.ts": "export type Message = string;\n",
  "tests/core/sound.test.ts": 'import { check } from "fast-check";\ncheck("nothing");\n',
};

/** A breach: the rule that must see it, the file it is planted in, and what stands there. */
type Breach = readonly [rule: string, path: string, text: string];

/** For dependency-cruiser; the names are the rules'. */
export const LAYER_BREACHES: readonly Breach[] = [
  [
    "no-dead-module",
    "core/quantity/hen.ts",
    'import { egg } from "./egg.ts";\nexport const hen = egg;\n',
  ],
  [
    "no-cycles",
    "core/quantity/egg.ts",
    'import { hen } from "./hen.ts";\nexport const egg = hen;\n',
  ],
  ["no-missing", "app/astray.ts", 'import { it } from "./nowhere.ts";\nexport const a = it;\n'],
  ["core-stands-alone", "core/spec/drawn.ts", 'import { h } from "preact";\nexport const a = h;\n'],
  [
    "core-stands-alone",
    "core/spec/paged.ts",
    'import { now } from "../../../app/clock.ts";\nexport const a = now;\n',
  ],
  ...[
    ["quantity", "liquid"],
    ["liquid", "acid"],
    ["acid", "liquid"],
    ["spec", "method"],
    ["method", "run"],
    ["run", "board"],
    ["board", "logbook"],
    ["logbook", "label"],
    ["label", "board"],
  ].map(
    ([floor = "", above = ""]): Breach => [
      `floor-${floor}`,
      `core/${floor}/reaching.ts`,
      `import { ${above} } from "../${above}/floor.ts";\nexport const reach = ${above};\n`,
    ],
  ),
  [
    "one-door-to-the-database",
    "app/storage/window.ts",
    'import { openDB } from "idb";\nexport const a = openDB;\n',
  ],
  [
    "one-clock",
    "app/device/watch.ts",
    'import { now } from "../clock.ts";\nexport const a = now;\n',
  ],
  [
    "screens-are-thin",
    "app/screens/thick.tsx",
    'import { open } from "../storage/database.ts";\nexport const a = open;\n',
  ],
  [
    "no-screen-to-screen",
    "app/screens/nosy.tsx",
    'import { Plain } from "./plain.tsx";\nexport const a = Plain;\n',
  ],
  [
    "parts-below-screens",
    "app/parts/proud.tsx",
    'import { Plain } from "../screens/plain.tsx";\nexport const a = Plain;\n',
  ],
  [
    "storage-knows-no-screen",
    "app/storage/vain.ts",
    'import { Plain } from "../screens/plain.tsx";\nexport const a = Plain;\n',
  ],
  [
    "worker-sees-core-only",
    "service-worker/greedy.ts",
    'import { now } from "../app/clock.ts";\nexport const a = now;\n',
  ],
  [
    "page-takes-types-from-worker",
    "app/chatty.ts",
    'import { a } from "../service-worker/service-worker.ts";\nexport const b = a;\n',
  ],
  ["nothing-ships-tests", "app/tested.ts", 'import "../tests/core/sound.test.ts";\n'],
  ["no-test-to-test", "tests/core/twin.test.ts", 'import "./sound.test.ts";\n'],
  [
    "no-dev-package-shipped",
    "app/random.ts",
    'import { check } from "fast-check";\nexport const a = check;\n',
  ],
  ["no-dead-module", "core/spec/dead.ts", "export const dead = 1;\n"],
];

const linesOfCode = (count: number) => "  count += 1;\n".repeat(count);
const longFunction = (count: number) =>
  `export function long(count: number) {\n${linesOfCode(count)}  return count;\n}\n`;

/** For Biome; the names are the rules' and, with a dot, the plugin files'. */
export const LINT_BREACHES: readonly Breach[] = [
  ["noDefaultExport", "core/spec/default.ts", "export default 1;\n"],
  [
    "noNonNullAssertion",
    "core/spec/sure.ts",
    "export const a = (b: string | null) => b!.length;\n",
  ],
  [
    "useImportType",
    "app/valued.ts",
    'import { Message } from "../service-worker/messages.ts";\nexport const a: Message = "";\n',
  ],
  ["useFilenamingConvention", "core/spec/camelCase.ts", "export const a = 1;\n"],
  ["noExplicitAny", "core/spec/any.ts", "export const a = (b: any) => b;\n"],
  ["noConsole", "app/loud.ts", 'console.log("here");\n'],
  [
    "noUnusedImports",
    "core/spec/idle.ts",
    'import { spec } from "./floor.ts";\nexport const a = 1;\n',
  ],
  [
    "useImportExtensions",
    "core/spec/bare.ts",
    'import { spec } from "./floor";\nexport const a = spec;\n',
  ],
  ["noBarrelFile", "core/spec/barrel.ts", 'export { spec } from "./floor.ts";\n'],
  ["noReExportAll", "core/spec/all.ts", 'export * from "./floor.ts";\n'],
  [
    "noExcessiveCognitiveComplexity",
    "core/spec/maze.ts",
    `export function maze(a: number) {
  for (let i = 0; i < a; i++) if (i > 1) if (i > 2) if (i > 3) if (i > 4) if (i > 5) return i;
  return a;
}
`,
  ],
  ["noExcessiveLinesPerFunction", "core/spec/long.ts", longFunction(41)],
  ["noExcessiveLinesPerFunction", "app/screens/long.tsx", longFunction(61)],
  ["noRestrictedGlobals", "core/spec/dated.ts", "export const a = new Date(0);\n"],
  ["noRestrictedGlobals", "core/spec/worded.ts", "export const a = Intl;\n"],
  ["noRestrictedGlobals", "app/stored.ts", "export const a = indexedDB;\n"],
  ["noRestrictedGlobals", "app/kept.ts", "export const a = localStorage;\n"],
  ["no-chance-in-core.grit", "core/spec/dice.ts", "export const a = () => Math.random();\n"],
  [
    "no-type-assertion.grit",
    "core/spec/claim.ts",
    "export const a = (b: unknown) => b as string;\n",
  ],
  [
    "no-type-assertion.grit",
    "tests/core/claim.ts",
    "export const a = (b: unknown) => <string>b;\n",
  ],
  ["one-clock.grit", "app/screens/now.tsx", "export const a = () => Date.now();\n"],
  [
    "one-clock.grit",
    "app/alarm/later.ts",
    "export const a = (b: () => void) => setTimeout(b, 1);\n",
  ],
  ["logical-only.grit", "app/parts/side.css", ".side { margin-left: 1rem; }\n"],
  ["logical-only.grit", "app/parts/size.css", ".size { max-width: 1rem; }\n"],
  ["raw-colour.grit", "app/parts/hex.css", ".hex { border: 1px solid #abc; }\n"],
  ["raw-colour.grit", "app/parts/call.css", ".call { background: oklch(50% 0.1 60); }\n"],
  ["raw-colour.grit", "app/parts/name.css", ".name { color: white; }\n"],
  [
    "raw-colour-in-markup.grit",
    "app/parts/paint.tsx",
    'export const A = () => <path fill="#fff" />;\n',
  ],
];

/** For the compiler; the names are its codes. */
export const TYPE_BREACHES: readonly Breach[] = [
  ["TS2584", "core/spec/page.ts", "export const a = document;\n"],
  ["TS2591", "core/spec/node.ts", "export const a = process;\n"],
  ["TS2532", "core/spec/first.ts", "export const a = (b: readonly string[]) => b[0].length;\n"],
  ["TS2375", "core/spec/optional.ts", "export const a: { b?: string } = { b: undefined };\n"],
  ["TS1294", "core/spec/enum.ts", "export enum A { B }\n"],
  [
    "TS1484",
    "core/spec/verbatim.ts",
    'import { Shape } from "./floor.ts";\nexport const a: Shape = 1;\n',
  ],
];
