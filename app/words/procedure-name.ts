import type { Procedure } from "../../core/method/procedure.ts";
import { sayLater } from "./say-later.ts";

/** What a procedure is called: the house's own name for it, else the catalogue's. */
export function procedureName({ id, name }: Pick<Procedure, "id" | "name">): string {
  const names: Readonly<Record<string, string>> = sayLater.spec.making.names;
  return name ?? names[id] ?? id;
}
