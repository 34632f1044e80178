import type { Page } from "playwright-core";
import { beforeEach, expect, test } from "vitest";
import { figureChange } from "../../app/words/change-text.ts";
import { figureText } from "../../app/words/format.ts";
import { strengthOf } from "../../core/liquid/liquid.ts";
import type { Figure } from "../../core/quantity/figure.ts";
import type { Plan } from "../../core/spec/plan.ts";
import { topUpFigure } from "../../core/spec/plan-figures.ts";
import { milkFigure, stagesOf, yieldFigure } from "../../core/spec/stages.ts";
import { withChanges } from "../../core/spec/what-if.ts";
import {
  frozenPlan,
  PEAR,
  plain,
  planOwn,
  SIXTY,
  STYLE,
  slide,
  textOf,
  unfold,
} from "../support/phone/at-plan.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import { holdOf, shot, storedIn, storedLog, tapOf, untilStep } from "../support/phone/walk-page.ts";
import { openPlan } from "../support/phone/wash-by-hand.ts";
import { demoSpec, planned } from "../support/world/play-run.ts";

const words = said.plan;

const bar = barForTests({ size: "small" });
beforeEach(async () => {
  await bar.afresh();
});

const tapIn = (name: string) => bar.hands.tap(tapOf(bar.page, name).first());

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

  await slide(page, 0.3);
  await tapIn(words.whatIf.more(words.whatIf.ratio));
  const milk = { ratio: 0.31 };
  await expectCompared(page, now, planned(withChanges(PEAR, milk), SIXTY));
  await shot(page, "plan-what-if-milk");

  await tapIn(words.whatIf.tabs.held);
  await slide(page, 0.5);
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
  expect(await storedIn(page, "specs")).toContainEqual(PEAR);
});

test("what was tried is put back, or kept in the spec as its next version", async () => {
  const { page } = bar;
  await openPlan(bar, "Pear Beacon");
  await unfold(page, "what-if");
  await slide(page, 0.5);
  expect((await row(page, `${words.whatIf.milk}, ml`)).at(-1)).toMatch(/^\+\d/u);
  await tapIn(words.whatIf.reset);
  await expect
    .poll(async () => (await row(page, `${words.whatIf.milk}, ml`)).at(-1))
    .toBe(words.whatIf.same);
  await slide(page, 0.2);
  expect((await row(page, `${words.whatIf.milk}, ml`)).at(-1)).toMatch(/^−\d/u);
  await tapIn(words.whatIf.keep);
  await page.getByText(words.whatIf.kept("2")).waitFor();
  const next = { ...withChanges(PEAR, { ratio: 0.2 }), version: 2 };
  expect(await storedIn(page, "specs")).toContainEqual(next);
  // Now is what was kept, and nothing is tried beside it.
  const now = planned(next, SIXTY);
  await expectCompared(page, now, now);
});

test("several held-back spirits move together", async () => {
  const lines = PEAR.lines.map((line) => (line.id === "rum" ? { ...line, heldBack: 0.5 } : line));
  const spec = { ...PEAR, id: "two", name: "Two Held", lines };
  await planOwn(bar, spec);
  const { page } = bar;
  await unfold(page, "what-if");
  await tapIn(words.whatIf.tabs.held);
  // 30 ml at 40 % and 10 ml at 50 %: 42.5 % of both.
  expect(await textOf(page.locator(".plan-dial b"))).toBe("43 %");
  await slide(page, 0.85);
  const heldBack = { "eau-de-vie": 1 - (0.6 * 0.15) / 0.575, rum: 1 - (0.5 * 0.15) / 0.575 };
  await expectCompared(page, planned(spec, SIXTY), planned(withChanges(spec, { heldBack }), SIXTY));
});

test("a what-if that cannot be says why beside its dial, and offers what can", async () => {
  const { page, hands } = bar;
  await openPlan(bar, "Boatyard Flip-Side");
  await unfold(page, "what-if");
  await tapIn(words.whatIf.tabs.held);
  await slide(page, 0);
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
