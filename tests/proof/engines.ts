// The main job in three engines, against a server that is gone by then, with a table of what each of
// them can do: npm run engines [chromium] [firefox] [webkit]
// Firefox and WebKitGTK come from Debian: apt-get install firefox-esr webkit2gtk-driver xvfb
import * as z from "zod/mini";
import { note } from "../support/look/note.ts";
import { setup } from "../support/tool/build.ts";
import { serveApp } from "../support/tool/server.ts";
import { openChromium } from "./engines-chromium.ts";
import { ask, untilSeen, watched } from "./engines-hands.ts";
import { bringSpec, wholeJob } from "./engines-job.ts";
import { ABILITIES, type Ability, abilitiesOf } from "./engines-support.ts";
import { type Glass, untilDone } from "./webdriver.ts";
import { openFirefox } from "./webdriver-bidi.ts";
import { openWebKit } from "./webdriver-classic.ts";

const ENGINES: Readonly<Record<string, (origin: string) => Promise<Glass>>> = {
  chromium: openChromium,
  firefox: () => openFirefox("touch"),
  webkit: () => openWebKit("touch"),
};

interface Seen {
  readonly name: string;
  readonly can: Partial<Record<Ability, string>>;
  readonly offline: string;
  readonly job: string;
  readonly seconds: number;
}

const reason = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** Every file is stored, and the worker has taken the page over. */
const untilStored = (glass: Glass): Promise<void> =>
  untilDone(async () => {
    const controlled = () => navigator.serviceWorker?.controller != null;
    await ask(glass, z.literal(true), controlled);
  });

async function look(open: (origin: string) => Promise<Glass>): Promise<Seen> {
  const server = await serveApp();
  const began = performance.now();
  const seconds = () => Math.round((performance.now() - began) / 1000);
  let [offline, job] = ["not tried", "not tried"];
  let can: Seen["can"] = {};
  let glass: Awaited<ReturnType<typeof watch>> | undefined;
  const watch = async () => watched(await open(server.origin));
  try {
    glass = await watch();
    await glass.goTo(server.url);
    await untilSeen(glass, { css: "main" });
    await untilStored(glass);
    can = await abilitiesOf(glass);
    await server.stop();
    await glass.goTo(server.url);
    await untilSeen(glass, { css: "main h1" });
    offline = "yes";
    await bringSpec(glass);
    await wholeJob(glass);
    const faults = await glass.faults();
    job = faults.length === 0 ? "passed" : `passed, but: ${faults.join("; ")}`;
  } catch (error) {
    const shown =
      glass && (await ask(glass, z.string(), () => document.body.textContent).catch(reason));
    job = `failed: ${reason(error)}\nThe screen says: ${shown}`;
  }
  await glass?.close();
  await server.stop();
  return { name: glass?.name ?? "none", can, offline, job, seconds: seconds() };
}

function table(seen: readonly Seen[]): string {
  const rows = [
    ["", ...seen.map(({ name }) => name)],
    ...ABILITIES.map((one) => [one, ...seen.map(({ can }) => can[one] ?? "?")]),
    ["starts offline", ...seen.map(({ offline }) => offline)],
    ["the job", ...seen.map(({ job }) => job.replace(/:.*/su, ""))],
    ["took", ...seen.map(({ seconds }) => `${seconds} s`)],
  ];
  const width = (column: number) => Math.max(...rows.map((row) => (row[column] ?? "").length));
  return rows
    .map((row) =>
      row
        .map((cell, at) => cell.padEnd(width(at)))
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}

setup();
const asked = process.argv.slice(2);
const all: Seen[] = [];
for (const name of asked.length > 0 ? asked : Object.keys(ENGINES)) {
  const open = ENGINES[name];
  if (open === undefined)
    throw new RangeError(`no engine ${name}: ${Object.keys(ENGINES).join(", ")}`);
  const seen = await look(open);
  all.push({ ...seen, name: seen.name === "none" ? name : seen.name });
  note(`${name}: ${seen.job}`);
}
note(`\n${table(all)}`);
if (all.some(({ job }) => job !== "passed")) process.exitCode = 1;
