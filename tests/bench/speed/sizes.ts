import {
  distSizes,
  type FileSize,
  initialScripts,
  kilobytes,
  storedFiles,
} from "../../support/tool/dist-sizes.ts";
import { say, times, title } from "./figures.ts";

interface Weight {
  readonly gzip: number;
  readonly brotli: number;
}

const sum = (files: readonly FileSize[]): Weight => ({
  gzip: files.reduce((total, { gzip }) => total + gzip, 0),
  brotli: files.reduce((total, { brotli }) => total + brotli, 0),
});

/** The style sheet that the page names itself, and so waits for. */
const isFirstSheet = (path: string) => /(?:^|\/)index-[^/]+\.css$/u.test(path);

function weigh(folder: string): Readonly<Record<string, Weight>> {
  const files = distSizes(folder);
  const scripts = initialScripts(folder);
  const stored = storedFiles(folder);
  return {
    "scripts before the first screen": sum(files.filter(({ path }) => scripts.includes(path))),
    "styles before the first screen": sum(files.filter(({ path }) => isFirstSheet(path))),
    "all that is stored on the phone": sum(files.filter(({ path }) => stored.includes(path))),
    "the worker": sum(files.filter(({ path }) => path === "service-worker.js")),
  };
}

/** What the app and the bare page weigh. */
export function sizes(app: string, bare: string): void {
  title("Sizes, kB: app, bare page");
  const floor = weigh(bare);
  for (const [what, mine] of Object.entries(weigh(app))) {
    const least = floor[what] ?? { gzip: 0, brotli: 0 };
    for (const kind of ["gzip", "brotli"] as const) {
      say(
        `${what}, ${kind}`,
        `${kilobytes(mine[kind])}, ${kilobytes(least[kind])} = ${times(mine[kind], least[kind])}`,
      );
    }
  }
}
