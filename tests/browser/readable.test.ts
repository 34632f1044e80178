import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { axeFinds, faintWords, sticksOut } from "../support/readable.ts";
import { said } from "../support/said.ts";
import {
  goTo,
  HOUR,
  holdOf,
  MINUTE,
  OPENS,
  openBar,
  pass,
  putLog,
  shot,
  tapOf,
} from "../support/walk-page.ts";
import { openPlan } from "../support/wash-by-hand.ts";
import { allStations } from "../support/wash-stations.ts";

let bar: Awaited<ReturnType<typeof openBar>>;

beforeAll(async () => {
  bar = await openBar({ size: "small" });
});
afterAll(() => bar.close());
afterEach(() => expect(bar.phone.complaints).toEqual([]));

const THEMES = ["dark", "light"] as const;

test("every screen of the job is readable in both themes, and none is wider than the phone", async () => {
  const { page, hands } = bar;
  const found: Record<string, string[]> = {};
  const look = async (where: string) => {
    for (const colorScheme of THEMES) {
      await page.emulateMedia({ colorScheme });
      const seen = [
        ...(await sticksOut(page)).map((one) => `sticks out: ${one}`),
        ...(await faintWords(page)).map((one) => `faint: ${one}`),
        ...(await axeFinds(page)),
      ];
      if (seen.length > 0) found[`${where}, ${colorScheme}`] = seen;
      await shot(page, `readable-${where.replace(/\W+/gu, "-")}-${colorScheme}`);
    }
  };
  await look("Bench, empty");
  await openPlan(bar, "Pear Beacon");
  await look("Plan");
  await page.getByRole("textbox", { name: said.plan.serves, exact: true }).fill("none");
  await look("Plan, wrong size");

  const stations = allStations(OPENS + 10 * MINUTE);
  const events = stations.flatMap((one) => one.events);
  await putLog(bar, events, routes.bench, OPENS);
  await page.locator(".bench-row").first().waitFor();
  await look("Bench");
  for (const { step, runId } of stations) {
    await goTo(page, routes.run(runId));
    await look(step);
  }
  await goTo(page, routes.run("run-yield"));
  await hands.tap(tapOf(page, said.run.typeAmount));
  await hands.tap(tapOf(page, "0"));
  await hands.hold(holdOf(page, said.run.take));
  await page.locator(".number-pad-fault:not(:empty)").waitFor();
  await look("the pad, refused");
  await hands.tap(tapOf(page, said.run.backToStep));
  await hands.tap(tapOf(page, said.run.more));
  await hands.tap(tapOf(page, said.run.abandon));
  await look("More");
  await pass(page, 2 * HOUR);
  await page.locator(".alarm-sheet").waitFor();
  await look("an alarm");
  await page.clock.setSystemTime(OPENS + 12 * HOUR);
  await page.getByRole("alertdialog", { name: said.clock.ask }).waitFor();
  await look("the clock's question");
  expect(found).toEqual({});
}, 120_000);
