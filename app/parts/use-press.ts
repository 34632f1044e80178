import type { TargetedMouseEvent, TargetedPointerEvent } from "preact";
import { useEffect, useLayoutEffect, useRef, useState } from "preact/hooks";
import { pressGuard } from "./page-guard.ts";
import type { Press, PressEvent, PressKind, Spoiled } from "./press.ts";
import { nextPress } from "./press.ts";
import { EDGE, HOLD_FOR, QUIET_AFTER_ACTION, WET_HOLD_FOR } from "./press-rules.ts";

/** A finger may wander this far outside before the press is off, CSS px. */
const SLOP = 8;

export interface PressOptions {
  readonly kind: PressKind;
  readonly onAct: () => void;
  readonly onSpoiled?: ((why: Spoiled) => void) | undefined;
  readonly disabled?: boolean | undefined;
  /** What the control now stands for: a press begun for something else comes to nothing. */
  readonly subject: string;
  /** Keys that act besides Enter and Space. */
  readonly keys?: readonly string[];
  /** How long everything is deaf after this acts, ms. */
  readonly quiet?: number;
}

type Pointer = TargetedPointerEvent<HTMLElement>;

function isInside(event: Pointer): boolean {
  const box = event.currentTarget.getBoundingClientRect();
  const across = event.clientX >= box.left - SLOP && event.clientX <= box.right + SLOP;
  const along = event.clientY >= box.top - SLOP && event.clientY <= box.bottom + SLOP;
  return across && along;
}

const widthOf = (event: Pointer) => Math.max(event.width, event.height);

/**
 * Touch readers press for their user: a click that no pointer made, or, on a phone, the "mouse" of
 * no size and no pressure that some send ahead of it.
 */
function isAssistant(event: Pointer): boolean {
  const small = event.width <= 1 && event.height <= 1 && event.pressure === 0;
  return event.pointerType === "mouse" && small && matchMedia("(pointer: coarse)").matches;
}

const isAtEdge = ({ clientX, clientY }: Pointer): boolean =>
  Math.min(clientX, clientY, innerWidth - clientX, innerHeight - clientY) < EDGE;

/** How long a hold takes now, ms. */
export const holdFor = (): number =>
  document.documentElement.dataset.wet === undefined ? HOLD_FOR : WET_HOLD_FOR;

interface Hand {
  readonly take: (event: PressEvent, at: number) => void;
  readonly isIdle: () => boolean;
  readonly isKey: (key: string) => boolean;
  /** Whether the last pointer was a touch reader's. */
  assisted: boolean;
}

const wetWidthOf = (event: Pointer) => (event.pointerType === "touch" ? widthOf(event) : 0);

const pointerHandlers = (hand: Hand) => ({
  onPointerDown: (event: Pointer) => {
    hand.assisted = isAssistant(event);
    if (hand.assisted || event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    const { pointerId: pointer, timeStamp: at } = event;
    const touch = event.pointerType === "touch";
    const { contacts, quietUntil } = pressGuard();
    const hands = { contacts: contacts(), quietUntil: quietUntil() };
    const place = { width: wetWidthOf(event), edge: touch && isAtEdge(event) };
    hand.take({ type: "down", at, pointer, touch, holdFor: holdFor(), ...place, ...hands }, at);
  },
  onPointerMove: (event: Pointer) => {
    if (hand.isIdle()) return;
    const facts = { pointer: event.pointerId, inside: isInside(event), width: wetWidthOf(event) };
    hand.take({ type: "move", ...facts }, event.timeStamp);
  },
  onPointerUp: ({ timeStamp: at, pointerId: pointer }: Pointer) =>
    hand.take({ type: "up", at, pointer }, at),
  onPointerCancel: ({ timeStamp: at }: Pointer) => hand.take({ type: "lost" }, at),
  onAnimationEnd: ({ timeStamp: at }: Event) => hand.take({ type: "filled", at }, at),
  onContextMenu: (event: Event) => event.preventDefault(),
});

const otherHandlers = (hand: Hand) => ({
  onKeyDown: (event: KeyboardEvent) => {
    if (!hand.isKey(event.key) || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    const { repeat, timeStamp: at } = event;
    hand.take({ type: "key", at, repeat, quietUntil: pressGuard().quietUntil() }, at);
  },
  // In Firefox, Space clicks on release whatever became of its going down (from memory).
  onKeyUp: (event: KeyboardEvent) => {
    if (event.key === " ") event.preventDefault();
  },
  onClick: (event: TargetedMouseEvent<HTMLElement>) => {
    const asked = event.detail === 0 || hand.assisted;
    hand.assisted = false;
    const { timeStamp: at } = event;
    if (asked) hand.take({ type: "assistant", at, quietUntil: pressGuard().quietUntil() }, at);
  },
});

/** Turns what happens to a button into presses that count. Spread `on` over the button. */
export function usePress(options: PressOptions) {
  const latest = useRef(options);
  latest.current = options;
  const press = useRef<Press>({ type: "idle" });
  const [pressing, setPressing] = useState(false);

  const take = (event: PressEvent, at: number) => {
    const { kind, onAct, onSpoiled, disabled, quiet = QUIET_AFTER_ACTION } = latest.current;
    if (disabled && event.type !== "lost") return;
    const step = nextPress(kind, press.current, event);
    press.current = step.press;
    setPressing(step.press.type === "pressing");
    if (step.outcome === "acted") {
      pressGuard().acted(at, quiet);
      onAct();
    } else if (step.outcome) onSpoiled?.(step.outcome);
  };
  const hand = useRef<Hand>({
    take,
    isIdle: () => press.current.type === "idle",
    isKey: (key) => key === "Enter" || key === " " || (latest.current.keys ?? []).includes(key),
    assisted: false,
  }).current;

  useEffect(() => pressGuard().listen((news) => hand.take({ type: news }, 0)), [hand]);
  useLayoutEffect(() => hand.take({ type: "lost" }, 0), [options.disabled, options.subject, hand]);
  return { pressing, on: { ...pointerHandlers(hand), ...otherHandlers(hand) } };
}
