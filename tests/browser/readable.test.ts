import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { axeFinds, cutOff, faintWords, moving, sticksOut } from "../support/look/readable.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import {
  goTo,
  HOUR,
  holdOf,
  MINUTE,
  OPENS,
  pass,
  putLog,
  shot,
  tapOf,
} from "../support/phone/walk-page.ts";
import { openPlan } from "../support/phone/wash-by-hand.ts";
import { allStations } from "../support/world/wash-stations.ts";

const bar = barForTests({ size: "small" });

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

/** A bench with a batch at every step, and the demo's specs. */
async function furnish(): Promise<void> {
  await bar.afresh();
  const { page } = bar;
  await openPlan(bar, "Pear Beacon");
  const events = allStations(OPENS + 10 * MINUTE).flatMap((one) => one.events);
  await putLog(bar, events, routes.bench, OPENS);
  await page.locator(".bench-row").first().waitFor();
}

const STEPS = allStations(OPENS + 10 * MINUTE).map(({ runId }) => routes.run(runId));
/** Every address of the app but the steps of a batch. */
const PLACES = [
  routes.bench,
  routes.specs,
  routes.shelf,
  routes.logbook,
  routes.kit,
  routes.cupboard,
  routes.sums,
  routes.days,
  routes.procedures,
  routes.procedure("dairy-wash"),
  routes.hand("run~run-curdle"),
  routes.spec("demo-pear-beacon"),
  routes.plan("demo-pear-beacon"),
  routes.ingredient("lemon-juice"),
  routes.dim("run-curdle"),
  routes.vessel("run-curdle"),
  routes.label("run-finished"),
  routes.sheet("run-finished"),
  routes.batch("run-finished"),
];

test("every other screen is readable in both themes, and none is wider than the phone", async () => {
  await furnish();
  const { page } = bar;
  const found: Record<string, string[]> = {};
  for (const colorScheme of THEMES) {
    await page.emulateMedia({ colorScheme });
    for (const place of PLACES) {
      await goTo(page, place);
      const seen = [
        ...(await sticksOut(page)).map((one) => `sticks out: ${one}`),
        ...(await faintWords(page)).map((one) => `faint: ${one}`),
        ...(await axeFinds(page)),
      ];
      if (seen.length > 0) found[`${place}, ${colorScheme}`] = seen;
    }
  }
  expect(found).toEqual({});
}, 120_000);

test("letters of twice the size: nothing is lost, nothing sticks out sideways (WCAG 2.2, 1.4.4)", async () => {
  await furnish();
  const { page } = bar;
  const found: Record<string, string[]> = {};
  await page.evaluate(() => {
    document.documentElement.style.fontSize = "200%";
  });
  for (const place of [...PLACES, ...STEPS]) {
    await goTo(page, place);
    const seen = [
      // Tables of figures may be wider: two ways to read them are their use (1.4.10).
      ...(await sticksOut(page, "table, table *")).map((one) => `sticks out: ${one}`),
      ...(await cutOff(page)).map((one) => `cut off: ${one}`),
    ];
    if (seen.length > 0) found[place] = seen;
  }
  expect(found).toEqual({});
}, 120_000);

test("with less motion asked for, nothing moves on any screen, nor when it rings", async () => {
  await furnish();
  const { page } = bar;
  await page.emulateMedia({ reducedMotion: "reduce" });
  const found: Record<string, string[]> = {};
  const look = async (place: string) => {
    const seen = await moving(page);
    if (seen.length > 0) found[place] = seen;
  };
  for (const place of [...PLACES, ...STEPS]) {
    await goTo(page, place);
    await look(place);
  }
  await pass(page, 2 * HOUR);
  await page.locator(".alarm-sheet").waitFor();
  await look("an alarm");
  expect(found).toEqual({});
  await page.emulateMedia({ reducedMotion: null });
});

test("with wet hands the run screen is readable at every step, in both themes", async () => {
  await furnish();
  const { page } = bar;
  const found: Record<string, string[]> = {};
  await goTo(page, routes.kit);
  const choose = async (name: string) => {
    await bar.hands.tap(page.getByRole("radio", { name, exact: true }));
    await page.locator('[aria-checked="true"]', { hasText: name }).waitFor();
  };
  await choose(said.kit.hands.always);
  for (const step of STEPS) {
    await goTo(page, step);
    for (const colorScheme of THEMES) {
      await page.emulateMedia({ colorScheme });
      const seen = [
        ...(await sticksOut(page)),
        ...(await cutOff(page)).map((one) => `cut off: ${one}`),
        ...(await faintWords(page)),
        ...(await axeFinds(page)),
      ];
      if (seen.length > 0) found[`${step}, ${colorScheme}`] = seen;
    }
  }
  expect(found).toEqual({});
}, 120_000);
