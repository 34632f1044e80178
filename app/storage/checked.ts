/** Where in a record it is not as it should be. */
interface Issue {
  readonly path?: readonly PropertyKey[] | undefined;
}

/** A record as it was checked. */
export interface Checked<Value> {
  readonly success: boolean;
  readonly data?: Value | undefined;
  readonly error?: { readonly issues: readonly Issue[] } | undefined;
}
