import { computed } from "@preact/signals";
import { DAIRY_WASH } from "../core/method/dairy-wash.ts";
import type { Procedure } from "../core/method/procedure.ts";
import { PROCEDURES } from "../core/method/procedures.ts";
import { ownProcedures, specs } from "./state.ts";

/** Every procedure a spec may ask for: the house's own first. */
export const procedureBook = computed<readonly Procedure[]>(() => [
  ...ownProcedures.value,
  ...PROCEDURES,
]);

/** Whether a procedure pours milk: a washed spec is made by such a one, and no other spec is. */
const pours = ({ steps }: Procedure): boolean => steps.some(({ work }) => work === "milk");

/** The procedures that a spec may be made by. */
export const proceduresFor = (washed: boolean): readonly Procedure[] =>
  procedureBook.value.filter((one) => pours(one) === washed);

/** Why a spec is not made by the procedure it names; nothing where it is, or names none. */
export function misfitOf(washed: boolean, id: string): "gone" | "other-kind" | undefined {
  if (id === "" || proceduresFor(washed).some((one) => one.id === id)) return undefined;
  return procedureBook.value.some((one) => one.id === id) ? "other-kind" : "gone";
}

/** The procedure a form asks for; the dairy wash where a washed one asks for none of its kind. */
export function chosenProcedure(washed: boolean, id: string): Procedure | undefined {
  const found = proceduresFor(washed).find((one) => one.id === id);
  const usual = washed && misfitOf(washed, id) !== "gone" ? DAIRY_WASH : undefined;
  return found ?? usual;
}

/** Names of the specs that ask for a procedure by its id. */
export const usersOf = (id: string): readonly string[] =>
  specs.value.filter((spec) => spec.procedure?.id === id).map(({ name }) => name);
