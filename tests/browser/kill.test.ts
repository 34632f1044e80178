import { expect, onTestFinished, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { foldRun } from "../../core/run/fold.ts";
import { openVisit } from "../../core/run/run.ts";
import { topUpAdvice } from "../../core/run/top-up-advice.ts";
import { dropProfile, newProfile } from "../support/phone/browser.ts";
import { said } from "../support/phone/said.ts";
import {
  holdOf,
  OPENS,
  openBar,
  putLog,
  storedLog,
  tapOf,
  typeOnPad,
  untilStep,
} from "../support/phone/walk-page.ts";
import { ml } from "../support/phone/wash-by-hand.ts";
import { serveApp } from "../support/tool/server.ts";
import { stationAt } from "../support/world/wash-stations.ts";

const RUN = routes.run("run-a");
const { events, since } = stationAt("run-a", "PB-1003", OPENS, "yield");

test("killed again and again: what it said was saved is there, and nothing is half there", async () => {
  const server = await serveApp();
  const profile = newProfile();
  let bar = await openBar({ profile, server, at: since });
  onTestFinished(async () => {
    await bar.close();
    await server.stop();
    dropProfile(profile);
  });
  const reborn = async () => {
    expect(bar.phone.complaints).toEqual([]);
    await bar.phone.kill();
    bar = await openBar({ profile, server, hash: RUN, at: since });
    await bar.page.locator("main h1").waitFor();
  };
  const untilSaved = (what: string) =>
    bar.page
      .locator(".notices-line", { hasText: said.run.saved })
      .filter({ hasText: what })
      .waitFor();
  const log = () => storedLog(bar.page);
  const types = async () => (await log()).slice(events.length).map(({ type }) => type);
  await putLog(bar, events, RUN, since);

  // A figure stands on the pad, and nobody has noted it.
  await bar.hands.tap(tapOf(bar.page, said.run.typeAmount));
  for (const key of "4120") await bar.hands.tap(tapOf(bar.page, key));
  await reborn();
  await untilStep(bar.page, "yield");
  expect(await log()).toEqual(events);

  // Noted, and the page says so.
  await bar.hands.tap(tapOf(bar.page, said.run.typeAmount));
  await typeOnPad(bar, "4100");
  await untilSaved(ml(4100));
  await reborn();
  await untilStep(bar.page, "top-up");
  const yielded = ["yield.logged", "step.finished", "step.started"];
  expect(await types()).toEqual(yielded);
  expect(foldRun(await log())?.yields.at(-1)?.ml).toBe(4100);

  // Killed while it is being stored, or before: the whole answer, or none of it.
  const run = foldRun(await log());
  const spirit = run === undefined ? 0 : topUpAdvice(run).advised;
  const advised = ml(spirit);
  await bar.hands.hold(holdOf(bar.page, said.run.asPlanned(advised)));
  await reborn();
  const topped = [...yielded, "topup.poured", "step.finished", "step.started"];
  const after = foldRun(await log());
  const stands = after && openVisit(after)?.step;
  expect([stands, await types()]).toEqual(
    stands === "bottle" ? ["bottle", topped] : ["top-up", yielded],
  );
  if (stands === "top-up") {
    await bar.hands.hold(holdOf(bar.page, said.run.asPlanned(advised)));
  }
  await untilStep(bar.page, "bottle");

  // The next answer finds its place behind what survived.
  const filled = said.run.bottle.done(Math.ceil((4100 + spirit) / 750));
  await bar.hands.hold(holdOf(bar.page, filled));
  await untilSaved(filled);
  await reborn();
  await untilStep(bar.page, "label");
  expect(await types()).toEqual([...topped, "run.bottled", "step.finished", "step.started"]);
});
