import { routes } from "./routes.ts";

/** An ingredient to be made on the way to somewhere else. It travels in the address: a reload keeps it. */
export interface Errand {
  /** The id it will have, so that whoever waits for it knows it. */
  readonly ingredientId: string;
  /** Whose line it is for; empty when it is for the cupboard itself. */
  readonly specKey: string;
  /** Its name, as typed so far. */
  readonly name: string;
}

/** The address of the form that does an errand. */
export const errandAddress = ({ ingredientId, specKey, name }: Errand): string =>
  routes.ingredient(`new~${ingredientId}~${specKey}~${name.slice(0, 80)}`);

/** Reads an errand back from the form's id. */
export function errandOf(id: string): Errand | undefined {
  const found = /^new~([^~]+)~([^~]*)~(.*)$/su.exec(id);
  if (found === null) return undefined;
  const [, ingredientId = "", specKey = "", name = ""] = found;
  return { ingredientId, specKey, name };
}
