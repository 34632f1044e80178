import { settings } from "../../state.ts";
import { volume } from "../../words/format.ts";

/** A volume as this house shows it. */
export const show = (ml: number): string => volume(ml, settings.value);

/** A name in which no line end parts a figure from its unit: "Gin 43 %". */
export const bound = (name: string): string => name.replaceAll(/(?<=\d) (?=%)/gu, "\u00a0");
