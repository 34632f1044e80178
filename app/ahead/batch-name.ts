import { batchCode } from "../../core/label/batch-code.ts";
import { now, records } from "../state.ts";
import { dayMonth } from "../words/format.ts";

/** The name that goes on the vessel: of the spec, the day, and what was begun that day. */
export function batchName(specName: string): string {
  const taken = records.value.map(({ batch }) => batch);
  return batchCode(specName, dayMonth(now.value), taken);
}
