/** How long a consequential action is held, ms. `--hold-time` in tokens.css says the same. */
export const HOLD_FOR = 600;
/** The same while hands are wet, ms; `[data-wet]` in tokens.css says the same. Judgement. */
export const WET_HOLD_FOR = 900;
/** Touches shorter than this are drops and splashes, ms. */
export const LEAST_CONTACT = 60;
/** After an action everything is deaf for this long, ms. */
export const QUIET_AFTER_ACTION = 350;
/** The same between two keys of a pad, where 350 ms would swallow figures, ms. Judgement. */
export const QUIET_AFTER_KEY = 120;
/** A contact wider than this is a palm or a puddle, CSS px across (40 px radius). */
export const WIDEST_CONTACT = 80;
/** A grip or a palm begins this near to the screen's edge, CSS px. Judgement. */
export const EDGE = 16;
/** The end of the fill may be reported one frame early. */
export const FRAME = 17;
