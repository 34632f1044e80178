import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { SIZES } from "../support/phone/browser.ts";
import { said } from "../support/phone/said.ts";
import { HOUR, MINUTE, OPENS, pass, putLog, SECOND, shot } from "../support/phone/walk-page.ts";
import { type Wait, waiting } from "../support/world/waiting.ts";

const DAY = 24 * HOUR;
const RUN = routes.run("run-a");

const bar = barForTests({ size: "small" });

const log = (waitFor: number, rest: Partial<Wait> = {}) =>
  waiting({ runId: "run-a", batch: "PB-1003", from: OPENS, waitFor, ...rest });

const face = (page: Page) => page.locator(".dim-face");
const gone = (page: Page) => page.waitForFunction(() => !document.querySelector(".dim-face"));

async function openDim(waitFor: number) {
  await bar.afresh();
  const { page } = bar;
  await putLog(bar, log(waitFor), RUN, OPENS);
  await bar.hands.tap(page.getByRole("link", { name: said.handOver.dim, exact: true }));
  await face(page).waitFor();
  return bar;
}

/** How large the digits are, and whether anything reaches past the glass. */
const measured = (page: Page) =>
  page.evaluate(() => {
    const digits = document.querySelector(".dim-digits");
    const block = document.querySelector(".dim-block");
    if (digits === null || block === null) throw new RangeError("the face has no digits");
    const { left, right } = digits.getBoundingClientRect();
    const { top, bottom } = block.getBoundingClientRect();
    return {
      text: digits.textContent ?? "",
      px: Number.parseFloat(getComputedStyle(digits).fontSize),
      fits: left >= 0 && right <= innerWidth && top >= 0 && bottom <= innerHeight,
      share: (right - left) / innerWidth,
    };
  });

// The longest that each form of the digits can be; 103 px is what 2 m ask for.
test.each([
  ["59:59", HOUR - SECOND],
  ["11h59", 12 * HOUR - MINUTE],
  ["47h59", 48 * HOUR - MINUTE],
  ["9d 23h", 10 * DAY - HOUR],
  ["29d", 29 * DAY + HOUR],
])("%s is as large as the width allows, on both sizes of phone", async (text, waitFor) => {
  const { page } = await openDim(waitFor);
  for (const size of ["small", "usual"] as const) {
    await page.setViewportSize(SIZES[size]);
    // The time that went by while the page was opened is within the last sign.
    await expect
      .poll(async () => (await measured(page)).share, { timeout: 10_000 })
      .toBeGreaterThan(0.85);
    const { px, fits, ...shown } = await measured(page);
    expect(shown.text.length).toBe(text.length);
    expect(px, size).toBeGreaterThanOrEqual(103);
    expect(fits, size).toBe(true);
    await shot(page, `dim-${text}-${size}`);
  }
  await page.setViewportSize(SIZES.small);
});

test("black but for dim digits, nothing moves by itself, and each minute it is elsewhere", async () => {
  const { page } = await openDim(45 * MINUTE);
  const look = await page.evaluate(() => {
    const of = (name: string) => {
      const found = document.querySelector(name);
      if (found === null) throw new RangeError(`the face has no ${name}`);
      return getComputedStyle(found);
    };
    return {
      ground: of(".dim").backgroundColor,
      ink: of(".dim-digits").color,
      glass: of(".dim-glass").opacity,
      moving: document.getAnimations().length,
      covers: [
        [1, 1],
        [innerWidth - 1, innerHeight - 1],
      ].map(([x = 0, y = 0]) => document.elementFromPoint(x, y)?.closest(".dim") !== null),
    };
  });
  expect(look).toEqual({
    ground: "rgb(0, 0, 0)",
    ink: "rgb(220, 159, 66)",
    glass: "0.4",
    moving: 0,
    covers: [true, true],
  });
  const places = new Set<string>();
  for (let minute = 0; minute < 6; minute += 1) {
    const place = await page.locator(".dim-block").evaluate((one) => one.style.transform);
    places.add(place);
    await pass(page, MINUTE);
  }
  expect(places.size).toBeGreaterThanOrEqual(5);
});

test("several batches: the soonest shows, and how many wait besides", async () => {
  await bar.afresh();
  const { page } = bar;
  const other = { runId: "run-b", batch: "BFS-1", spec: "Boatyard Flip-Side" };
  const third = { runId: "run-c", batch: "PB-1005" };
  await putLog(
    bar,
    [...log(2 * HOUR), ...log(50 * MINUTE, other), ...log(3 * HOUR, third)],
    routes.dim("run-a"),
    OPENS,
  );
  await face(page).getByText("BFS-1").waitFor();
  expect(await face(page).textContent()).toContain(said.dim.others(2));
  expect((await measured(page)).text).toMatch(/^(?:50:00|49:\d\d)$/u);
  // To look at a page counts as a touch of it, so it may already be one step further.
  await face(page)
    .getByText(said.alarm.status["sound-blocked"])
    .or(face(page).getByText(said.alarm.status["sound-unheard"]))
    .waitFor();
});

test("a drop does not leave it, a finger anywhere does", async () => {
  const { page, hands } = await openDim(HOUR);
  await hands.touch([{ x: 100, y: 100 }], 40);
  await hands.touch(
    [
      { x: 100, y: 100 },
      { x: 200, y: 300 },
    ],
    200,
  );
  expect(await face(page).count()).toBe(1);
  await hands.touch([{ x: 30, y: 600 }], 90);
  await gone(page);
  expect(new URL(page.url()).hash).toBe(RUN);
});

test.each(["Escape", "Enter", "ArrowRight"])("%s leaves it: it has the keyboard", async (key) => {
  await bar.afresh();
  const { page } = bar;
  await putLog(bar, log(HOUR), routes.dim("run-a"), OPENS);
  await face(page).waitFor();
  await page.keyboard.press(key);
  await gone(page);
  expect(new URL(page.url()).hash).toBe(RUN);
});

test("it gives way to an alarm, which is answered as ever", async () => {
  const { page } = await openDim(40 * MINUTE);
  await pass(page, 40 * MINUTE);
  await page.locator(".alarm-sheet").waitFor();
  await gone(page);
  expect(new URL(page.url()).hash).toBe(RUN);
  // Going back does not lead into the dark again.
  await page.goBack();
  expect(await face(page).count()).toBe(0);
});
