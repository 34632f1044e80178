import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { DEMO_RUN } from "../../app/storage/demo.ts";
import { recordOf } from "../../core/logbook/record.ts";
import { foldRun } from "../../core/run/fold.ts";
import { axeFinds, faintWords, sticksOut } from "../support/look/readable.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import {
  goTo,
  holdOf,
  MINUTE,
  OPENS,
  pass,
  shot,
  storedLog,
  tapOf,
} from "../support/phone/walk-page.ts";
import { openPlan } from "../support/phone/wash-by-hand.ts";
import { demoHistory } from "../support/world/demo-bar.ts";

const bar = barForTests({ size: "small" });

const batches = demoHistory(OPENS).flatMap((log) => {
  const run = foldRun(log);
  return run === undefined ? [] : [recordOf(run)];
});
const pears = batches.filter(({ name }) => name === "Pear Beacon");
const found = pears.toSorted((a, b) => (b.yielded?.share ?? 0) - (a.yielded?.share ?? 0));
const failed = pears.find(({ ending }) => ending?.how === "abandoned");
const [best] = found;
const latest = pears.at(-1);

/** The history, put in from the empty Logbook. */
async function putHistory(): Promise<void> {
  await bar.afresh();
  const { page, hands } = bar;
  await goTo(page, routes.logbook);
  await hands.tap(tapOf(page, said.learnt.demo.put));
  await page.locator(".logbook-row").first().waitFor();
  // What the page says at its foot is gone before anything is looked at.
  await pass(page, MINUTE);
}

test("every screen of what batches tell is readable in both themes", async () => {
  await putHistory();
  const { page } = bar;
  const seen: Record<string, string[]> = {};
  const ids = [best, latest, failed].flatMap((one) => one?.runId ?? []);
  const screens = {
    pick: routes.compare([]),
    learnt: routes.learnt,
    drink: routes.learntOf("demo-pear-beacon"),
    "beside the plan": routes.compare(ids.slice(1, 2)),
    three: routes.compare(ids),
    services: routes.services("demo-pear-beacon"),
  };
  await goTo(page, routes.specs);
  await bar.hands.tap(tapOf(page, said.specs.putDemo));
  for (const [name, route] of Object.entries(screens)) {
    await goTo(page, route);
    await page.locator("section h2, .compare-picks li").first().waitFor();
    for (const details of await page.locator("summary").all()) await details.click();
    for (const colorScheme of ["dark", "light"] as const) {
      await page.emulateMedia({ colorScheme });
      const faults = [
        ...(await sticksOut(page)).map((one) => `sticks out: ${one}`),
        ...(await faintWords(page)).map((one) => `faint: ${one}`),
        ...(await axeFinds(page)),
      ];
      if (faults.length > 0) seen[`${name}, ${colorScheme}`] = faults;
      await shot(page, `learning-${name.replaceAll(" ", "-")}-${colorScheme}`);
    }
  }
  expect(seen).toEqual({});
}, 120_000);

test("two batches beside each other: what differed most comes first, and the drips are laid over", async () => {
  await putHistory();
  const { page, hands } = bar;
  if (best === undefined || failed === undefined) throw new RangeError("both are in the history");
  // Chosen from the list that the Logbook leads to.
  await hands.tap(page.getByRole("link", { name: said.logbook.toCompare, exact: true }));
  for (const one of [best, failed]) {
    await hands.tap(page.locator(".compare-picks button", { hasText: one.batch }));
  }
  await hands.tap(page.getByRole("link", { name: said.compare.pick.go(2), exact: true }));
  const rows = page.locator(".sides-row h3");
  await rows.first().waitFor();
  const names = await rows.allTextContents();
  expect(names[0]).toBe(said.compare.inputs.order);
  expect(names.slice(0, 4)).toContain(said.compare.inputs["pour-time"]);
  const drawn = await page
    .locator("figure.chart svg")
    .evaluateAll((all) => all.map((one) => one.getAttribute("aria-label") ?? ""));
  expect(drawn).toHaveLength(2);
  for (const text of drawn) expect(text).toMatch(/A .*B /u);
  expect(await page.locator("figure.chart table").count()).toBe(2);
});

test("a drink's page finds the trend without claiming a cause; its plan says where it learnt", async () => {
  await putHistory();
  const { page } = bar;
  await goTo(page, routes.learntOf("demo-pear-beacon"));
  const { inputs, results } = said.compare;
  const words = said.learnt.matters;
  const sentence = words.less(inputs["degrees-drip"], results["yield-share"]);
  await page.getByRole("heading", { name: sentence }).waitFor();
  expect(await page.getByText(words.why).count()).toBe(1);
  await openPlan(bar, "Pear Beacon");
  await page
    .getByText(/from 18 batches of your own/u)
    .first()
    .waitFor();
});

test("removed in one act, the history is gone and a batch that somebody began stays", async () => {
  await putHistory();
  const { page, hands } = bar;
  await openPlan(bar, "Pear Beacon");
  await hands.hold(holdOf(page, said.plan.start));
  await page.locator(".run").first().waitFor();
  const before = await storedLog(page);
  const own = before.filter(({ runId }) => !runId.startsWith(DEMO_RUN));
  expect(own.length).toBeGreaterThan(0);
  expect(before.length).toBeGreaterThan(own.length);
  await goTo(page, routes.kit);
  await hands.hold(holdOf(page, said.learnt.demo.remove));
  await tapOf(page, said.learnt.demo.put).waitFor();
  expect(await storedLog(page)).toEqual(own);
  await goTo(page, routes.logbook);
  // It says that nothing is in it once it has read all there is.
  await page.getByText(said.logbook.empty, { exact: true }).waitFor();
  expect(await page.locator(".logbook-row").count()).toBe(0);
});
