import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { foldRun } from "../../core/run/fold.ts";
import { said } from "../support/phone/said.ts";
import {
  goTo,
  MINUTE,
  OPENS,
  openBar,
  putLog,
  putOn,
  shot,
  startAfresh,
  storedLog,
  tapOf,
} from "../support/phone/walk-page.ts";
import { demoSpec } from "../support/world/play-run.ts";
import { stationAt } from "../support/world/wash-stations.ts";

const words = said.handing;

let sender: Awaited<ReturnType<typeof openBar>>;
let taker: Awaited<ReturnType<typeof openBar>>;

beforeAll(async () => {
  [sender, taker] = await Promise.all([openBar({ size: "small" }), openBar({ size: "small" })]);
});
afterAll(async () => {
  await sender.close();
  await taker.close();
});
afterEach(() => {
  expect(sender.phone.complaints).toEqual([]);
  expect(taker.phone.complaints).toEqual([]);
});

/** A camera that sees what is painted on a canvas of the test's; nothing until then. */
const withCamera = () => {
  const canvas = document.createElement("canvas");
  canvas.width = 640;
  canvas.height = 480;
  const pen = canvas.getContext("2d");
  const blank = () => {
    if (pen === null) return;
    pen.fillStyle = "gray";
    pen.fillRect(0, 0, canvas.width, canvas.height);
  };
  blank();
  const stream = canvas.captureStream(30);
  Object.defineProperty(navigator, "mediaDevices", {
    value: { getUserMedia: () => Promise.resolve(stream) },
  });
  // As if the camera were held a little askew over the other phone's screen.
  Reflect.set(globalThis, "seen", async (address: string) => {
    const picture = new Image();
    picture.src = address;
    await picture.decode();
    blank();
    pen?.save();
    pen?.translate(320, 240);
    pen?.rotate(0.1);
    pen?.drawImage(picture, -210, -210, 420, 420);
    pen?.restore();
  });
};

/** Holds the taker's camera over whatever code the sender shows now. */
async function look(): Promise<string> {
  const code = sender.page.locator(".hand-code");
  const [text, markup] = await code.evaluate((svg) => {
    const copy = svg.cloneNode(true);
    if (!(copy instanceof SVGElement)) return ["", ""];
    copy.setAttribute("xmlns", "http://www.w3.org/2000/svg");
    copy.querySelector("rect")?.setAttribute("fill", "#fff");
    copy.querySelector("path")?.setAttribute("fill", "#000");
    copy.setAttribute("width", "420");
    copy.setAttribute("height", "420");
    return [svg.getAttribute("data-code") ?? "", copy.outerHTML];
  });
  await taker.page.evaluate(
    (address) => Reflect.get(globalThis, "seen")(address),
    `data:image/svg+xml,${encodeURIComponent(markup)}`,
  );
  return text;
}

/** Looks at the sender's codes until the taker has them all. */
async function lookAtAll(): Promise<number> {
  const seen = new Set<string>();
  const done = taker.page.locator(".part .hold-button");
  for (let turn = 0; turn < 200 && (await done.count()) === 0; turn += 1) {
    seen.add(await look());
    await sender.page.clock.runFor(250);
    await taker.page.clock.runFor(180);
  }
  await done.waitFor();
  return seen.size;
}

test("a run in progress goes to a phone that never saw it, by codes alone, without a network", async () => {
  const { events, since } = stationAt("run-hand", "PB-7", OPENS - 110 * MINUTE, "slow-drip");
  await putLog(sender, events, routes.run("run-hand"), since + MINUTE);
  taker = await startAfresh(taker, withCamera);
  await taker.phone.context.setOffline(true);
  await sender.phone.context.setOffline(true);
  await sender.hands.tap(tapOf(sender.page, said.run.more));
  await sender.hands.tap(sender.page.getByRole("link", { name: said.run.toHand, exact: true }));
  await sender.page.locator(".hand-code").waitFor();
  await shot(sender.page, "hand-over");

  await goTo(taker.page, routes.kit);
  await taker.hands.tap(tapOf(taker.page, words.take.open));
  await taker.page.getByText(words.take.looking).waitFor();
  const codes = await lookAtAll();
  expect(codes).toBeGreaterThan(2);
  await taker.hands.hold(taker.page.locator(".part .hold-button"));
  await taker.page.getByText(words.take.done(events.length)).waitFor();
  const got = await storedLog(taker.page);
  expect(new Set(got.map(({ id }) => id))).toEqual(new Set(events.map(({ id }) => id)));
  expect(foldRun(got)).toEqual(foldRun(events));
  await taker.hands.tap(taker.page.getByRole("link", { name: words.take.toBench, exact: true }));
  await taker.page.locator(".bench-row", { hasText: "PB-7" }).waitFor();
  await taker.phone.context.setOffline(false);
  await sender.phone.context.setOffline(false);
});

test("a spec goes over with what the house makes it of", async () => {
  const own = { ...demoSpec("Harbour Slush"), name: "Handed Slush", demo: false };
  await putOn(sender.page, "specs", [own]);
  await sender.page.reload();
  await goTo(sender.page, routes.spec(own.id));
  await goTo(sender.page, routes.hand(`spec~${own.id}`));
  await sender.page.locator(".hand-code").waitFor();
  taker = await startAfresh(taker, withCamera);
  await goTo(taker.page, routes.kit);
  await taker.hands.tap(tapOf(taker.page, words.take.open));
  await taker.page.getByText(words.take.looking).waitFor();
  await lookAtAll();
  await taker.hands.hold(taker.page.locator(".part .hold-button"));
  await taker.page.getByText(words.take.done(1)).waitFor();
  await goTo(taker.page, routes.specs);
  await taker.page.getByRole("heading", { name: "Handed Slush" }).waitFor();
});

test("no camera, or one that is not allowed, is said with what to do instead", async () => {
  for (const [name, sentence] of [
    ["NotAllowedError", words.take.refused],
    ["NotFoundError", words.take.absent],
  ] as const) {
    taker = await startAfresh(taker);
    await taker.page.addInitScript((fault) => {
      Object.defineProperty(navigator, "mediaDevices", {
        value: { getUserMedia: () => Promise.reject(new DOMException("no", fault)) },
      });
    }, name);
    await taker.page.reload();
    await taker.page.waitForSelector("main");
    await goTo(taker.page, routes.kit);
    await taker.hands.tap(tapOf(taker.page, words.take.open));
    await taker.page.getByText(sentence).waitFor();
  }
});

test("the same over a file: what was handed comes in as a backup does", async () => {
  const download = sender.page.waitForEvent("download");
  await sender.hands.tap(tapOf(sender.page, words.file));
  const path = await (await download).path();
  taker = await startAfresh(taker);
  await goTo(taker.page, routes.kit);
  await taker.page.locator('input[type="file"]').setInputFiles(path);
  await taker.page.getByText(said.kit.restore.fresh(1)).waitFor();
});
