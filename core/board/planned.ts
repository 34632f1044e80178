import * as z from "zod/mini";
import { procedureSchema } from "../method/procedure.ts";
import { moment } from "../run/event.ts";
import { planSchema } from "../spec/plan.ts";

const id = z.string().check(z.minLength(1), z.maxLength(80));

/**
 * A batch that is planned and not begun. Its run gets the same id, so that a batch which was begun
 * is known to be no longer planned.
 */
export const plannedSchema = z.object({
  id,
  /** As it would be frozen into its run. */
  plan: planSchema,
  procedure: procedureSchema,
  /** Epoch ms. */
  readyBy: moment,
  /** What this batch does otherwise than its spec, one entry each. */
  changes: z.array(z.string().check(z.maxLength(400))).check(z.maxLength(40)),
  /** The planned batch that it is made for: it has to be ready when that one is built. */
  madeFor: z.optional(id),
});

/** A batch that is planned and not begun. */
export type Planned = Readonly<z.infer<typeof plannedSchema>>;
