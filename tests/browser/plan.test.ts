import type { Locator, Page } from "playwright-core";
import { beforeEach, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { figureChange } from "../../app/words/change-text.ts";
import { figureText, money, volume } from "../../app/words/format.ts";
import { strengthOf } from "../../core/liquid/liquid.ts";
import type { Figure } from "../../core/quantity/figure.ts";
import { NEW_HOUSE } from "../../core/spec/house-rules.ts";
import { lotsFor } from "../../core/spec/lots.ts";
import type { Plan } from "../../core/spec/plan.ts";
import { topUpFigure } from "../../core/spec/plan-figures.ts";
import { roundedPlan } from "../../core/spec/rounded-plan.ts";
import type { Spec } from "../../core/spec/spec.ts";
import { milkFigure, stagesOf, yieldFigure } from "../../core/spec/stages.ts";
import { withChanges } from "../../core/spec/what-if.ts";
import { axeFinds, faintWords, sticksOut } from "../support/look/readable.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import { goTo, holdOf, shot, storedLog, tapOf, untilStep } from "../support/phone/walk-page.ts";
import { openPlan } from "../support/phone/wash-by-hand.ts";
import { demoSpec, planned } from "../support/world/play-run.ts";
import { must } from "../support/world/punch-spec.ts";

const words = said.plan;
const SIXTY = { by: "serves", serves: 60 } as const;
const STYLE = { volumes: "ml", ounce: "bar", currency: "€" } as const;
const PEAR = demoSpec("Pear Beacon");
const plain = (text: string | null) =>
  (text ?? "").replaceAll("\u00a0", " ").replaceAll("\u00ad", "");
const textOf = async (one: Locator) => plain(await one.textContent());

const bar = barForTests({ size: "small" });
beforeEach(async () => {
  await bar.afresh();
});

const section = (page: Page, name: string) => page.locator(`[data-section="${name}"]`);

/** Unfolds a section and waits for what is in it. */
async function unfold(page: Page, name: string): Promise<void> {
  await section(page, name).locator("summary").first().click();
  await section(page, name).locator(".plan-section-body").waitFor();
}

const tapIn = (name: string) => bar.hands.tap(tapOf(bar.page, name).first());
const slide = (to: number) => bar.page.locator(".plan-dial-range").fill(String(to));

/** Cells of a row of the comparison: now, what if, change. */
async function row(page: Page, label: string, at = 0): Promise<readonly string[]> {
  const rows = page.locator(".plan-compare tr").filter({
    has: page.getByRole("rowheader", { name: label, exact: true }),
  });
  const cells = await rows.nth(at).locator("td").allTextContents();
  // The range stands under its number.
  return cells.map((cell) => plain(cell).split("±")[0]?.trim() ?? "");
}

function expected(now: Figure | undefined, then: Figure | undefined): readonly string[] {
  if (now === undefined || then === undefined) throw new RangeError("both plans have the figure");
  return [
    figureText(now, STYLE, true),
    figureText(then, STYLE, true),
    figureChange(now, then, STYLE) ?? words.whatIf.same,
  ];
}

/** What stands side by side is what the core says of the two plans. */
async function expectCompared(page: Page, now: Plan, then: Plan): Promise<void> {
  const whatIf = words.whatIf;
  await expect
    .poll(() => row(page, `${whatIf.milk}, ml`))
    .toEqual(expected(milkFigure(now), milkFigure(then)));
  expect(await row(page, `${whatIf.yield}, ml`)).toEqual(
    expected(yieldFigure(now), yieldFigure(then)),
  );
  expect(await row(page, `${whatIf.topUp}, ml`)).toEqual(
    expected(topUpFigure(now), topUpFigure(then)),
  );
  const [before, after] = [stagesOf(now), stagesOf(then)];
  for (const [group, measure] of (["strength", "sugar", "acid", "ratio"] as const).entries()) {
    for (const [at, { name }] of before.entries()) {
      const cells = await row(page, words.stage[name], group);
      expect([name, measure, ...cells]).toEqual([
        name,
        measure,
        ...expected(before[at]?.[measure], after[at]?.[measure]),
      ]);
    }
  }
}

/** What the phone keeps of a store, read past the app. */
const kept = (page: Page, store: "specs"): Promise<readonly unknown[]> =>
  page.evaluate(
    (name) =>
      new Promise<unknown[]>((resolve, reject) => {
        const open = indexedDB.open("second-pour");
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const all = open.result.transaction(name).objectStore(name).getAll();
          all.onerror = () => reject(all.error);
          all.onsuccess = () => {
            open.result.close();
            resolve(all.result);
          };
        };
      }),
    store,
  );

