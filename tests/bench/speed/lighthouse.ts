import { spawn } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { z } from "zod";
import { findBrowser } from "../../support/tool/find-browser.mjs";
import type { AppServer } from "../../support/tool/server.ts";
import { atLeast, say, title } from "./figures.ts";

/** The last line that runs on Node 20. */
const VERSION = "12.2.3";
const TARGETS = { performance: 98, accessibility: 100, "best-practices": 100 } as const;

const reportSchema = z.object({
  lighthouseVersion: z.string(),
  categories: z.record(
    z.string(),
    z.object({
      score: z.nullable(z.number()),
      auditRefs: z.array(z.object({ id: z.string(), weight: z.number() })),
    }),
  ),
  audits: z.record(
    z.string(),
    z.object({
      title: z.string(),
      score: z.nullable(z.number()),
      displayValue: z.optional(z.string()),
    }),
  ),
});
type Report = z.infer<typeof reportSchema>;

/** Fetched by npm when it is not in its cache; nothing of it is kept in this project. */
function fetchAndRun(url: string, into: string, browser: string): Promise<number | null> {
  const chrome = process.getuid?.() === 0 ? "--headless=new --no-sandbox" : "--headless=new";
  const args = ["--yes", `lighthouse@${VERSION}`, url, "--quiet", "--output=json"];
  const own = [`--output-path=${into}`, `--chrome-flags=${chrome}`];
  const categories = `--only-categories=${Object.keys(TARGETS).join(",")}`;
  const env = { ...process.env, CHROME_PATH: browser };
  const child = spawn("npx", [...args, ...own, categories], { stdio: "ignore", env });
  return new Promise((resolve) => {
    child.once("exit", resolve);
    child.once("error", () => resolve(null));
  });
}

async function audit(url: string): Promise<Report | undefined> {
  const folder = mkdtempSync(join(tmpdir(), "second-pour-audit-"));
  try {
    const file = join(folder, "report.json");
    const browser = findBrowser();
    if (browser === undefined) return undefined;
    await fetchAndRun(url, file, browser);
    return existsSync(file)
      ? reportSchema.parse(JSON.parse(readFileSync(file, "utf8")))
      : undefined;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const PLACES = { "first screen": "", "spec book": "#/specs", kit: "#/kit" } as const;

function tell(place: string, { categories, audits }: Report): void {
  for (const [name, least] of Object.entries(TARGETS)) {
    const category = categories[name];
    atLeast(`${place}: ${name}`, (category?.score ?? 0) * 100, least);
    for (const { id, weight } of category?.auditRefs ?? []) {
      const one = audits[id];
      if (one === undefined || (one.score ?? 1) >= 1) continue;
      say(`  ${id} (weight ${weight})`, `${one.score}: ${one.title} ${one.displayValue ?? ""}`);
    }
  }
}

/** Scores of an outside tool; "not run" where npm could not fetch it. */
export async function lighthouse(app: AppServer): Promise<void> {
  title(`Lighthouse ${VERSION}, its own simulated phone and network`);
  for (const [place, hash] of Object.entries(PLACES)) {
    const report = await audit(app.url + hash);
    if (report === undefined) say(place, "not run: npm could not fetch it, or it made no report");
    else tell(place, report);
  }
}
