/**
 * A mistake a person can make is a value, not an exception. `refusal` is a code that the page
 * turns into a sentence; `about` carries what the sentence needs (what came, what was expected).
 */
export interface Refused<Code extends string> {
  readonly ok: false;
  readonly refusal: Code;
  readonly about: Readonly<Record<string, string | number>>;
}

/** A value that may have been refused. */
export type Result<Value, Code extends string> =
  | { readonly ok: true; readonly value: Value }
  | Refused<Code>;

/** Wraps a value that was accepted. */
export const accepted = <Value>(value: Value): { readonly ok: true; readonly value: Value } => ({
  ok: true,
  value,
});

/** Wraps a refusal with what its sentence needs. */
export const refused = <Code extends string>(
  refusal: Code,
  about: Readonly<Record<string, string | number>> = {},
): Refused<Code> => ({ ok: false, refusal, about });
