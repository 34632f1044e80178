import { atRest } from "../core/board/at-rest.ts";
import { somethingUnsaved } from "./drafts.ts";
import { now, openRuns, saving } from "./state.ts";

/** Whether the app may start anew now: no work in hand, no alarm near, nothing unsaved. */
export const mayRestart = (): boolean =>
  saving.value.type !== "saving" && !somethingUnsaved() && atRest(openRuns.value, now.value);
