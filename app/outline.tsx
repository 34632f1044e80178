import { effect } from "@preact/signals";
import { render } from "preact";
import { waitsEnd } from "../core/board/bench.ts";
import {
  type BenchOutline,
  type BenchView,
  OUTLINE,
  OUTLINES,
  toldLater,
} from "../core/board/bench-outline.ts";
import { SOUND_CHECK_HOLDS } from "./alarm/status.ts";
import type { Clock } from "./clock.ts";
import { statusAtStart } from "./known-status.ts";
import { Places } from "./places.tsx";
import type { BenchMoment } from "./screens/bench/rows.tsx";
import { BenchNow, fetchRows } from "./screens/bench.tsx";
import { openRuns, settings } from "./state.ts";
import { say } from "./words/say.ts";
import { tongue } from "./words/tongue.ts";

/** An act comes first: the outline is drawn when the hand is done with it, ms. */
const QUIET = 600;

/** The style sheet that comes with the rows. */
const ROWS_SHEET = /[/]bench-[^/]*\.css$/u;

/** So many waits may end before the Bench is looked at again: a night's. Judgement. */
const MOST_VIEWS = 6;

/** The Bench as a start at some moment first draws it, drawn away from the page. */
function drawAway(at: number): string {
  const moment: BenchMoment = {
    at,
    left: (dueAt) => toldLater("left", dueAt),
    ago: (since) => toldLater("ago", since),
    late: (dueAt) => say.alarm.lateBy(toldLater("ago", dueAt)),
  };
  const away = document.createElement("div");
  render(
    <>
      <div class="app-screen">
        <main class="bench">
          <BenchNow status={statusAtStart(at)} moment={moment} />
        </main>
      </div>
      <Places lit="bench" />
    </>,
    away,
  );
  // What is in the glass is most of what there is to read, and nothing that anybody waits for.
  for (const part of away.querySelectorAll("svg > :not(.column-wall)")) part.remove();
  const drawn = away.innerHTML;
  render(null, away);
  return drawn;
}

const outer = (element: Element): string => element.outerHTML;

/** What style sheets and readers must know of the house before the page lives. */
const KEPT = ["lang", "dir", "data-theme", "data-hand", "data-glove"];

/** The opening tag of the next page; hands may be dry again by then. */
function openingTag(): string {
  const next = document.createElement("html");
  for (const name of KEPT) {
    const value = document.documentElement.getAttribute(name);
    if (value !== null) next.setAttribute(name, value);
  }
  return outer(next).replace("</html>", "");
}

/** When the Bench looks otherwise although nobody did anything: due times name their day, too. */
function changesAfter(now: number): readonly number[] {
  const soundOld = settings.peek().soundHeardAt + SOUND_CHECK_HOLDS;
  return [...waitsEnd(openRuns.peek(), now), new Date(now).setHours(24, 0, 0, 0), soundOld]
    .filter((at) => at > now)
    .sort((a, b) => a - b)
    .slice(0, MOST_VIEWS);
}

/** Each view is drawn in a turn of its own: a tap need not wait for all of them. */
async function views(now: number, clock: Clock): Promise<readonly BenchView[]> {
  const drawn: BenchView[] = [];
  let from = now;
  for (const until of changesAfter(now)) {
    await new Promise<void>((resolve) => void clock.after(0, resolve));
    drawn.push({ inside: drawAway(from), until });
    from = until;
  }
  return drawn;
}

/** Leaves the outline, and tells until when it holds. */
async function leave(script: string, clock: Clock): Promise<number> {
  await fetchRows();
  const drawn = await views(clock.now(), clock);
  const sheets = [...document.querySelectorAll<HTMLLinkElement>("link[rel='stylesheet']")]
    .filter(({ href }) => ROWS_SHEET.test(href))
    .map(outer)
    .join("");
  const { day } = tongue.value;
  const outline: BenchOutline = { script, page: openingTag(), sheets, day, views: drawn };
  const kept = await caches.open(OUTLINES);
  await kept.put(OUTLINE, new Response(JSON.stringify(outline)));
  return Math.max(...drawn.map(({ until }) => until));
}

/** What is no longer so must not stand there when the page dies before it is drawn anew. */
const takeBack = async (): Promise<boolean> => caches.delete(OUTLINES);

/**
 * Leaves the Bench's outline for the next start each time that the Bench has changed. Where nothing
 * can be kept, the next start begins with an empty page.
 */
export function keepOutline(clock: Clock): void {
  const script = document.querySelector("script[type='module'][src]")?.getAttribute("src");
  if (!script) return;
  let cancel = (): void => undefined;
  let asked = 0;
  const soon = (ms: number) => {
    asked += 1;
    const mine = asked;
    cancel();
    cancel = clock.after(ms, () => {
      leave(script, clock).then(
        (until) => {
          // The Bench may have changed while it was drawn: that is drawn next.
          if (mine === asked) soon(until - clock.now() + QUIET);
        },
        () => undefined,
      );
    });
  };
  effect(() => {
    // What it is drawn from.
    void [openRuns.value, settings.value, tongue.value];
    // At first the one of before still holds.
    if (asked > 0) takeBack().catch(() => undefined);
    soon(QUIET);
  });
}
