import { inventedHistory } from "../../../app/demo/history/invented.ts";
import { demoSpecs } from "../../../app/demo/specs.ts";
import { english } from "../../../app/demo/words/en.ts";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";

/** The demo's specs as they are put in on an English phone. */
export const DEMO_SPECS = demoSpecs(english);

/** The demo's batches as they are put in on an English phone at a moment, epoch ms. */
export const demoHistory = (now: number) =>
  inventedHistory(now, english, new Map(CUPBOARD.map((one) => [one.id, one])));
