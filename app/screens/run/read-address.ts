import { useEffect } from "preact/hooks";
import { endingOf, openVisit, type Run, stepOfVisit } from "../../../core/run/run.ts";
import { routes } from "../../routes.ts";
import { address } from "../../state.ts";

/** Whether somebody came to read this batch's drip: asked at the moment, for they may have gone on. */
export const cameToRead = (runId: string): boolean => address.value === routes.read(runId);

/** From there to the batch's own address, so that the pad does not lie in the way back. */
export const leaveReading = (runId: string): void => location.replace(routes.run(runId));

/** The address of a reading is left where nothing drips: the pad must not open by itself later on. */
export function useReadAddress(run: Run | undefined): void {
  const visit = run && openVisit(run);
  const drips =
    run !== undefined &&
    visit !== undefined &&
    endingOf(run) === undefined &&
    stepOfVisit(run, visit).work === "drip";
  useEffect(() => {
    if (run !== undefined && !drips && cameToRead(run.id)) leaveReading(run.id);
  }, [run?.id, drips]);
}
