// Taps, holds, keys and seconds of the five jobs a barback does most, from the Bench, by real fingers
// on the built app; both phone sizes, every language, both themes: npm run jobs
import { routes } from "../../app/routes.ts";
import { spanish } from "../../app/words/es.ts";
import { french } from "../../app/words/fr.ts";
import { ENGLISH, type Tongue, tongue } from "../../app/words/tongue.ts";
import { setup } from "../support/build.ts";
import { note } from "../support/note.ts";
import { plannedBatch } from "../support/planned-batch.ts";
import { madeWhole, resumed, started } from "../support/play-run.ts";
import { said } from "../support/said.ts";
import { type AppServer, serveApp } from "../support/server.ts";
import {
  type Bar,
  goTo,
  HOUR,
  holdOf,
  MINUTE,
  OPENS,
  openBar,
  putLog,
  putOn,
  startAfresh,
  tapOf,
  untilStep,
} from "../support/walk-page.ts";
import { stationAt } from "../support/wash-stations.ts";
import { counted, type Effort, seconds } from "./effort.ts";

interface Job {
  readonly name: string;
  /** Lays out the phone; the job begins at the Bench. */
  readonly prepare: (bar: Bar) => Promise<void>;
  readonly walk: (bar: Bar, effort: Effort) => Promise<void>;
}

const onBench = (bar: Bar) => bar.page.locator("main.bench").waitFor();
const row = (bar: Bar) => bar.page.locator(".bench-row").first();

async function type(bar: Bar, effort: Effort, figure: string): Promise<void> {
  for (const key of figure) await bar.hands.tap(tapOf(bar.page, key));
  effort.taps -= figure.length;
  effort.keys += figure.length;
  await bar.hands.hold(holdOf(bar.page, said.run.take));
}

const washes = [
  ["good", "yes"],
  ["fair", "with-changes"],
  ["poor", "no"],
] as const;

/** A batch a day, judged in turn; the best is none of the latest. */
const history = Array.from({ length: 12 }, (_, at) => {
  const begun = started(`old-${at}`, `PB-${at}`, OPENS - (20 - at) * 24 * HOUR);
  const made = madeWhole(begun, {
    yield: 3500 + at * 10,
    topUp: 450,
    useBy: OPENS + 3 * 24 * HOUR,
  });
  const [verdict, repeat] = at === 2 ? washes[0] : (washes[1 + (at % 2)] ?? washes[1]);
  return made.then({ type: "give-verdict", verdict, repeat, text: "" }).events;
}).flat();

/** A wash that came to a step some ms ago. */
function standingAt(step: string, ago: number) {
  const { since } = stationAt("run-1", "PB-1", 0, step);
  return stationAt("run-1", "PB-1", OPENS - since - ago, step).events;
}

