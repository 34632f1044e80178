import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
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
  SECOND,
  tapOf,
} from "../support/phone/walk-page.ts";
import { waiting } from "../support/world/waiting.ts";

const bar = barForTests({ size: "small" });

/** A phone that writes down what it says, shows and shakes; a headless browser has none of them. */
const witness = () => {
  const told: string[] = [];
  Reflect.set(globalThis, "told", told);
  class Utterance {
    readonly text: string;
    voice: { readonly name: string } | null = null;
    lang = "";
    volume = 1;
    constructor(text: string) {
      this.text = text;
    }
  }
  const local: string[] = Reflect.get(globalThis, "localVoices") ?? ["own"];
  const voices = ["far", "own"].map((name) => ({
    name,
    lang: "en-GB",
    default: name === "far",
    localService: local.includes(name),
  }));
  Reflect.set(globalThis, "SpeechSynthesisUtterance", Utterance);
  const speechSynthesis = {
    speaking: false,
    getVoices: () => voices,
    addEventListener: () => undefined,
    removeEventListener: () => undefined,
    speak: ({ text, voice, volume }: Utterance) =>
      told.push(`${voice?.name} says ${JSON.stringify(text)} at ${volume}`),
    cancel: () => told.push("hushed"),
  };
  Object.defineProperty(globalThis, "speechSynthesis", { value: speechSynthesis });
  const does = (name: string, does: (given: unknown) => unknown) =>
    Object.defineProperty(navigator, name, { value: does });
  does("setAppBadge", async (count) => void told.push(`badge ${count}`));
  does("clearAppBadge", async () => void told.push("badge none"));
  does("vibrate", (pattern) => told.push(`shakes ${JSON.stringify(pattern)}`) > 0);
};
/** The same, but every voice comes from the network. */
const farWitness = () => Reflect.set(globalThis, "localVoices", []);

const told = (page: Page) => page.evaluate<string[]>("told.splice(0)");
const untilTold = (page: Page, line: string) =>
  page.waitForFunction((wanted) => Reflect.get(globalThis, "told").includes(wanted), line);

async function phoneWith(prepare: () => void, log: ReturnType<typeof waiting>) {
  await bar.afresh(prepare);
  await putLog(bar, log, routes.bench, OPENS);
  await bar.page.locator(".status-line").waitFor();
  return bar;
}

const wait = (runId: string, waitFor: number, batch = runId) =>
  waiting({ runId, batch, from: OPENS, waitFor });

test("the step is said aloud once it is wanted, by the phone's own voice, again and again", async () => {
  const { page, hands } = await phoneWith(witness, wait("run-a", HOUR));
  await goTo(page, routes.kit);
  // Off until somebody wants it.
  const chip = (name: string) => page.getByRole("radio", { name, exact: true });
  const words = said.kit.spoken;
  expect(await chip(words.off).getAttribute("aria-checked")).toBe("true");
  expect((await told(page)).filter((line) => line.includes("says"))).toEqual([]);
  await hands.tap(tapOf(page, words.tryIt));
  await untilTold(page, `own says ${JSON.stringify(words.sample)} at 1`);
  await hands.tap(chip(words.on));
  await page.getByRole("radio", { name: words.on, exact: true, checked: true }).waitFor();
  await told(page);

  // The next tap opens the voice as it opens the speaker, without a word.
  await hands.touch([{ x: 180, y: 10 }], 80);
  await untilTold(page, 'own says " " at 0');
  // It speaks, but nobody has heard its sound: of the voice the status line knows nothing.
  await goTo(page, routes.bench);
  await page.getByText(said.alarm.status["sound-unheard"], { exact: true }).waitFor();
  await pass(page, HOUR);
  await page.waitForFunction(() =>
    Reflect.get(globalThis, "told").some((line: string) => line.includes("Pear Beacon: Rest, ")),
  );
  const first = (await told(page)).filter((line) => line.includes("Pear Beacon: Rest, "));
  // Due now, or by as much late as the test took to get here.
  expect(first).toHaveLength(1);
  expect(first[0]).toMatch(/^own says "Pear Beacon: Rest, (?:due now|\d+ s late)" at 1$/u);
  await pass(page, 5 * SECOND);
  expect((await told(page)).filter((line) => line.includes("says"))).toEqual([]);
  await pass(page, 11 * SECOND);
  const again = (await told(page)).filter((line) => line.includes("says"));
  expect(again).toHaveLength(1);
  expect(again[0]).toMatch(/^own says "Pear Beacon: Rest, \d\d s late" at 1$/u);
  await hands.hold(holdOf(page, said.alarm.heard));
  await untilTold(page, "hushed");
});

test("voices of the network are never used", async () => {
  await bar.afresh(farWitness);
  await bar.page.addInitScript(witness);
  await putLog(bar, wait("run-a", HOUR), routes.kit, OPENS);
  const { page } = bar;
  await page.getByText(said.kit.spoken.states["no-voice"]).waitFor();
  expect(await tapOf(page, said.kit.spoken.tryIt).count()).toBe(0);
  await pass(page, HOUR);
  await page.locator(".alarm-sheet").waitFor();
  expect((await told(page)).filter((line) => line.includes("says"))).toEqual([]);
});

test("the badge counts what is overdue, and goes when nothing is", async () => {
  const { page, hands } = await phoneWith(witness, [
    ...wait("run-a", 30 * MINUTE),
    ...wait("run-b", 40 * MINUTE),
  ]);
  const badges = async () => (await told(page)).filter((line) => line.startsWith("badge"));
  expect(await badges()).toEqual(["badge none"]);
  await pass(page, 30 * MINUTE);
  await untilTold(page, "badge 1");
  await pass(page, 10 * MINUTE);
  await untilTold(page, "badge 2");
  await told(page);
  await hands.hold(holdOf(page, said.alarm.heard));
  await untilTold(page, "badge 1");
  await hands.hold(holdOf(page, said.alarm.heard));
  await untilTold(page, "badge none");
});

test.each([
  ["do", { stands: "counter" }, [400, 200, 400]],
  ["look", { kind: "watched-wait" }, [150, 150, 150]],
  ["done", { stands: "fridge" }, [600]],
] as const)(
  "what asks to %s shakes in a way of its own until it is answered",
  async (_, step, pattern) => {
    const log = waiting({ runId: "run-a", batch: "PB-1", from: OPENS, waitFor: 30 * MINUTE, step });
    const { page, hands } = await phoneWith(witness, log);
    const shakes = async () => (await told(page)).filter((line) => line.startsWith("shakes"));
    expect(await shakes()).toEqual([]);
    await pass(page, 30 * MINUTE);
    await untilTold(page, `shakes ${JSON.stringify(pattern)}`);
    await pass(page, 3 * SECOND);
    expect(new Set(await shakes())).toEqual(new Set([`shakes ${JSON.stringify(pattern)}`]));
    await hands.hold(holdOf(page, said.alarm.heard));
    await untilTold(page, "shakes 0");
  },
);
