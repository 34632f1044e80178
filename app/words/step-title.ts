import type { Step } from "../../core/method/procedure.ts";
import { say } from "./say.ts";

/** What a step is called: the house's own name for it, else the verb of the catalogue. */
export const stepTitle = ({ id, title }: Pick<Step, "id" | "title">): string =>
  title ?? say.work.verbs[id] ?? id;