/** Puts a spec into the phone's book past the app, and shows its plan. */
async function planOwn(spec: Spec): Promise<void> {
  const { page } = bar;
  await page.evaluate(
    (one) =>
      new Promise<void>((resolve, reject) => {
        const open = indexedDB.open("second-pour");
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const tx = open.result.transaction("specs", "readwrite");
          tx.objectStore("specs").put(one);
          tx.onerror = () => reject(tx.error);
          tx.oncomplete = () => {
            open.result.close();
            resolve();
          };
        };
      }),
    spec,
  );
  await page.goto("about:blank");
  await page.goto(bar.server.url + routes.plan(spec.id));
  await page.getByRole("heading", { name: words.title(spec.name) }).waitFor();
}

async function frozenPlan(page: Page): Promise<Plan> {
  const [begun] = await storedLog(page);
  if (begun?.type !== "run.started") throw new RangeError("expected the log to begin with a start");
  return begun.plan;
}

test("what if: every dial moves the numbers live, and the batch that starts is the one tried", async () => {
  const { page, hands } = bar;
  await openPlan(bar, "Pear Beacon");
  await unfold(page, "what-if");
  const now = planned(PEAR, SIXTY);
  await expectCompared(page, now, now);
  expect(await row(page, words.whatIf.curdles)).toEqual([
    words.verdict.clearly,
    words.verdict.clearly,
    words.whatIf.same,
  ]);

  await slide(0.3);
  await tapIn(words.whatIf.more(words.whatIf.ratio));
  const milk = { ratio: 0.31 };
  await expectCompared(page, now, planned(withChanges(PEAR, milk), SIXTY));
  await shot(page, "plan-what-if-milk");

  await tapIn(words.whatIf.tabs.held);
  await slide(0.5);
  const held = { ...milk, heldBack: { "eau-de-vie": 0.5 } };
  await expectCompared(page, now, planned(withChanges(PEAR, held), SIXTY));

  await tapIn(words.whatIf.tabs.topUp);
  await page.getByLabel(words.whatIf.rule).selectOption("strength");
  // From what all of it makes, to the next tenth of a percent.
  const bottled = Math.round(strengthOf(planned(withChanges(PEAR, held), SIXTY).final) * 1000);
  await tapIn(words.whatIf.more(words.whatIf.target));
  const topUp = { rule: "strength", target: (bottled + 1) / 1000 } as const;
  await expectCompared(page, now, planned(withChanges(PEAR, { ...held, topUp }), SIXTY));

  await tapIn(words.whatIf.tabs.size);
  await tapIn(words.whatIf.less(words.by.serves));
  const size = { by: "serves", serves: 59 } as const;
  const spec = withChanges(PEAR, { ...held, topUp });
  await expectCompared(page, now, planned(spec, size));

  // Nothing of it is in the batch until it is asked for, and the button says so.
  expect(await textOf(page.locator(".plan-start"))).toContain(words.whatIf.notUsed);
  await tapIn(words.whatIf.use);
  await page.getByText(words.startChanged).waitFor();
  expect(await textOf(page.locator(".plan-say").first())).toContain(
    "milk to punch 1 : 3.2 instead of 1 : 4; Pear eau-de-vie 42 % held back 50 % instead of 40 %",
  );
  expect(await page.getByRole("textbox", { name: words.serves, exact: true }).inputValue()).toBe(
    "59",
  );
  await hands.hold(holdOf(page, words.start));
  await untilStep(page, "build");
  expect(await frozenPlan(page)).toEqual(planned(spec, size));
  const note = (await storedLog(page)).find((event) => event.type === "note.added");
  expect(note?.type === "note.added" && plain(note.text)).toContain(
    `top-up to ${((bottled + 1) / 10).toFixed(1)} % instead of in proportion`,
  );
  // The spec in the book is as it was.
  expect(await kept(page, "specs")).toContainEqual(PEAR);
});

