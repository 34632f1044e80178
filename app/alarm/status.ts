import { HOUR } from "../../core/quantity/time-units-table.ts";
import type { OtherWatch } from "../../core/run/event.ts";
import type { AwakeState } from "./keep-awake.ts";
import type { SoundState } from "./ring.ts";

/** Everything the status line may be made of. A spoken step is not: nobody knows that it was heard. */
export interface AlarmFacts {
  /** The page is in sight. */
  readonly visible: boolean;
  readonly sound: SoundState;
  readonly awake: AwakeState;
  /** Ms since somebody said they heard this phone; null when nobody has. */
  readonly heardAgo: number | null;
  /** For each wait now running, what else watches it, as somebody said. */
  readonly waits: readonly (readonly OtherWatch[])[];
}

/** What stands between now and ringing here, the most telling first. */
export type Missing =
  /** The part that rings could not be fetched. */
  | "no-bell"
  | "out-of-sight"
  | "no-sound"
  | "sound-blocked"
  | "sound-unheard"
  | "sound-check-old"
  | "screen-lock-refused"
  | "screen-lock-absent";

/** What else watches every wait; `several` where it is not the same for all of them. */
export type AlsoWatched = OtherWatch | "several" | "nothing";

/** What holds now, the strongest first. */
export type AlarmLayer = "rings-here" | "watched-elsewhere" | "rings-on-return" | "nothing";

/** What the status line says, and why. */
export interface AlarmStatus {
  /** The strongest layer that holds now. */
  readonly layer: AlarmLayer;
  /** Which sentence says so. */
  readonly code:
    | "rings-here"
    | `rings-here-and-${Exclude<AlsoWatched, "nothing">}`
    | "phone-clock"
    | "person"
    | "several"
    | Missing;
  readonly missing: readonly Missing[];
}

/** A sound check counts for one shift, ms. Judgement. */
export const SOUND_CHECK_HOLDS = 12 * HOUR;

function missingSound({ sound, heardAgo }: AlarmFacts): readonly Missing[] {
  if (sound === "absent") return ["no-sound"];
  const blocked: readonly Missing[] = sound === "blocked" ? ["sound-blocked"] : [];
  if (heardAgo === null) return [...blocked, "sound-unheard"];
  // A check "in the future" means the clock went back: it is worth nothing.
  const fresh = heardAgo >= 0 && heardAgo < SOUND_CHECK_HOLDS;
  return fresh ? blocked : [...blocked, "sound-check-old"];
}

function missingScreen({ awake }: AlarmFacts): readonly Missing[] {
  switch (awake) {
    case "held":
      return [];
    case "refused":
      return ["screen-lock-refused"];
    case "absent":
      return ["screen-lock-absent"];
  }
}

/** The surest first: a clock rings, a person comes, writing waits to be read. */
const WATCHES: readonly OtherWatch[] = ["phone-clock", "person", "vessel"];

function alsoWatched({ waits }: AlarmFacts): AlsoWatched {
  if (waits.length === 0) return "nothing";
  const ofAll = WATCHES.find((one) => waits.every((watches) => watches.includes(one)));
  // Writing calls nobody: only where it is on every vessel can that be said of all.
  const calls = waits.every((watches) => watches.some((one) => one !== "vessel"));
  if (ofAll !== undefined && (ofAll !== "vessel" || !calls)) return ofAll;
  return calls ? "several" : "nothing";
}

/** Which layer holds now, from facts only. It says that it rings here only when nothing is missing. */
export function alarmStatus(facts: AlarmFacts): AlarmStatus {
  const sight: readonly Missing[] = facts.visible ? [] : ["out-of-sight"];
  const missing = [...sight, ...missingSound(facts), ...missingScreen(facts)];
  const also = alsoWatched(facts);
  const [first] = missing;
  if (first === undefined) {
    const code = also === "nothing" ? "rings-here" : (`rings-here-and-${also}` as const);
    return { layer: "rings-here", code, missing };
  }
  // Writing on a vessel calls nobody, so what is missing here matters more.
  if (also === "nothing" || also === "vessel") {
    return { layer: "rings-on-return", code: first, missing };
  }
  return { layer: "watched-elsewhere", code: also, missing };
}
