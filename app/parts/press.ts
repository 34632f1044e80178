import { FRAME, LEAST_CONTACT, WIDEST_CONTACT } from "./press-rules.ts";

/**
 * What a contact with a control amounts to. Pure: events in, phase and outcome out; times are the
 * events' own stamps. Water on glass makes contacts that are short, that come in twos, that come
 * straight after a real one, or that are wide: none of those may act.
 */

export type PressKind = "hold" | "tap";

export type Press =
  | { readonly type: "idle" }
  | {
      readonly type: "pressing";
      readonly pointer: number;
      readonly since: number;
      /** Water makes touches, not mouse clicks: a mouse may be quick. */
      readonly touch: boolean;
      /** How long it must be held, ms. */
      readonly holdFor: number;
    };

export type PressEvent =
  | {
      readonly type: "down";
      readonly at: number;
      readonly pointer: number;
      readonly touch: boolean;
      /** Across, CSS px. */
      readonly width: number;
      /** On the whole page, this one included. */
      readonly contacts: number;
      readonly quietUntil: number;
      /** So near to the screen's edge that it may be the hand that holds the phone. */
      readonly edge: boolean;
      readonly holdFor: number;
    }
  | {
      readonly type: "move";
      readonly pointer: number;
      readonly inside: boolean;
      readonly width: number;
    }
  | { readonly type: "up"; readonly at: number; readonly pointer: number }
  | { readonly type: "filled"; readonly at: number }
  | { readonly type: "another-contact" }
  | { readonly type: "lost" }
  | {
      readonly type: "key";
      readonly at: number;
      readonly repeat: boolean;
      readonly quietUntil: number;
    }
  | { readonly type: "assistant"; readonly at: number; readonly quietUntil: number };

/** Why a press came to nothing. `another-contact` and `wide` mean: wipe the screen. */
export type Spoiled =
  | "too-short"
  | "too-soon"
  | "let-go"
  | "another-contact"
  | "wide"
  | "edge"
  | "moved-off"
  | "lost";

export interface PressStep {
  readonly press: Press;
  readonly outcome: "acted" | Spoiled | null;
}

const IDLE: Press = { type: "idle" };
const ended = (outcome: PressStep["outcome"]): PressStep => ({ press: IDLE, outcome });

function down(kind: PressKind, press: Press, event: PressEvent & { type: "down" }): PressStep {
  if (press.type === "pressing" || event.contacts > 1) return ended("another-contact");
  if (event.at < event.quietUntil) return ended("too-soon");
  if (event.width > WIDEST_CONTACT) return ended("wide");
  if (kind === "hold" && event.edge) return ended("edge");
  const { pointer, touch, at, holdFor } = event;
  return { press: { type: "pressing", pointer, touch, since: at, holdFor }, outcome: null };
}

function up(kind: PressKind, press: Press & { type: "pressing" }, at: number): PressStep {
  const heldFor = at - press.since;
  if (press.touch && heldFor < LEAST_CONTACT) return ended("too-short");
  return ended(kind === "tap" || heldFor >= press.holdFor ? "acted" : "let-go");
}

function whilePressing(
  kind: PressKind,
  press: Press & { type: "pressing" },
  event: Exclude<PressEvent, { type: "down" | "key" | "assistant" }>,
): PressStep {
  const stays: PressStep = { press, outcome: null };
  switch (event.type) {
    case "another-contact":
      return ended("another-contact");
    case "lost":
      return ended("lost");
    case "filled":
      return kind === "hold" && event.at - press.since >= press.holdFor - FRAME
        ? ended("acted")
        : stays;
    case "up":
      return event.pointer === press.pointer ? up(kind, press, event.at) : stays;
    case "move":
      if (event.pointer !== press.pointer) return stays;
      if (event.width > WIDEST_CONTACT) return ended("wide");
      return event.inside ? stays : ended("moved-off");
  }
}

/** The next phase of a press, and what came of the event, if anything did. */
export function nextPress(kind: PressKind, press: Press, event: PressEvent): PressStep {
  switch (event.type) {
    case "down":
      return down(kind, press, event);
    case "key":
      // A key is deliberate: it acts at once. A key kept down repeats, and that is not a new press.
      if (event.repeat) return { press, outcome: null };
      return ended(event.at < event.quietUntil ? "too-soon" : "acted");
    case "assistant":
      return ended(event.at < event.quietUntil ? "too-soon" : "acted");
    case "move":
    case "up":
    case "filled":
    case "another-contact":
    case "lost":
      return press.type === "pressing"
        ? whilePressing(kind, press, event)
        : { press, outcome: null };
  }
}
