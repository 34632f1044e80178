// What each job takes on the built app, counted from the Bench: npm run jobs
// Only some of them: npm run jobs -- reading label
import { LANGUAGES } from "../../app/words/tongue.ts";
import { SIZES } from "../support/phone/browser.ts";
import { countPrints, openBench } from "../support/phone/open-bench.ts";
import { openBar } from "../support/phone/walk-page.ts";
import { setup } from "../support/tool/build.ts";
import { secondsOf, type Walked } from "./jobs/keystroke-level.ts";
import { walkerAt } from "./jobs/walker.ts";
import { JOBS, type Job } from "./jobs/walks.ts";

const sizes = ["small", "usual"] as const;
const themes = ["dark", "light"] as const;
const asked = process.argv.slice(2);
const jobs = JOBS.filter(
  ({ name }) => asked.length === 0 || asked.some((word) => name.includes(word)),
);

type Bar = Awaited<ReturnType<typeof openBar>>;

/** A job on a phone of this size, in every language and both themes. */
async function walkAll(bar: Bar, job: Job): Promise<ReadonlyMap<string, Walked>> {
  const all = new Map<string, Walked>();
  for (const language of LANGUAGES) {
    for (const theme of themes) {
      await openBench(bar, job.world, { language, theme });
      const walker = await walkerAt(bar.page);
      await job.walk(walker, bar.page);
      all.set(`${language} ${theme}`, walker.walked());
    }
  }
  return all;
}

const COUNTS = ["taps", "holds", "keys", "scrolls", "screens"] as const;
const WIDE = 28;

const line = (what: string, figures: readonly string[]): void =>
  console.log(`  ${what.padEnd(WIDE)}${figures.map((one) => one.padStart(9)).join("")}`);

const figuresOf = (walked: Walked): readonly string[] => [
  ...COUNTS.map((count) => String(walked[count])),
  (walked.heldMs / 1000).toFixed(1),
  (walked.appMs / 1000).toFixed(1),
  secondsOf(walked).toFixed(1),
];

const sameCounts = (a: Walked, b: Walked): boolean => COUNTS.every((one) => a[one] === b[one]);

let apart = 0;

/** One line where all are alike in counts, and one for each that is not. */
function report(name: string, all: ReadonlyMap<string, Walked>): void {
  const [first] = all.values();
  if (first === undefined) return;
  line(name, figuresOf(first));
  for (const [where, walked] of all) {
    if (sameCounts(first, walked)) continue;
    apart += 1;
    line(`    but ${where}`, figuresOf(walked));
  }
}

setup();
console.log(`From the Bench, two batches running; the first line is en dark, seconds as it was.`);
for (const size of sizes) {
  const bar = await openBar({ size });
  await bar.page.addInitScript(countPrints);
  const { width, height } = SIZES[size];
  console.log(`\n${width} x ${height}`);
  line("", [...COUNTS, "held, s", "app, s", "all, s"]);
  for (const job of jobs) report(job.name, await walkAll(bar, job));
  for (const complaint of bar.phone.complaints) console.error(`  ${complaint}`);
  await bar.close();
}
const walks = sizes.length * jobs.length * LANGUAGES.length * themes.length;
console.log(`\n${walks} walks; ${apart} of them other than the first of their kind`);
