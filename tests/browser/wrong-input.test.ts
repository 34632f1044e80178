import { beforeEach, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { refusals } from "../../app/words/en/refusals.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import {
  holdOf,
  OPENS,
  putLog,
  shot,
  storedLog,
  tapOf,
  typeOnPad,
  untilStep,
} from "../support/phone/walk-page.ts";
import { openPlan } from "../support/phone/wash-by-hand.ts";
import { stationsOf } from "../support/world/wash-stations.ts";

const bar = barForTests({ size: "small" });
beforeEach(async () => {
  await bar.afresh();
});

test("a size that is no number: the sentence says what to type, and nothing can be started", async () => {
  const { page, hands } = bar;
  await openPlan(bar, "Pear Beacon");
  const field = page.getByRole("textbox", { name: said.plan.serves, exact: true });
  const says = page.locator(".field-says[data-fault='true']");
  for (const typed of ["", "abc", "-3", "1e9", "0", "12 ml", "1/0"]) {
    await field.fill(typed);
    await says.waitFor();
    expect([typed, await says.textContent()]).toEqual([typed, said.plan.typed(1, 100_000)]);
    expect(await field.inputValue()).toBe(typed);
    // The last good size must not be started by mistake.
    expect([typed, await holdOf(page, said.plan.start).count()]).toEqual([typed, 0]);
  }
  await shot(page, "plan-wrong-size");
  expect(await storedLog(page)).toEqual([]);

  await field.fill("22,5");
  await says.waitFor({ state: "detached" });
  await hands.hold(holdOf(page, said.plan.start));
  await untilStep(page, "build");
  const [begun] = await storedLog(page);
  expect(begun?.type === "run.started" && begun.plan.size).toEqual({ by: "serves", serves: 22.5 });
});

const stations = new Map(
  stationsOf("run-a", "PB-1003", OPENS).map((station) => [station.step, station]),
);

/** Opens a step at its number pad. */
async function openPad(step: string, opener: string): Promise<number> {
  const station = stations.get(step);
  if (station === undefined) throw new RangeError(`the wash has no step ${step}`);
  await putLog(bar, station.events, routes.run("run-a"), station.since);
  await bar.hands.tap(tapOf(bar.page, opener));
  await bar.page.locator(".run-pad").waitFor();
  return station.events.length;
}

const tooMuch = /That is more than went into the vessel/u;
const notZero = /The amount must be more than zero/u;
const forms: readonly (readonly [
  step: string,
  opener: string,
  ...wrong: (readonly [string, RegExp])[],
])[] = [
  ["milk", said.run.otherAmount, ["0", notZero], ["9999999", /Check the digits/u]],
  ["re-pour", said.run.typeAmount, ["40000", tooMuch]],
  ["slow-drip", said.run.collected, ["9000", tooMuch]],
  ["yield", said.run.typeAmount, ["0", notZero], ["46000", tooMuch]],
  ["top-up", said.run.otherAmount, ["9999999", /Check the digits/u]],
];

for (const [step, opener, ...wrong] of forms) {
  test(`${step}: a figure that cannot be is refused with a sentence, and stays to be mended`, async () => {
    const before = await openPad(step, opener);
    const { page, hands } = bar;
    const field = page.locator(".number-pad-field");
    const fault = page.locator(".number-pad-fault");
    for (const [figure, says] of wrong) {
      await typeOnPad(bar, figure);
      await fault.filter({ hasText: says }).waitFor();
      expect(await field.inputValue()).toBe(figure);
      // Tried again as it stands, it is refused again.
      await hands.hold(holdOf(page, said.run.take));
      await fault.filter({ hasText: says }).waitFor();
      expect((await storedLog(page)).length).toBe(before);
      for (const _ of figure) await hands.tap(tapOf(page, said.run.erase));
      expect(await fault.textContent()).toBe("");
    }
    await shot(page, `pad-${step}`);
    await hands.tap(tapOf(page, said.run.backToStep));
    await page.locator(".run-pad").waitFor({ state: "detached" });
    expect((await storedLog(page)).length).toBe(before);
  });
}

test("the pad takes no letter, no sign and no second point, and no more than seven figures", async () => {
  await openPad("yield", said.run.typeAmount);
  const { page } = bar;
  const field = page.locator(".number-pad-field");
  await field.focus();
  await page.keyboard.type("-4e2a,.5x");
  expect(await field.inputValue()).toBe("42.5");
  await page.keyboard.type("123456789");
  expect(await field.inputValue()).toBe("42.51234");
});

test("no figure at all cannot be noted", async () => {
  await openPad("yield", said.run.typeAmount);
  const { page, hands } = bar;
  await hands.hold(holdOf(page, said.run.take));
  expect(await page.locator(".run-pad").count()).toBe(1);
  expect((await storedLog(page)).length).toBe(stations.get("yield")?.events.length);
});

test("bottles cannot be fewer than one, nor kept longer than the house's rule", async () => {
  const station = stations.get("bottle");
  await putLog(bar, station?.events ?? [], routes.run("run-a"), station?.since);
  const { page, hands } = bar;
  const fewer = tapOf(page, said.run.bottle.fewer);
  for (let n = 0; n < 9; n += 1) await hands.tap(fewer);
  await holdOf(page, said.run.bottle.done(1)).waitFor();
  expect(await fewer.getAttribute("aria-disabled")).toBe("true");
  const later = tapOf(page, said.run.bottle.later);
  expect(await later.getAttribute("aria-disabled")).toBe("true");
  await hands.tap(tapOf(page, said.run.bottle.earlier));
  await hands.hold(holdOf(page, said.run.bottle.done(1)));
  await untilStep(page, "label");
  const bottled = (await storedLog(page)).find((event) => event.type === "run.bottled");
  // A day less than the seven of the spec: the day of making is day 1.
  const sixth = new Date(2026, 2, 15, 23, 59, 59, 999).getTime();
  expect(bottled).toMatchObject({ bottles: [{ count: 1, size: 750 }], useBy: sixth });
});

test("every refusal a person can meet on these forms has a sentence", () => {
  for (const why of ["amount-not-positive", "reading-above-poured", "reading-not-a-number"]) {
    expect(refusals[why]?.({ most: 5000 })).toMatch(/\.$/u);
  }
});

test("an address of nothing says so, and leads on", async () => {
  const { page, hands, server } = bar;
  for (const hash of [
    "#/nowhere",
    "#/constructor",
    "#/toString/x",
    "#/run/%E0%A4%A",
    "#/spec/gone",
  ]) {
    await page.goto("about:blank");
    await page.goto(server.url + hash);
    await page.locator(".app-say").getByText(said.places.lost).or(page.locator("main")).waitFor();
    await hands.tap(page.getByRole("link", { name: said.places.bench, exact: true }));
    await page.locator("main.bench").waitFor();
  }
  await page.goto(`${server.url}#/constructor`);
  await page.getByText(said.places.lost).waitFor();
});
