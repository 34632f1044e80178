import type { Outcome, Procedure, ReadingKey, Stand } from "../method/procedure.ts";
import type { Plan } from "../spec/plan.ts";
import type { FilterShape } from "../spec/spec.ts";
import type { AfterOrder, AfterRefusal } from "./afterwards.ts";
import type { Answer, FigureRefusal } from "./answer.ts";
import type { OtherWatch, ReadingUnit, Vessel } from "./event.ts";
import type { TakeBackRefusal } from "./take-back.ts";

/** An order from the person at the bench. */
export type Command =
  | {
      readonly type: "start-run";
      readonly batch: string;
      readonly plan: Plan;
      readonly procedure: Procedure;
      readonly appVersion: string;
      readonly readyBy?: number;
    }
  | { readonly type: "set-ready"; readonly by: number }
  | {
      readonly type: "finish-step";
      readonly visit: string;
      readonly answer?: Answer;
      readonly look?: Outcome;
    }
  | {
      readonly type: "log-reading";
      readonly visit: string;
      readonly what: ReadingKey;
      readonly value: number;
      readonly unit: ReadingUnit;
    }
  /** What has dripped so far, weighed with its vessel, g. */
  | { readonly type: "log-weight"; readonly visit: string; readonly gross: number }
  | { readonly type: "note-tare"; readonly vessel: Vessel; readonly grams: number }
  | { readonly type: "note-shape"; readonly visit: string; readonly shape: FilterShape }
  /** Tasted, and left to go on. */
  | { readonly type: "note-look"; readonly visit: string; readonly look: Outcome }
  | { readonly type: "pause" }
  | { readonly type: "resume" }
  | { readonly type: "move-vessel"; readonly to: Stand }
  | { readonly type: "change-hands"; readonly initials: string }
  | {
      readonly type: "note-lot";
      readonly ingredient: string;
      readonly lot: string;
      readonly useBy?: number;
    }
  | { readonly type: "pour-line"; readonly visit: string; readonly line: string }
  | { readonly type: "hear-alarm"; readonly visit: string; readonly dueAt: number }
  | {
      readonly type: "hand-alarm";
      readonly visit: string;
      readonly dueAt: number;
      readonly to: OtherWatch;
      /** Who watches it, by initials. */
      readonly who?: string;
    }
  | { readonly type: "move-due"; readonly visit: string; readonly dueAt: number }
  | { readonly type: "undo"; readonly act: string }
  | { readonly type: "add-note"; readonly text: string }
  | { readonly type: "shift-clock"; readonly byMs: number; readonly keepElapsed: boolean }
  /** The page did not run from a moment on, for so many ms. */
  | { readonly type: "note-sleep"; readonly fromMs: number; readonly forMs: number }
  | { readonly type: "abandon"; readonly reason: string }
  | AfterOrder;

/** Why an order was not carried out. */
export type RunRefusal =
  | "run-already-started"
  /** Some of its steps lead only to each other. */
  | "procedure-without-end"
  | "run-not-started"
  | "run-ended"
  | "step-not-open"
  | "reading-missing"
  | "look-missing"
  | FigureRefusal
  | AfterRefusal
  | "note-empty"
  | TakeBackRefusal
  | "order-does-not-fit";
