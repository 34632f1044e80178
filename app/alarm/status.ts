import type { AwakeState } from "./keep-awake.ts";
import type { SoundState } from "./ring.ts";

/** Everything the status line may be made of. */
export interface AlarmFacts {
  /** The page is in sight. */
  readonly visible: boolean;
  readonly sound: SoundState;
  readonly awake: AwakeState;
  /** Ms since somebody said they heard this phone; null when nobody has. */
  readonly heardAgo: number | null;
  /** Somebody held "it is set in the phone's clock" for every wait now running. */
  readonly inPhoneClock: boolean;
}

/** What stands between now and ringing here, the most telling first. */
export type Missing =
  | "out-of-sight"
  | "no-sound"
  | "sound-blocked"
  | "sound-unheard"
  | "sound-check-old"
  | "screen-lock-refused"
  | "screen-lock-absent";

export type AlarmLayer = "rings-here" | "phone-clock" | "rings-on-return";

export interface AlarmStatus {
  /** The strongest layer that holds now. */
  readonly layer: AlarmLayer;
  /** Which sentence says so. */
  readonly code: "rings-here" | "rings-here-and-phone-clock" | "phone-clock" | Missing;
  readonly missing: readonly Missing[];
  /** What will ring if the page is left now. */
  readonly ifLeft: "phone-clock" | "nothing";
}

/** A sound check counts for one shift, ms. */
const SOUND_CHECK_HOLDS = 12 * 60 * 60 * 1000;

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

/** Which layer holds now, from facts only. It says that it rings here only when nothing is missing. */
export function alarmStatus(facts: AlarmFacts): AlarmStatus {
  const sight: readonly Missing[] = facts.visible ? [] : ["out-of-sight"];
  const missing = [...sight, ...missingSound(facts), ...missingScreen(facts)];
  const ifLeft = facts.inPhoneClock ? "phone-clock" : "nothing";
  const [first] = missing;
  if (first === undefined) {
    const code = facts.inPhoneClock ? "rings-here-and-phone-clock" : "rings-here";
    return { layer: "rings-here", code, missing, ifLeft };
  }
  if (facts.inPhoneClock) return { layer: "phone-clock", code: "phone-clock", missing, ifLeft };
  return { layer: "rings-on-return", code: first, missing, ifLeft };
}
