import { answers as english } from "./en/why.ts";
import type { Spoken } from "./spoken.ts";
import { live } from "./tongue.ts";

/** The answers to the questions of `sayLater.why`: fetched when the first of them is asked. */
export const answers: Spoken<typeof english> = live("answers", english);