test("what was tried is put back, or kept in the spec as its next version", async () => {
  const { page } = bar;
  await openPlan(bar, "Pear Beacon");
  await unfold(page, "what-if");
  await slide(0.5);
  expect((await row(page, `${words.whatIf.milk}, ml`)).at(-1)).toMatch(/^\+\d/u);
  await tapIn(words.whatIf.reset);
  await expect
    .poll(async () => (await row(page, `${words.whatIf.milk}, ml`)).at(-1))
    .toBe(words.whatIf.same);
  await slide(0.2);
  expect((await row(page, `${words.whatIf.milk}, ml`)).at(-1)).toMatch(/^−\d/u);
  await tapIn(words.whatIf.keep);
  await page.getByText(words.whatIf.kept("2")).waitFor();
  const next = { ...withChanges(PEAR, { ratio: 0.2 }), version: 2 };
  expect(await kept(page, "specs")).toContainEqual(next);
  // Now is what was kept, and nothing is tried beside it.
  const now = planned(next, SIXTY);
  await expectCompared(page, now, now);
});

test("several held-back spirits move together", async () => {
  const lines = PEAR.lines.map((line) => (line.id === "rum" ? { ...line, heldBack: 0.5 } : line));
  const spec = { ...PEAR, id: "two", name: "Two Held", lines };
  await planOwn(spec);
  const { page } = bar;
  await unfold(page, "what-if");
  await tapIn(words.whatIf.tabs.held);
  // 30 ml at 40 % and 10 ml at 50 %: 42.5 % of both.
  expect(await textOf(page.locator(".plan-dial b"))).toBe("43 %");
  await slide(0.85);
  const heldBack = { "eau-de-vie": 1 - (0.6 * 0.15) / 0.575, rum: 1 - (0.5 * 0.15) / 0.575 };
  await expectCompared(page, planned(spec, SIXTY), planned(withChanges(spec, { heldBack }), SIXTY));
});

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
    await planOwn({ ...PEAR, id: "far", name: "Too Far", topUp: { rule: "strength", target } });
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

test("a what-if that cannot be says why beside its dial, and offers what can", async () => {
  const { page, hands } = bar;
  await openPlan(bar, "Boatyard Flip-Side");
  await unfold(page, "what-if");
  await tapIn(words.whatIf.tabs.held);
  await slide(0);
  const cannot = page.locator(".plan-stick .plan-cannot");
  await cannot.waitFor();
  expect(await textOf(cannot)).toContain("nothing is held back");
  await hands.tap(cannot.getByRole("button", { name: words.inProportion }));
  await cannot.waitFor({ state: "detached" });
  const tried = { heldBack: { gin: 0 }, topUp: { rule: "proportion" } } as const;
  const spec = withChanges(demoSpec("Boatyard Flip-Side"), tried);
  const [, then] = await row(page, words.stage["topped-up"]);
  expect(then).toBe((strengthOf(planned(spec, SIXTY).final) * 100).toFixed(1));
});

test("cost: ingredients without a price lead to the cupboard; with prices, a serve and its share", async () => {
  const { page, hands } = bar;
  const serve = { ...PEAR.serve, price: 14 };
  await planOwn({ ...PEAR, id: "priced", name: "Priced", serve });
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
  await slide(0.5);
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
