import { beforeEach, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { money, volume } from "../../app/words/format.ts";
import { NEW_HOUSE } from "../../core/spec/house-rules.ts";
import { lotsFor } from "../../core/spec/lots.ts";
import { roundedPlan } from "../../core/spec/rounded-plan.ts";
import { axeFinds, faintWords, sticksOut } from "../support/look/readable.ts";
import {
  frozenPlan,
  PEAR,
  planOwn,
  SIXTY,
  STYLE,
  section,
  slide,
  textOf,
  unfold,
} from "../support/phone/at-plan.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import { goTo, holdOf, shot, storedLog, tapOf, untilStep } from "../support/phone/walk-page.ts";
import { openPlan } from "../support/phone/wash-by-hand.ts";
import { planned } from "../support/world/play-run.ts";
import { must } from "../support/world/punch-spec.ts";

const words = said.plan;

const bar = barForTests({ size: "small" });
beforeEach(async () => {
  await bar.afresh();
});

const tapIn = (name: string) => bar.hands.tap(tapOf(bar.page, name).first());

test("amounts in the house's steps: what is shown is what the run pours, and the change is said", async () => {
  const { page, hands } = bar;
  await goTo(page, routes.kit);
  await hands.tap(page.getByRole("radio", { name: said.kit.tools.ml("2.5"), exact: true }));
  await openPlan(bar, "Pear Beacon");
  await tapIn(words.measure.jigger("2.5 ml"));
  const exact = planned(PEAR, SIXTY);
  const tools = { volumeStep: 2.5, massStep: 1, weigh: "volumes" } as const;
  const { plan, change } = must(roundedPlan(exact, tools, NEW_HOUSE));
  const rounding = page.locator(".plan-rounding");
  await rounding.waitFor();
  expect(Math.abs(change.volume)).toBeGreaterThan(1);
  const by = Math.round(Math.abs(change.volume));
  expect(await textOf(rounding)).toContain(`volume ${change.volume < 0 ? "−" : "+"}${by} ml`);
  const rum = plan.lines.find(({ lineId }) => lineId === "rum");
  expect((rum?.before.ml ?? 0.1) % 2.5).toBe(0);
  const poured = `${rum?.before.ml} ml`;
  expect(await textOf(page.locator(".plan-amounts"))).toContain(poured);
  await shot(page, "plan-jigger");
  await hands.hold(holdOf(page, words.start));
  await untilStep(page, "build");
  expect(await frozenPlan(page)).toEqual(plan);
  expect(await textOf(page.locator(".run-lines"))).toContain(poured);

  // The house's choice stands for the next plan too.
  await openPlan(bar, "Pear Beacon");
  await page.locator(".plan-rounding").waitFor();
  await tapIn(words.measure.exact);
  await page.locator(".plan-rounding").waitFor({ state: "detached" });
});

test("too much for the largest vessel: equal lots, one of them started, bottles for all", async () => {
  const { page, hands } = bar;
  await goTo(page, routes.kit);
  const vessel = page.getByLabel(said.kit.tools.vessel);
  for (const typed of ["lots", "-5", "12", ""]) {
    await vessel.fill(typed);
    await page.getByText(said.kit.tools.vesselFault).waitFor();
    expect(await vessel.inputValue()).toBe(typed);
  }
  await vessel.fill("2500");
  await page.getByText(said.kit.tools.vesselHint).waitFor();
  await openPlan(bar, "Pear Beacon");
  const whole = planned(PEAR, SIXTY);
  const { count, plan } = must(lotsFor(whole, 2500, NEW_HOUSE));
  expect(count).toBe(3);
  const lots = page.locator(".plan-say").first();
  expect(await textOf(lots)).toContain("Make 3 equal lots");
  expect(await textOf(section(page, "measure"))).toContain(volume(plan.milk?.ml ?? 0, STYLE));
  await unfold(page, "pull");
  expect(await textOf(section(page, "pull"))).toContain(words.pull.lots(3));
  await shot(page, "plan-lots");
  await hands.hold(holdOf(page, words.start));
  await untilStep(page, "build");
  expect(await frozenPlan(page)).toEqual(plan);

  await openPlan(bar, "Pear Beacon");
  await tapIn(words.vessel.all);
  await hands.hold(holdOf(page, words.start));
  await untilStep(page, "build");
  const starts = (await storedLog(page)).flatMap((event) =>
    event.type === "run.started" ? [event.plan] : [],
  );
  expect(starts).toEqual([plan, whole]);
});

const REFUSED = [
  { target: 0.9, says: "just below 42.0 %", offers: words.nearest("41.9 %") },
  { target: 0.05, says: "already stronger than that. The nearest is", offers: "Top up to 13." },
] as const;

for (const { target, says, offers } of REFUSED) {
  test(`a top-up to ${target * 100} % cannot be: the sentence says the nearest, a button takes it`, async () => {
    await planOwn(bar, {
      ...PEAR,
      id: "far",
      name: "Too Far",
      topUp: { rule: "strength", target },
    });
    const { page, hands } = bar;
    const cannot = page.locator(".plan-cannot");
    await cannot.waitFor();
    expect(await textOf(cannot)).toContain(says);
    expect(await textOf(cannot)).not.toMatch(/0\.\d{3,}/u);
    await shot(page, `plan-refused-${target}`);
    expect(await holdOf(page, words.start).count()).toBe(0);
    const offer = cannot.getByRole("button");
    expect(await textOf(offer)).toContain(offers);
    await hands.tap(offer);
    await holdOf(page, words.start).waitFor();
    expect(await textOf(page.locator(".plan-say").first())).toContain("top-up to");
  });
}

test("cost: ingredients without a price lead to the cupboard; with prices, a serve and its share", async () => {
  const { page, hands } = bar;
  const serve = { ...PEAR.serve, price: 14 };
  await planOwn(bar, { ...PEAR, id: "priced", name: "Priced", serve });
  await unfold(page, "cost");
  expect(await textOf(section(page, "cost"))).toContain(words.cost.noPrices);
  await hands.tap(section(page, "cost").getByRole("link", { name: /Aged pot-still rum/u }));
  await page.getByLabel(said.ingredient.paid, { exact: true }).fill("35");
  await page.getByLabel(said.ingredient.pack, { exact: true }).fill("700 ml");
  await tapIn(said.ingredient.save);
  await page.getByText(said.ingredient.own, { exact: true }).waitFor();
  await goTo(page, routes.plan("priced"));
  const text = await textOf(section(page, "cost").locator("summary"));
  const plan = planned({ ...PEAR, serve }, SIXTY);
  const rum = plan.lines.find(({ lineId }) => lineId === "rum")?.before.ml ?? 0;
  expect(text).toContain(`at least ${money((rum * 35) / 700 / 60, "€")} a serve`);
  expect(text).toContain(`${((rum * 35) / 700 / 60 / 0.14).toFixed(0)} % of its price`);
});

test("every number opens its working, down to what it was made from", async () => {
  const { page } = bar;
  await openPlan(bar, "Pear Beacon");
  for (const name of ["curdle", "balance", "pull", "cost", "cold", "care"])
    await unfold(page, name);
  const buttons = page.locator(".figure-button");
  const count = await buttons.count();
  expect(count).toBeGreaterThan(45);
  for (let at = 0; at < count; at += 1) {
    const shown = (await textOf(buttons.nth(at).locator(".figure-button-number"))).trim();
    await buttons.nth(at).click();
    const sheet = page.locator("dialog[open]");
    await sheet.waitFor();
    const text = await textOf(sheet);
    expect(text, shown).toContain(words.source);
    expect(text, shown).toContain(words.formula);
    // No code where a name or a sentence should stand.
    expect(text, shown).not.toMatch(/\b[a-z]+-[a-z]+(?:-[a-z]+)*:|undefined|NaN/u);
    expect(text, shown).toContain(shown.replace(/[^\d.,−]/gu, ""));
    await page.keyboard.press("Escape");
    await sheet.waitFor({ state: "detached" });
  }
  await buttons.first().click();
  await page.locator("dialog summary").first().click();
  expect(await textOf(page.locator("dialog"))).toContain(words.rules.mass);
});

test("cautions stand where they matter, each with its source, and no drink is called safe", async () => {
  const { page } = bar;
  await openPlan(bar, "Boatyard Flip-Side");
  const care = section(page, "care");
  expect(await textOf(care.locator("summary"))).toContain("Contains milk, sulphites");
  expect(await textOf(section(page, "measure"))).toContain(words.care.cold);
  await unfold(page, "care");
  const text = await textOf(care);
  for (const code of ["milk-stays", "keep-cold", "grapefruit", "fresh-juice"]) {
    expect(text).toContain(said.cautions.full(code));
    expect(text).toContain(words.care.sources[code]);
  }
  expect(text).toContain(words.care.local);
  await openPlan(bar, "Pear Beacon");
  expect(await textOf(section(page, "measure"))).toContain(said.cautions.short("overproof"));
});

test("freezer and glass: the bottle that freezes, and the slush that is one", async () => {
  const { page } = bar;
  await openPlan(bar, "Harbour Slush");
  const says = await textOf(section(page, "cold").locator("summary"));
  expect(says).toContain(words.cold.texture.slush);
  expect(says).toMatch(/Bottle freezes, from −\d+ °C down/u);
});

test("unfolded, in both themes, the plan is readable, and nothing is too small or too wide", async () => {
  const { page } = bar;
  await openPlan(bar, "Pear Beacon");
  for (const name of ["curdle", "balance", "what-if", "pull", "cost", "cold", "care"]) {
    await unfold(page, name);
  }
  await slide(page, 0.5);
  const small = await page
    .locator("main :is(button, a, select, input, summary)")
    .evaluateAll((all) =>
      all.flatMap((one) => {
        const { width, height } = one.getBoundingClientRect();
        const inText = one.matches("p a");
        return !inText && (width < 47.5 || height < 47.5) ? [one.outerHTML.slice(0, 100)] : [];
      }),
    );
  expect(small).toEqual([]);
  for (const colorScheme of ["dark", "light"] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await sticksOut(page)).toEqual([]);
    expect(await faintWords(page)).toEqual([]);
    expect(await axeFinds(page)).toEqual([]);
  }
});
