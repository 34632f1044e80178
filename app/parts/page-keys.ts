import { useLayoutEffect, useState } from "preact/hooks";
import { pressGuard } from "./page-guard.ts";
import { holdFor } from "./use-press.ts";

/**
 * Keys that work the page without a finger: a page-turner on the bar, a keyboard under a cloth.
 * Forward stands for the next thing that counts; kept down as long as a hold takes, or pressed
 * twice, it is a hold. Some page-turners only send short presses, whatever the foot does (from
 * memory), hence the second way. A key that merely repeats does nothing.
 */

/** Two presses that begin within this are one hold, ms. Judgement. */
export const TWICE_WITHIN = 1200;

export type Turn =
  | { readonly type: "rest" }
  /** The key is down, on the control that stands for this. */
  | { readonly type: "down"; readonly on: string; readonly since: number }
  /** It was let go early: pressed once more by then, it acts. */
  | { readonly type: "once"; readonly on: string; readonly until: number }
  /** It has acted, and is still down. */
  | { readonly type: "spent" };

export type TurnEvent =
  | {
      readonly type: "forward";
      readonly at: number;
      readonly repeat: boolean;
      /** What the focused control stands for; empty where none that counts has the focus. */
      readonly on: string;
      /** What the one after it stands for: the same where there is only one. */
      readonly next: string;
      readonly quietUntil: number;
      readonly holdFor: number;
    }
  | { readonly type: "up"; readonly at: number; readonly on: string; readonly holdFor: number }
  | { readonly type: "back"; readonly at: number }
  | { readonly type: "lost" };

/** What the page does about it: `next` moves the focus on, `cancel` drops what was begun. */
export type TurnOutcome = "next" | "act" | "cancel" | "back" | null;

interface TurnStep {
  readonly turn: Turn;
  readonly outcome: TurnOutcome;
}

const REST: Turn = { type: "rest" };
const SPENT: Turn = { type: "spent" };
const stays = (turn: Turn): TurnStep => ({ turn, outcome: null });

function forward(turn: Turn, event: TurnEvent & { type: "forward" }): TurnStep {
  const { at, on, next } = event;
  if (event.repeat) {
    const held = turn.type === "down" && turn.on === on && at - turn.since >= event.holdFor;
    return held ? { turn: SPENT, outcome: "act" } : stays(turn);
  }
  if (at < event.quietUntil) return stays(SPENT);
  const again = turn.type === "once" && turn.on === on;
  if (again && at <= turn.until) return { turn: SPENT, outcome: "act" };
  // One that was stood on and let be is gone past; one that the focus just came to is not.
  if (on === "" || again) return { turn: { type: "down", on: next, since: at }, outcome: "next" };
  return stays({ type: "down", on, since: at });
}

function up(turn: Turn, { at, on, holdFor: hold }: TurnEvent & { type: "up" }): TurnStep {
  if (turn.type === "spent") return stays(REST);
  if (turn.type !== "down") return stays(turn);
  // What stood there has given way to something else meanwhile.
  if (turn.on !== on) return { turn: REST, outcome: "cancel" };
  if (at - turn.since >= hold) return { turn: REST, outcome: "act" };
  return stays({ type: "once", on, until: turn.since + TWICE_WITHIN });
}

/** The next phase, and what the page does. Pure: times are the events' own stamps, ms. */
export function nextTurn(turn: Turn, event: TurnEvent): TurnStep {
  switch (event.type) {
    case "forward":
      return forward(turn, event);
    case "up":
      return up(turn, event);
    case "back": {
      const begun = turn.type === "down" || (turn.type === "once" && event.at <= turn.until);
      return { turn: REST, outcome: begun ? "cancel" : "back" };
    }
    case "lost":
      return { turn: REST, outcome: turn.type === "rest" ? null : "cancel" };
  }
}

/** Keys of page-turners, keyboards and, where the browser hands them on, headsets. */
const FORWARD = ["PageDown", "ArrowRight", "ArrowDown", "MediaTrackNext"];
const BACK = ["PageUp", "ArrowLeft", "ArrowUp", "MediaTrackPrevious", "Escape"];
/** These also scroll: they count only once something that counts has the focus. */
const SCROLLS = ["ArrowDown", "ArrowUp"];

/** What lies on top is what is meant. */
const SCOPES = [".alarm-sheet", ".run-pad", ".run-actions"];
const COUNTS = '.hold-button, .tap-button[data-size="primary"]';
const WAY_BACK = ".run-pad > .tap-button, .run-pad-head > .tap-button";
const TYPES_IN = "input:not([readonly]), select, textarea";

