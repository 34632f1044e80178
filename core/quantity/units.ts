/**
 * Branded quantities: one unit per quantity inside the core. Other units live in
 * `measures.ts` (what people type) and in the page's formatting.
 */
declare const brand: unique symbol;
type Quantity<Unit extends string> = number & { readonly [brand]: Unit };

/** Volume at 20 degrees C unless a name says otherwise, ml. */
export type Millilitres = Quantity<"ml">;
/** Mass, g. */
export type Grams = Quantity<"g">;
/** Alcoholic strength by volume at 20 degrees C, 0 to 1 (0.42 is 42 % ABV). */
export type Strength = Quantity<"v/v">;
/** A share or mass fraction, 0 to 1. */
export type Fraction = Quantity<"fraction">;
/** Temperature, degrees C. */
export type Celsius = Quantity<"degC">;
/** A moment, milliseconds since 1970-01-01 UTC. */
export type Instant = Quantity<"epoch ms">;
/** A length of time, ms. */
export type Milliseconds = Quantity<"ms">;
/** Concentration, g per litre at 20 degrees C. */
export type GramsPerLitre = Quantity<"g/L">;

function finite(value: number, what: string): number {
  if (!Number.isFinite(value))
    throw new RangeError(`${what} must be a finite number, got ${value}`);
  return value;
}

function within(value: number, low: number, high: number, what: string): number {
  if (!(value >= low && value <= high)) {
    throw new RangeError(`${what} must lie between ${low} and ${high}, got ${value}`);
  }
  return value;
}

/** @throws RangeError when negative or not finite */
export const ml = (value: number): Millilitres =>
  within(finite(value, "a volume"), 0, Number.MAX_VALUE, "a volume in ml") as Millilitres;

/** @throws RangeError when negative or not finite */
export const grams = (value: number): Grams =>
  within(finite(value, "a mass"), 0, Number.MAX_VALUE, "a mass in g") as Grams;

/** @throws RangeError outside 0 to 1 */
export const strength = (value: number): Strength =>
  within(value, 0, 1, "a strength (0 to 1)") as Strength;

/** @throws RangeError outside 0 to 1 */
export const fraction = (value: number): Fraction =>
  within(value, 0, 1, "a fraction (0 to 1)") as Fraction;

/** @throws RangeError below absolute zero or above 1000 degrees */
export const celsius = (value: number): Celsius =>
  within(value, -273.15, 1000, "a temperature in degrees C") as Celsius;

/** @throws RangeError when not finite */
export const instant = (value: number): Instant => finite(value, "a moment") as Instant;

/** @throws RangeError when not finite */
export const milliseconds = (value: number): Milliseconds =>
  finite(value, "a length of time") as Milliseconds;

/** @throws RangeError when negative or not finite */
export const gramsPerLitre = (value: number): GramsPerLitre =>
  within(
    finite(value, "a concentration"),
    0,
    Number.MAX_VALUE,
    "a concentration in g/L",
  ) as GramsPerLitre;
