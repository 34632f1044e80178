import { FRAME, HOLD_FOR, LEAST_CONTACT, WIDEST_CONTACT } from "./press-rules.ts";

/** So many contacts that came to nothing, within so long, and the glass is taken for wet. Judgement. */
const ENOUGH = 3;
const WITHIN = 20_000;

/** A contact that is over. */
export interface Contact {
  /** ms */
  readonly lasted: number;
  /** The widest it was, CSS px. */
  readonly width: number;
  /** The most contacts there were at once while it lasted, itself included. */
  readonly most: number;
  /** Whether it began on something that must be held. */
  readonly onHold: boolean;
  /** Whether the phone took it away. */
  readonly cancelled: boolean;
}

/**
 * Whether a contact is one that wet hands make: a ghost, or a hold that was broken off. One that
 * the phone took away from anywhere else was a scroll.
 */
export function isWetContact(contact: Contact): boolean {
  const { lasted, width, most, onHold, cancelled } = contact;
  if (most > 1 || width > WIDEST_CONTACT) return true;
  if (onHold) return cancelled || lasted < HOLD_FOR - FRAME;
  return !cancelled && lasted < LEAST_CONTACT;
}

/**
 * Takes one more such contact in.
 *
 * @param times - when the ones before were, ms
 * @returns those that still count, and whether the glass is taken for wet; then it begins anew
 */
export function countWet(times: readonly number[], at: number) {
  const recent = [...times.filter((time) => at - time < WITHIN), at];
  const wet = recent.length >= ENOUGH;
  return { times: wet ? [] : recent, wet };
}

interface Begun {
  readonly since: number;
  readonly onHold: boolean;
  width: number;
  most: number;
}

/** Watches every touch of the page; `onWet` is told each time the glass is taken for wet. */
export function watchWater(onWet: () => void): void {
  const down = new Map<number, Begun>();
  let times: readonly number[] = [];
  const widen = (event: PointerEvent) => {
    const begun = down.get(event.pointerId);
    if (begun) begun.width = Math.max(begun.width, event.width, event.height);
  };
  const end = (event: PointerEvent, cancelled: boolean) => {
    const begun = down.get(event.pointerId);
    down.delete(event.pointerId);
    if (!begun) return;
    const { timeStamp: at } = event;
    if (!isWetContact({ ...begun, lasted: at - begun.since, cancelled })) return;
    const count = countWet(times, at);
    times = count.times;
    if (count.wet) onWet();
  };
  const early = { capture: true, passive: true };
  document.addEventListener(
    "pointerdown",
    (event) => {
      if (event.pointerType !== "touch") return;
      // The first of its kind is alone: forget any whose lifting never came.
      if (event.isPrimary) down.clear();
      const { target, timeStamp: since } = event;
      const onHold = target instanceof Element && target.closest(".hold-button") !== null;
      down.set(event.pointerId, { since, onHold, width: 0, most: 1 });
      widen(event);
      for (const begun of down.values()) begun.most = Math.max(begun.most, down.size);
    },
    early,
  );
  document.addEventListener("pointermove", widen, early);
  document.addEventListener("pointerup", (event) => end(event, false), early);
  document.addEventListener("pointercancel", (event) => end(event, true), early);
}
