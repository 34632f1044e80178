// Photographs what README shows, of the app as it is built now: npm run pictures
import { mkdirSync } from "node:fs";
import { routes } from "../../../app/routes.ts";
import { said } from "../phone/said.ts";
import { goTo, HOUR, MINUTE, OPENS, openBar, putLog, tapOf } from "../phone/walk-page.ts";
import { madeWhole, resumed, started } from "../world/play-run.ts";
import { stationAt } from "../world/wash-stations.ts";
import { setup } from "./build.ts";

const FOLDER = "tests/readme";

/** A wash that came to a step some ms ago. */
function standing(runId: string, batch: string, step: string, ago: number) {
  const { since } = stationAt(runId, batch, 0, step);
  return stationAt(runId, batch, OPENS - since - ago, step).events;
}

/** Two hours into its drip, read twice. */
function dripping() {
  const drip = resumed(standing("run-drip", "PB-1003", "slow-drip", 120 * MINUTE));
  const visit = drip.run.visits.at(-1)?.key ?? "";
  const collected = (value: number) =>
    ({ type: "log-reading", visit, what: "collected", value, unit: "ml" }) as const;
  return drip
    .then({ type: "note-shape", visit, shape: "straight" })
    .then(collected(1000), 50)
    .then(collected(1800), 60).events;
}

const bottled = madeWhole(started("run-made", "PB-0803", OPENS - 50 * HOUR), {
  yield: 3600,
  topUp: 450,
  useBy: OPENS + 5 * 24 * HOUR,
}).events;

setup();
mkdirSync(FOLDER, { recursive: true });
const bar = await openBar({ size: "usual", reducedMotion: true, pixelsPerPoint: 1 });
const { page, hands } = bar;
await hands.tap(tapOf(page, said.learnt.demo.put));
await putLog(
  bar,
  [...standing("run-rest", "PB-1004", "curdle", 20 * MINUTE), ...dripping(), ...bottled],
  routes.bench,
);
await page.locator(".bench-row").nth(1).waitFor();
const pictures = [
  ["bench", routes.bench, ".ahead-next, .link-button"],
  ["drip", routes.run("run-drip"), ".run-fact"],
  ["shelf", routes.shelf, ".shelf-row"],
  ["label", routes.label("run-made"), ".label-card"],
  ["logbook", routes.logbook, ".logbook-row"],
  ["record", routes.batch("run-made"), "main h2"],
] as const;
for (const [name, hash, there] of pictures) {
  await goTo(page, hash);
  await page.locator(there).first().waitFor();
  // What moves as it is drawn has come to rest by then.
  await page.waitForTimeout(300);
  await page.screenshot({ path: `${FOLDER}/${name}.png` });
  console.log(`${FOLDER}/${name}.png`);
}
await bar.close();
