import { atRest } from "../core/board/at-rest.ts";
import { somethingUnsaved } from "./drafts.ts";
import { now, openRuns } from "./state.ts";

/** Whether the app may start anew now: no work in hand, no alarm near, no form unsaved. */
export const mayRestart = (): boolean => !somethingUnsaved() && atRest(openRuns.value, now.value);
