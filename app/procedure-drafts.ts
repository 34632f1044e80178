import * as z from "zod/mini";
import { copyProcedure } from "../core/method/edit-procedure.ts";
import { type Procedure, stepSchema } from "../core/method/procedure.ts";
import { freshId } from "./desk.ts";
import { draftBook } from "./drafts.ts";
import { routes } from "./routes.ts";
import { procedureName } from "./words/procedure-name.ts";
import { sayLater } from "./words/say-later.ts";

/** A procedure as the form holds it: what was typed for its times stands beside it. */
export interface ProcedureDraft {
  readonly procedure: Procedure;
  /** As typed, by `step/field`; where nothing was typed the procedure's own stands. */
  readonly texts: Readonly<Record<string, string>>;
}

// Looser than a procedure: one that is being changed need not hang together yet.
const draftSchema = z.object({
  procedure: z.object({
    id: z.string(),
    name: z.optional(z.string()),
    perishableFrom: z.optional(z.string()),
    version: z.number(),
    steps: z.array(stepSchema),
  }),
  texts: z.record(z.string(), z.string()),
});

export const { keptDraft, keepDraft, dropDraft } = draftBook<ProcedureDraft>("procedure", (kept) =>
  draftSchema.safeParse(kept),
);

/** As long as a procedure's name may be. */
const LONGEST = 80;

/** Puts a copy into a form of its own and goes there; nothing is stored before it is saved. */
export function copyIntoForm(procedure: Procedure): void {
  const id = freshId();
  const name = sayLater.procedures.copyName(procedureName(procedure)).slice(0, LONGEST);
  keepDraft(id, { procedure: copyProcedure(procedure, id, name), texts: {} });
  location.hash = routes.procedure(id);
}
