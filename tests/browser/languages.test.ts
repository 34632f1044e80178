import { afterEach, beforeEach, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { spanish } from "../../app/words/es.ts";
import { french } from "../../app/words/fr.ts";
import { ENGLISH, tongue } from "../../app/words/tongue.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import { speak } from "../support/phone/speak.ts";
import {
  goTo,
  holdOf,
  MINUTE,
  OPENS,
  putLog,
  storedLog,
  tapOf,
  untilStep,
} from "../support/phone/walk-page.ts";
import { openPlan } from "../support/phone/wash-by-hand.ts";
import { OTHER_TONGUES } from "../support/world/tongues.ts";
import { allStations } from "../support/world/wash-stations.ts";

const bar = barForTests({ size: "small" });
beforeEach(async () => {
  await bar.afresh();
});
afterEach(() => {
  tongue.value = ENGLISH;
});

const STATIONS = allStations(OPENS + 10 * MINUTE);

/** A bench with a batch at every step, and the demo's specs. */
async function furnish(): Promise<void> {
  await openPlan(bar, "Pear Beacon");
  const events = STATIONS.flatMap((one) => one.events);
  await putLog(bar, events, routes.bench, OPENS);
  await bar.page.locator(".bench-row").first().waitFor();
}

test.each(OTHER_TONGUES)(
  "%s: a figure typed with a comma is shown with it, kept, and read back",
  async (_, next) => {
    await furnish();
    await speak(bar, next);
    const { page, hands } = bar;
    await goTo(page, routes.run("run-milk"));
    await hands.tap(tapOf(page, said.run.otherAmount));
    for (const key of ["6", "0", "0", said.run.mark, "5"]) await hands.tap(tapOf(page, key));
    expect(await page.locator(".number-pad-field").inputValue()).toBe("600,5");
    await hands.hold(holdOf(page, said.run.take));
    await untilStep(page, "pour");
    expect(await page.locator(".notices-line").textContent()).toContain("600,5");
    const noted = (await storedLog(page)).findLast((event) => event.type === "reading.logged");
    expect(noted).toMatchObject({ what: "milk", value: 600.5, unit: "ml" });

    // A field shows a figure as it reads it: three digits after the comma are no thousands here.
    await goTo(page, routes.ingredient("dry-vermouth-18"));
    const acid = page.getByRole("textbox", { name: said.ingredient.acid.tartaric, exact: true });
    expect(await acid.inputValue()).toBe("5,5");
    await acid.fill("6,125");
    await hands.tap(tapOf(page, said.ingredient.save));
    await page.getByText(said.ingredient.own, { exact: true }).first().waitFor();
    await goTo(page, routes.cupboard);
    await goTo(page, routes.ingredient("dry-vermouth-18"));
    expect(await acid.inputValue()).toBe("6,125");
  },
);

test("the language changes at once and loses nothing typed; a batch keeps the words it began with", async () => {
  await furnish();
  const { page, hands } = bar;
  await goTo(page, routes.spec("new"));
  await page.getByRole("textbox", { name: said.spec.name, exact: true }).fill("Wharf Light");
  const line = page.getByRole("textbox", { name: said.spec.add.label, exact: true });
  await line.fill("45 ml lemon");
  await speak(bar, spanish);
  await goTo(page, routes.spec("new"));
  expect(await page.getByRole("textbox", { name: said.spec.name, exact: true }).inputValue()).toBe(
    "Wharf Light",
  );
  await page.getByRole("textbox", { name: said.spec.add.label, exact: true }).fill("22,5 ml limon");
  await hands.tap(tapOf(page, said.spec.add.act("22,5 ml", "Jugo (zumo) de limón, fresco")));
  await page.getByText("Jugo (zumo) de limón, fresco").first().waitFor();
  // Begun in English: its plan is its own, whatever is spoken now.
  await goTo(page, routes.run("run-build"));
  const lines = await page.locator(".run-lines").textContent();
  expect(lines).toContain("Lemon juice, fresh");
  expect(await page.locator("h1").textContent()).toBe(said.work.verbs.build);
});

test("the demo and the practice speak the language they are put in with", async () => {
  await speak(bar, spanish);
  const { page, hands } = bar;
  await goTo(page, routes.specs);
  await hands.tap(tapOf(page, said.specs.putDemo));
  await page.getByRole("heading", { name: /Cebada ahumada/u }).waitFor();
  await goTo(page, routes.logbook);
  await hands.tap(tapOf(page, said.learnt.demo.put));
  await page.locator(".logbook-row", { hasText: "el mejor hasta ahora" }).waitFor();
  await goTo(page, routes.kit);
  await hands.tap(tapOf(page, said.first.practise));
  await page.locator(".run-lines", { hasText: "Jugo (zumo) de limón, fresco" }).waitFor();
  // Put in, it is like all that anybody wrote: it stays as it is.
  await speak(bar, french);
  await goTo(page, routes.specs);
  await page.getByRole("heading", { name: /Cebada ahumada/u }).waitFor();
});

test("the next visit paints its first words in the language that was chosen", async () => {
  await speak(bar, french);
  const { page } = bar;
  await page.addInitScript(() => {
    const seen: string[] = [];
    Reflect.set(globalThis, "firstWords", seen);
    new MutationObserver(() => {
      const words = document.querySelector("nav")?.textContent;
      if (words && seen.length === 0) seen.push(words, document.documentElement.lang);
    }).observe(document, { childList: true, subtree: true });
  });
  await page.reload();
  await page.getByRole("heading", { name: said.kit.title, exact: true, level: 1 }).waitFor();
  const [words, lang] = await page.evaluate((): readonly string[] =>
    Reflect.get(globalThis, "firstWords"),
  );
  expect(words).toContain(said.places.shelf);
  expect(lang).toBe("fr");
  // Back to the phone's own language, which is English here.
  await bar.hands.tap(
    page.getByRole("radio", { name: said.kit.language.auto, exact: true }).first(),
  );
  tongue.value = ENGLISH;
  await page.getByRole("heading", { name: said.kit.title, exact: true, level: 1 }).waitFor();
});