const JOBS: readonly Job[] = [
  {
    name: "start a planned batch",
    prepare: async (bar) => {
      await putOn(bar.page, "planned", [plannedBatch("tomorrow", OPENS + 30 * HOUR)]);
      await putLog(bar, [], routes.bench);
    },
    walk: async ({ page, hands }, effort) => {
      await hands.hold(
        page.locator(".ahead-next + .hold-button, .ahead-next ~ .hold-button").first(),
      );
      await untilStep(page, "build");
      effort.screens += 1;
    },
  },
  {
    name: "log a reading of the drip",
    prepare: async (bar) => {
      // What the filter hangs in is asked once, and was said.
      const drip = resumed(standingAt("slow-drip", 10 * MINUTE));
      const visit = drip.run.visits.at(-1)?.key ?? "";
      const { events } = drip.then({ type: "note-shape", visit, shape: "straight" });
      await putLog(bar, events, routes.bench);
    },
    walk: async (bar, effort) => {
      await bar.hands.tap(row(bar));
      await untilStep(bar.page, "slow-drip");
      await bar.hands.tap(tapOf(bar.page, said.run.collected));
      effort.screens += 2;
      await type(bar, effort, "1600");
      await bar.page.locator(".run-fact").first().waitFor();
    },
  },
  {
    name: "acknowledge the alarm, re-pour",
    prepare: async (bar) => {
      await putLog(bar, standingAt("first-pass", 5 * MINUTE), routes.bench);
      await bar.page.locator(".alarm-sheet").waitFor();
    },
    walk: async (bar, effort) => {
      const { page, hands } = bar;
      await hands.hold(holdOf(page, said.alarm.heard));
      await page.locator(".alarm-sheet").waitFor({ state: "detached" });
      await hands.hold(holdOf(page, said.run.done["first-pass"] ?? ""));
      await untilStep(page, "re-pour");
      await hands.tap(tapOf(page, said.run.typeAmount));
      effort.screens += 3;
      await type(bar, effort, "400");
      await untilStep(page, "check-clear");
    },
  },
  {
    name: "find the best batch",
    prepare: (bar) => putLog(bar, history, routes.bench),
    walk: async ({ page, hands }, effort) => {
      await hands.tap(page.locator(`.app-place[href="${routes.logbook}"]`));
      await hands.tap(tapOf(page, said.logbook.find.bestFirst));
      const best = page.locator(".logbook-row").first();
      await best.filter({ hasText: "PB-2" }).waitFor();
      await hands.tap(best);
      await page.locator("main.batch").waitFor();
      effort.screens += 2;
    },
  },
  {
    name: "print a label",
    prepare: (bar) => putLog(bar, history.slice(-60), routes.bench),
    walk: async ({ page, hands }, effort) => {
      await page.evaluate(() => {
        Reflect.set(globalThis, "print", () => Reflect.set(globalThis, "printed", true));
      });
      await hands.tap(page.locator(`.app-place[href="${routes.shelf}"]`));
      await hands.tap(page.locator('.shelf-row a[href^="#/label"]').first());
      await hands.tap(tapOf(page, said.label.print));
      await page.waitForFunction(() => Reflect.get(globalThis, "printed") === true);
      effort.screens += 2;
    },
  },
];

const NAMES = { en: "English", es: "Español", fr: "Français" } as const;

async function speak(bar: Bar, next: Tongue): Promise<void> {
  await goTo(bar.page, routes.kit);
  await bar.hands.tap(bar.page.getByRole("radio", { name: NAMES[next.language], exact: true }));
  tongue.value = next;
  await bar.page.getByRole("heading", { name: said.kit.title, exact: true, level: 1 }).waitFor();
}

/** What each job costs on one phone in one language and theme. */
async function walkAll(
  server: AppServer,
  size: "small" | "usual",
  theme: "dark" | "light",
  next: Tongue,
): Promise<readonly Effort[]> {
  let bar = await openBar({ size, theme, server });
  const efforts: Effort[] = [];
  try {
    for (const job of JOBS) {
      bar = await startAfresh(bar);
      await speak(bar, next);
      await job.prepare(bar);
      await onBench(bar);
      const { hands, effort } = counted(bar.hands);
      await job.walk({ ...bar, hands }, effort);
      efforts.push(effort);
    }
  } finally {
    tongue.value = ENGLISH;
    await bar.close();
  }
  return efforts;
}

const told = (effort: Effort): string =>
  `${effort.taps} taps, ${effort.holds} holds, ${effort.keys} keys, ${effort.sweeps} sweeps, ${effort.screens} screens: ${seconds(effort).toFixed(1)} s`;

setup();
const server = await serveApp();
const seen = new Map<string, Map<string, string[]>>();
for (const size of ["small", "usual"] as const) {
  for (const theme of ["dark", "light"] as const) {
    for (const next of [ENGLISH, spanish, french]) {
      const efforts = await walkAll(server, size, theme, next);
      for (const [at, effort] of efforts.entries()) {
        const name = JOBS[at]?.name ?? "";
        const ways = seen.get(name) ?? new Map<string, string[]>();
        const where = `${size} ${theme} ${next.language}`;
        ways.set(told(effort), [...(ways.get(told(effort)) ?? []), where]);
        seen.set(name, ways);
      }
    }
  }
}
await server.stop();
for (const [name, ways] of seen) {
  note(name);
  for (const [effort, where] of ways) {
    note(`  ${effort}${ways.size === 1 ? " (everywhere)" : ` (${where.join(", ")})`}`);
  }
}
