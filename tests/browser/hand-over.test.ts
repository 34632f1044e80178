import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { axeFinds, faintWords, sticksOut } from "../support/look/readable.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import {
  goTo,
  HOUR,
  holdOf,
  MINUTE,
  OPENS,
  putLog,
  storedLog,
  tapOf,
  untilStep,
} from "../support/phone/walk-page.ts";
import { type Wait, waiting } from "../support/world/waiting.ts";

const RUN = routes.run("run-a");
const words = said.handOver;

const bar = barForTests({ size: "small" });

async function openWait(wait: Partial<Wait> & Pick<Wait, "waitFor">) {
  await bar.afresh();
  const log = waiting({ runId: "run-a", batch: "PB-1003", from: OPENS, ...wait });
  await putLog(bar, log, RUN, OPENS);
  await bar.page.locator(".run-digits").waitFor();
  return { ...bar, length: log.length };
}

const asked = () => bar.page.locator('.run-handover[data-asked="true"]');
const chip = (name: string) => bar.page.getByRole("radio", { name, exact: true });
/** What was logged of the wait, after it began. */
const handed = async (length: number) => (await storedLog(bar.page)).slice(length);

const faults = async () => {
  const { page } = bar;
  const found: string[] = [];
  for (const colorScheme of ["dark", "light"] as const) {
    await page.emulateMedia({ colorScheme });
    found.push(...(await sticksOut(page)), ...(await faintWords(page)), ...(await axeFinds(page)));
  }
  return found;
};

test.each([
  [1.5, 0, 0],
  [10, 0, 1],
  [30, 1, 1],
  [239, 1, 1],
] as const)(
  "a wait of %d min: offered %d times, dim %d times, never asked",
  async (min, offered, dim) => {
    const { page } = await openWait({ waitFor: min * MINUTE });
    await page.locator(".run-actions").waitFor();
    expect(await holdOf(page, words.clockDone).count()).toBe(offered);
    expect(await page.getByRole("link", { name: words.dim, exact: true }).count()).toBe(dim);
    expect(await asked().count()).toBe(0);
  },
);

test("four hours: it asks in plain sight, and stands in nobody's way", async () => {
  const { page, hands } = await openWait({ waitFor: 4 * HOUR });
  await asked().getByText(words.asks("4 h")).waitFor();
  const seen = await asked().evaluate((one) => {
    const { top } = one.getBoundingClientRect();
    const foot = document.querySelector(".run > .run-actions")?.getBoundingClientRect().top ?? 0;
    return top > 0 && top + 100 < foot;
  });
  expect(seen).toBe(true);
  // Unanswered, the step can be ended all the same.
  await hands.hold(holdOf(page, said.run.done.curdleEarly ?? ""));
  await untilStep(page, "yield");
});

test("set in the phone's own clock: logged by a hold, shown, and no longer asked", async () => {
  const { page, hands, length } = await openWait({ waitFor: 26 * HOUR });
  await hands.tap(tapOf(page, words.answer));
  await hands.hold(holdOf(page, words.clockDone));
  await page.getByText(words.told["phone-clock"]("Wed 11 Mar 16:00")).waitFor();
  expect(await asked().count()).toBe(0);
  const dueAt = OPENS + 26 * HOUR;
  expect(await handed(length)).toMatchObject([{ type: "alarm.handed", to: "phone-clock", dueAt }]);
  // A phone whose clock rings is not the only watch there may be.
  await hands.tap(tapOf(page, words.others));
  await hands.tap(chip(words.ways.vessel));
  await hands.hold(holdOf(page, words.vesselDone));
  await page.getByText(words.told.vessel("Wed 11 Mar 16:00")).waitFor();
  expect((await handed(length)).map((one) => one.type === "alarm.handed" && one.to)).toEqual([
    "phone-clock",
    "vessel",
  ]);
});

test("somebody by initials, on our own letters; who was named once is offered again", async () => {
  const { page, hands, length } = await openWait({ waitFor: 12 * HOUR });
  await hands.tap(tapOf(page, words.answer));
  await hands.tap(chip(words.ways.person));
  expect(await holdOf(page, words.nobody).getAttribute("aria-disabled")).toBe("true");
  await hands.tap(tapOf(page, words.anotherName));
  for (const letter of "ABX") await hands.tap(tapOf(page, letter));
  await hands.tap(tapOf(page, said.run.erase));
  expect(await page.locator(".letter-pad-typed").textContent()).toBe("AB");
  expect(await faults()).toEqual([]);
  await hands.hold(holdOf(page, said.run.take));
  await hands.hold(holdOf(page, words.personDone("AB")));
  await page.getByText(words.told.person("Wed 11 Mar 02:00", "AB")).waitFor();
  expect(await handed(length)).toMatchObject([{ type: "alarm.handed", to: "person", who: "AB" }]);
  // Someone watches it, so the page says so instead of what is missing here.
  await page.getByText(said.alarm.status.person).waitFor();
  await hands.tap(tapOf(page, words.others));
  await hands.tap(chip(words.ways.person));
  await chip("AB").waitFor();
  expect(await faults()).toEqual([]);

  // In the log it is a sentence, and it can be taken back.
  await goTo(page, routes.batch("run-a"));
  await page.getByText("The wait until Wed 11 Mar 02:00 is also watched by AB").waitFor();
  await goTo(page, RUN);
  await hands.tap(tapOf(page, said.places.undo));
  await asked().waitFor();
});

test("the vessel's label says what it is, when it is due and to keep it cold", async () => {
  const step = { id: "cold-rest", work: "chill", stands: "fridge" } as const;
  const { page, hands } = await openWait({ waitFor: 24 * HOUR, step });
  await hands.tap(tapOf(page, words.answer));
  await hands.tap(chip(words.ways.vessel));
  await hands.tap(page.getByRole("link", { name: words.printLabel }));
  const card = page.getByRole("article", { name: said.vessel.card });
  await card.waitFor();
  const text = (await card.textContent()) ?? "";
  for (const part of [
    "PB-1003",
    "Pear Beacon",
    "Cold rest",
    "Wed, 11 Mar 2026, 14:00",
    said.vessel.keep.fridge,
    "Contains MILK",
  ]) {
    expect(text).toContain(part);
  }
  await page
    .getByText(said.vessel.line("PB-1003", "Cold rest", "Wed, 11 Mar 2026, 14:00"))
    .waitFor();
  expect(await faults()).toEqual([]);
  // On paper there is the card and nothing else.
  await page.emulateMedia({ media: "print" });
  const shown = await page.evaluate(() =>
    [...document.querySelectorAll("#app *")]
      .filter((one) => one.childElementCount === 0 && one.checkVisibility())
      .filter((one) => one.closest(".vessel-card") === null)
      .map((one) => one.outerHTML),
  );
  expect(shown).toEqual([]);
  expect(await card.isVisible()).toBe(true);
  await page.emulateMedia({ media: "screen" });
  // Where nothing is waited for there is no label, and it says so.
  await goTo(page, routes.vessel("run-nobody"));
  await page.getByText(said.vessel.none).waitFor();
});