function controlsNow(): HTMLElement[] {
  const scope = SCOPES.map((one) => document.querySelector(one)).find((one) => one !== null);
  const all = [...(scope?.querySelectorAll<HTMLElement>(COUNTS) ?? [])];
  return all.filter((one) => one.checkVisibility());
}

/** The label alone: a hint that changes changes nothing about what the control does. */
const meaningOf = (one: HTMLElement | undefined): string =>
  one?.querySelector(".hold-button-label")?.textContent ?? one?.textContent ?? "";

interface Keyed {
  readonly on: HTMLElement | undefined;
  readonly next: HTMLElement | undefined;
}

function keyedNow(): Keyed {
  const controls = controlsNow();
  const at = controls.findIndex((one) => one.matches(":focus"));
  return { on: controls[at], next: controls[(at + 1) % controls.length] };
}

function mark(turn: Turn): void {
  for (const one of document.querySelectorAll("[data-keyed]")) one.removeAttribute("data-keyed");
  const { on } = keyedNow();
  if (turn.type === "down" || turn.type === "once") on?.setAttribute("data-keyed", turn.type);
}

function goBack(): boolean {
  const way = document.querySelector(".alarm-sheet") ? null : document.querySelector(WAY_BACK);
  if (way instanceof HTMLElement) way.click();
  return way !== null;
}

function turnEventOf(event: KeyboardEvent, { on, next }: Keyed): TurnEvent | undefined {
  const { key, repeat, timeStamp: at } = event;
  if (SCROLLS.includes(key) && on === undefined) return undefined;
  if (BACK.includes(key)) return repeat ? undefined : { type: "back", at };
  if (!FORWARD.includes(key) || next === undefined) return undefined;
  const meant = { on: meaningOf(on), next: meaningOf(next) };
  const rules = { quietUntil: pressGuard().quietUntil(), holdFor: holdFor() };
  return { type: "forward", at, repeat, ...meant, ...rules };
}

const isTyping = ({ target }: KeyboardEvent): boolean =>
  target instanceof Element && target.matches(TYPES_IN);

/** Hears the keys of the whole page until what it returns is called. */
function hearKeys(onOnce: (once: boolean) => void): () => void {
  let turn: Turn = REST;
  /** Whether the page did anything about it. */
  const take = (event: TurnEvent, { on, next }: Keyed): boolean => {
    const step = nextTurn(turn, event);
    if (step.outcome === "next") next?.focus();
    if (step.outcome === "act") on?.click();
    if (step.turn !== turn) {
      mark(step.turn);
      onOnce(step.turn.type === "once");
    }
    turn = step.turn;
    return step.outcome === "back" ? goBack() : true;
  };
  const onDown = (event: KeyboardEvent) => {
    if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
    if (isTyping(event)) return;
    const keyed = keyedNow();
    const turned = turnEventOf(event, keyed);
    if (turned && take(turned, keyed)) event.preventDefault();
  };
  const onUp = ({ key, timeStamp: at }: KeyboardEvent) => {
    if (!FORWARD.includes(key)) return;
    const keyed = keyedNow();
    take({ type: "up", at, on: meaningOf(keyed.on), holdFor: holdFor() }, keyed);
  };
  const onLost = () => void take({ type: "lost" }, keyedNow());
  window.addEventListener("keydown", onDown);
  window.addEventListener("keyup", onUp);
  window.addEventListener("blur", onLost);
  document.addEventListener("pointerdown", onLost);
  return () => {
    window.removeEventListener("keydown", onDown);
    window.removeEventListener("keyup", onUp);
    window.removeEventListener("blur", onLost);
    document.removeEventListener("pointerdown", onLost);
  };
}

const screens = new Set<(once: boolean) => void>();
let stop: (() => void) | undefined;

/** Screens that lie over one another share one hearing: a key is pressed once. */
function listen(screen: (once: boolean) => void): () => void {
  screens.add(screen);
  stop ??= hearKeys((once) => {
    for (const one of screens) one(once);
  });
  return () => {
    screens.delete(screen);
    if (screens.size > 0) return;
    stop?.();
    stop = undefined;
  };
}

/** While mounted, keys work the page. @returns whether one more press would act */
export function usePageKeys(): boolean {
  const [once, setOnce] = useState(false);
  useLayoutEffect(() => listen(setOnce), []);
  return once;
}
