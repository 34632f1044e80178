import type { CDPSession } from "playwright-core";
import { afterEach, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { OUTLINE, OUTLINES } from "../../core/board/bench-outline.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { choose } from "../support/phone/open-bench.ts";
import { said } from "../support/phone/said.ts";
import { HOUR, MINUTE, putLog, SECOND, untilStep } from "../support/phone/walk-page.ts";
import { waiting } from "../support/world/waiting.ts";
import { allStations } from "../support/world/wash-stations.ts";

const bar = barForTests({ size: "small" });

/** It is left when the hands are still. */
const SOON = { timeout: 10_000 };
const STEPS = ["curdle", "slow-drip", "build"];
/** A bench whose batches came to their steps a while ago. The worker's clock is this machine's. */
const stations = (ago = 10 * MINUTE, steps = STEPS) =>
  allStations(Date.now() - ago)
    .filter(({ step }) => steps.includes(step))
    .flatMap(({ events }) => events);

let session: CDPSession | undefined;

/** Whether the page's own scripts run; the worker's do in any case. */
async function scripts(run: boolean): Promise<void> {
  await session?.detach();
  session = undefined;
  if (run) return;
  session = await bar.phone.context.newCDPSession(bar.page);
  await session.send("Emulation.setScriptExecutionDisabled", { value: true });
}

afterEach(() => scripts(true));

/** The outline that lies there, as text. */
const left = () =>
  bar.page.evaluate(
    async ([cache, name]) => (await caches.match(name, { cacheName: cache }))?.text() ?? "",
    [OUTLINES, OUTLINE] as const,
  );

const forget = () => bar.page.evaluate((cache) => caches.delete(cache), OUTLINES);

/** Opens the app's own address, as from the home screen. */
async function open(hash = ""): Promise<void> {
  await bar.page.goto("about:blank");
  await bar.page.goto(bar.server.url + hash);
}

/** Some batches on the Bench, and the outline of it left for the next start. */
async function aBench(log = stations()): Promise<void> {
  await bar.afresh();
  await forget();
  await putLog(bar, log, routes.bench, Date.now());
  await expect.poll(left, SOON).toContain("bench-row");
  // What the page fetches last is there: it is left in the middle of nothing.
  await bar.page.waitForLoadState("networkidle");
}

interface Seen {
  readonly text: string;
  readonly box: readonly number[];
}

/** What can be read on the Bench, and where it stands. */
const seen = (): Promise<readonly Seen[]> =>
  bar.page.evaluate(() =>
    [
      ...document.querySelectorAll(
        ".status-line, .status-line-check, .bench-row, .bench-words > *, .column, .bench-rows .link-button, .app-place",
      ),
    ].map((one) => {
      const { x, y, width, height } = one.getBoundingClientRect();
      return { text: one.textContent ?? "", box: [x, y, width, height].map(Math.round) };
    }),
  );

const secondsOf = (digits: string): number =>
  digits.split(":").reduce((sum, part) => sum * 60 + Number(part), 0);

const lives = () => bar.page.locator("#app:not([data-outline]) .bench-row").first().waitFor();

/** Digits apart, for they go on; and the line that tells of the bell, which hangs by then. */
const still = ([line, ...rest]: readonly Seen[]) => [
  line?.box,
  ...rest.map(({ text, box }) => ({ text: text.replace(/\d+(:\d\d)+/u, "0:00"), box })),
];

test("the next start begins with the batches, their steps and what is left, before any script", async () => {
  await aBench();
  await scripts(false);
  await open();
  expect(await bar.page.locator("#app[data-outline]").count()).toBe(1);
  const outline = await seen();
  const verbs = await bar.page.locator(".bench-verb").allTextContents();
  expect(verbs.toSorted()).toEqual(STEPS.map((step) => said.work.verbs[step]).toSorted());
  const digits = await bar.page.locator(".bench-digits").allTextContents();
  expect(digits).toHaveLength(2);
  // The curd has stood ten minutes of its hour; to reading it may have been some seconds more.
  const curdle = Math.max(...digits.map(secondsOf));
  expect(curdle).toBeLessThanOrEqual(50 * 60);
  expect(curdle).toBeGreaterThan(50 * 60 - 60);
  await scripts(true);
  await open();
  await lives();
  expect(still(await seen())).toEqual(still(outline));
  expect(outline.length).toBeGreaterThan(15);
  expect(outline[0]?.text).toBe(said.alarm.status["sound-blocked"]);
});

test("a tap on it leads to the batch, though the page does not live yet", async () => {
  await aBench();
  await scripts(false);
  await open();
  await bar.hands.tap(bar.page.locator(".bench-row").filter({ hasText: "PB-4" }));
  await expect.poll(() => new URL(bar.page.url()).hash, SOON).toBe(routes.run("run-curdle"));
  await scripts(true);
  await bar.page.reload();
  await untilStep(bar.page, "curdle");
});

test("it speaks the house's language, in its theme and hand", async () => {
  await aBench();
  await choose(bar, { language: "es", theme: "light", hand: "left", glove: true });
  await forget();
  await open();
  await expect.poll(left, SOON).toContain("bench-row");
  await scripts(false);
  await open();
  const root = await bar.page.evaluate(() => {
    const { lang, dataset } = document.documentElement;
    return { lang, theme: dataset.theme, hand: dataset.hand, glove: "glove" in dataset };
  });
  expect(root).toEqual({ lang: "es", theme: "light", hand: "left", glove: true });
  expect(await bar.page.locator(".bench-row").count()).toBe(3);
});

test("a name that is markup, or a pattern, stays a name", async () => {
  const batch = "<b onclick=alert(1)>$& $' &lt;";
  await aBench([...waiting({ runId: "run-a", batch, from: Date.now(), waitFor: HOUR })]);
  await scripts(false);
  await open();
  expect(await bar.page.locator(".bench-batch").textContent()).toBe(batch);
  expect(await bar.page.locator("#app b").count()).toBe(0);
});

test("what was done since is in the next one", async () => {
  await aBench();
  await bar.page.goto(`${bar.server.url}${routes.run("run-build")}`);
  await untilStep(bar.page, "build");
  await bar.page.evaluate(() => {
    const native = caches.delete.bind(caches);
    Reflect.set(caches, "delete", (name: string) => {
      Reflect.set(globalThis, "takenBack", name);
      return native(name);
    });
  });
  await bar.hands.hold(bar.page.locator(".hold-button").first());
  await untilStep(bar.page, "milk");
  // Taken back at once: a page that dies now leaves none that is no longer so.
  await bar.page.waitForFunction(
    (cache) => Reflect.get(globalThis, "takenBack") === cache,
    OUTLINES,
  );
  await expect.poll(left, SOON).toContain(`>${said.work.verbs.milk}<`);
  expect(await left()).not.toContain(`>${said.work.verbs.build}<`);
});

test.each([routes.kit, routes.run("run-curdle")])("at %s the page begins empty", async (hash) => {
  await aBench();
  await scripts(false);
  await open(hash);
  expect(await bar.page.locator("#app").innerHTML()).toBe("");
});

test("it is not shown once it holds no more, nor what is no outline", async () => {
  await aBench();
  const put = (text: string) =>
    bar.page.evaluate(
      async ([cache, name, body]) => (await caches.open(cache)).put(name, new Response(body)),
      [OUTLINES, OUTLINE, text] as const,
    );
  const good: Record<string, unknown> = JSON.parse(await left());
  const texts = [
    { ...good, views: [{ inside: "<main></main>", until: Date.now() - 1 }] },
    { ...good, views: [{ inside: "<main></main>", until: null }] },
    { ...good, views: [{ inside: 5, until: Date.now() + HOUR }] },
    { ...good, views: [] },
    { ...good, script: "./assets/index-other.js" },
    [],
  ].map((one) => JSON.stringify(one));
  for (const text of [...texts, "not even JSON"]) {
    await scripts(true);
    await forget();
    await open(routes.kit);
    await bar.page.waitForLoadState("networkidle");
    // It leaves its own once, and no other until something is done.
    await expect.poll(left, SOON).not.toBe("");
    await put(text);
    await scripts(false);
    await open();
    expect(await bar.page.locator("#app").innerHTML()).toBe("");
  }
});

test("where storage does not answer it does not stand there like a clock that has stopped", async () => {
  await aBench();
  await bar.page.addInitScript(() => {
    const native = IDBFactory.prototype.open;
    Reflect.set(IDBFactory.prototype, "open", function (this: IDBFactory, name: string) {
      const request = native.call(this, name);
      // Nobody is told that it has opened.
      Reflect.set(request, "addEventListener", () => undefined);
      return request;
    });
  });
  await open();
  expect(await bar.page.locator("#app[data-outline]").count()).toBe(1);
  await bar.page.clock.runFor(3 * SECOND);
  await bar.page.getByText(said.places.opening).waitFor();
  expect(await bar.page.locator(".bench-row").count()).toBe(0);
});

test("a wait that ended meanwhile stands first, and due", async () => {
  // The curd's hour is over in a few seconds.
  await aBench(stations(HOUR - 15 * SECOND, ["curdle", "build"]));
  const moods = () =>
    bar.page.locator(".bench-row").evaluateAll((rows) => rows.map((row) => row.dataset.mood));
  await scripts(false);
  await open();
  expect(await moods()).toEqual(["still", "waiting"]);
  const [digits = ""] = await bar.page.locator(".bench-digits").allTextContents();
  await new Promise((resolve) => setTimeout(resolve, secondsOf(digits) * SECOND + 500));
  await open();
  expect(await moods()).toEqual(["due", "still"]);
  expect(await bar.page.locator(".bench-due").textContent()).toMatch(/\b[0-9] s\b/u);
});

test("times that are not a countdown are told as of the start as well", async () => {
  await aBench(stations(2 * HOUR));
  await scripts(false);
  await open();
  const whens = await bar.page.locator(".bench-when").allTextContents();
  await scripts(true);
  await open();
  await lives();
  expect(await bar.page.locator(".bench-when").allTextContents()).toEqual(whens);
  expect(whens.join(" ")).toContain("2 h");
});
