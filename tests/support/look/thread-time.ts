import type { Page } from "playwright-core";

interface TraceEvent {
  readonly name?: string;
  readonly tid?: number;
  readonly pid?: number;
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

const CATEGORIES = ["toplevel", "disabled-by-default-devtools.timeline", "__metadata"];

/**
 * Watches what a page's own thread does: processor time, so that it does not count what the machine
 * gave to others meanwhile.
 *
 * @returns ends the watch, and tells each task's processor time, ms
 */
export async function watchThread(page: Page): Promise<() => Promise<readonly number[]>> {
  const session = await page.context().browser()?.newBrowserCDPSession();
  if (session === undefined) throw new RangeError("expected a browser that can be traced");
  const events: TraceEvent[] = [];
  session.on("Tracing.dataCollected", ({ value }) => events.push(...value));
  await session.send("Tracing.start", {
    traceConfig: { includedCategories: CATEGORIES },
    transferMode: "ReportEvents",
  });
  return async () => {
    const complete = new Promise((resolve) => session.once("Tracing.tracingComplete", resolve));
    await session.send("Tracing.end");
    await complete;
    await session.detach();
    const mains = new Set(
      events
        .filter(({ name, args }) => name === "thread_name" && args?.name === "CrRendererMain")
        .map(({ pid, tid }) => `${pid} ${tid}`),
    );
    return events
      .filter(({ name, pid, tid }) => /RunTask/u.test(name ?? "") && mains.has(`${pid} ${tid}`))
      .map(({ tdur = 0 }) => tdur / 1000);
  };
}
