import type { Page } from "playwright-core";
import { expect, onTestFinished, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { untilStored } from "../support/phone/browser.ts";
import { handsOn } from "../support/phone/hands.ts";
import { said } from "../support/phone/said.ts";
import { goTo, openBar, startAfresh, storedLog, tapOf } from "../support/phone/walk-page.ts";
import { washByHand } from "../support/phone/wash-by-hand.ts";

/**
 * Runs in the page before it does: tells of every breach of its policy, of every way to the outside
 * that no policy rules, and of code made out of text.
 */
function bearWitness(): void {
  const tell = (what: string): void => {
    const to: unknown = Reflect.get(globalThis, "witnessed");
    if (typeof to === "function") to(what);
  };
  document.addEventListener("securitypolicyviolation", (event) => {
    tell(`policy: ${event.effectiveDirective} ${event.blockedURI}`);
  });
  const WAYS = [
    "RTCPeerConnection",
    "WebTransport",
    "WebSocket",
    "EventSource",
    "PresentationRequest",
  ];
  for (const name of [...WAYS, "Function"]) {
    const native: unknown = Reflect.get(globalThis, name);
    if (typeof native !== "function") continue;
    const watched = new Proxy(native, {
      construct(made, given, target) {
        tell(`made: ${name}`);
        return Reflect.construct(made, given, target);
      },
      apply(made, self, given) {
        tell(`called: ${name}`);
        return Reflect.apply(made, self, given);
      },
    });
    Reflect.set(globalThis, name, watched);
  }
  const beacon = navigator.sendBeacon.bind(navigator);
  navigator.sendBeacon = (...given) => {
    tell("called: sendBeacon");
    return beacon(...given);
  };
}

interface Asked {
  readonly method: string;
  readonly url: URL;
  readonly body: boolean;
}

const seenIn = async (page: Page, hash: string) => {
  await goTo(page, hash);
  // What a screen fetches late is asked for by then.
  await page.waitForLoadState("networkidle");
};

test("the whole job and a look at every screen: nothing is asked of anybody else, and nothing sent", async () => {
  let bar = await openBar({ size: "small" });
  onTestFinished(() => bar.close());
  const witnessed: string[] = [];
  const asked: Asked[] = [];
  await bar.phone.context.exposeFunction("witnessed", (what: string) => witnessed.push(what));
  bar.phone.context.on("request", (request) => {
    asked.push({
      method: request.method(),
      url: new URL(request.url()),
      body: request.postData() !== null,
    });
  });
  bar = await startAfresh(bar, bearWitness);
  const { page, phone, server } = bar;
  await washByHand(bar, () => Promise.resolve());
  const runId = (await storedLog(page))[0]?.runId ?? "";
  const spec = "demo-pear-beacon";
  for (const hash of [
    ...[routes.bench, routes.specs, routes.shelf, routes.logbook, routes.cupboard, routes.days],
    ...[routes.procedures, routes.procedure("dairy-wash"), routes.spec(spec), routes.plan(spec)],
    ...[routes.ingredient("lemon-juice"), routes.sums, routes.run(runId), routes.label(runId)],
    ...[routes.sheet(runId), routes.batch(runId), routes.vessel(runId), routes.dim(runId)],
    ...[routes.compare([runId]), routes.services(spec), routes.learnt, routes.learntOf(spec)],
    ...[routes.hand(`run~${runId}`), routes.hand(`spec~${spec}`), routes.hand("day"), routes.kit],
  ]) {
    await seenIn(page, hash);
  }
  const saved = page.waitForEvent("download");
  await bar.hands.tap(tapOf(page, said.kit.backup.download));
  await saved;

  expect(witnessed).toEqual([]);
  expect(phone.complaints).toEqual([]);
  const web = asked.filter(({ url }) => url.protocol.startsWith("http"));
  expect(web.length).toBeGreaterThan(20);
  expect(web.filter(({ url }) => url.origin !== server.origin)).toEqual([]);
  // Even to its own host it only asks for files: no figure, no name, no query.
  expect(web.filter(({ method, body }) => method !== "GET" || body)).toEqual([]);
  expect(web.map(({ url }) => url.search).filter((search) => search !== "")).toEqual([]);
  const others = asked.filter(({ url }) => !url.protocol.startsWith("http"));
  expect(others.filter(({ url }) => !/^(?:blob|data|about):$/u.test(url.protocol))).toEqual([]);
}, 180_000);

test("the witness sees what it is there to see, and the policy stops it", async () => {
  let bar = await openBar({ size: "small" });
  onTestFinished(() => bar.close());
  const witnessed: string[] = [];
  await bar.phone.context.exposeFunction("witnessed", (what: string) => witnessed.push(what));
  bar = await startAfresh(bar, bearWitness);
  const { page } = bar;
  await untilStored(page);
  await handsOn(page);
  const outcomes = await page.evaluate(async () => {
    const ending = (from: () => Promise<unknown>) =>
      from().then(
        () => "done",
        () => "stopped",
      );
    // The debugger may make code out of text; what a timer calls may not.
    const makesCode = new Promise((resolve, reject) => {
      setTimeout(() => {
        try {
          resolve(Reflect.get(globalThis, "eval")("1"));
        } catch (refused) {
          reject(refused);
        }
      });
    });
    const picture = new Image();
    picture.src = "http://127.0.0.2:9/picture.png";
    const script = document.createElement("script");
    script.textContent = "globalThis.ran = true";
    document.head.append(script);
    const button = document.createElement("button");
    button.setAttribute("onclick", "globalThis.ran = true");
    button.click();
    return {
      code: await ending(() => makesCode),
      fetched: await ending(() => fetch("http://127.0.0.2:9/")),
      pictured: await ending(() => picture.decode()),
      ran: Reflect.get(globalThis, "ran") === true,
    };
  });
  expect(outcomes).toEqual({
    code: "stopped",
    fetched: "stopped",
    pictured: "stopped",
    ran: false,
  });
  await page.evaluate(() => {
    new RTCPeerConnection().close();
    navigator.sendBeacon("./");
  });
  const kinds = ["script-src eval", "connect-src http", "img-src http", "script-src-elem inline"];
  await expect
    .poll(() => kinds.filter((kind) => !witnessed.some((one) => one.startsWith(`policy: ${kind}`))))
    .toEqual([]);
  expect(witnessed).toEqual(
    expect.arrayContaining(["made: RTCPeerConnection", "called: sendBeacon"]),
  );
});
