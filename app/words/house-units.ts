import { signal } from "@preact/signals";
import { fahrenheitStep, toCelsius, toFahrenheit } from "../../core/quantity/fahrenheit.ts";
import { type UnitsInUse, unitsWhere } from "../../core/quantity/region-units.ts";

/** What a house may choose for volumes; `auto` for what is used where the phone is. */
export type VolumeChoice = "auto" | UnitsInUse["volumes"];
/** What it may choose for temperatures. */
export type DegreeChoice = "auto" | UnitsInUse["degrees"];

/** What temperatures are told in; catalogues read it too, so it is no part of a style. */
export const degreesChosen = signal<DegreeChoice>("C");

let asked: readonly string[] | undefined;
let here: UnitsInUse = { volumes: "ml", degrees: "C" };

/** The units of the phone's own country. */
function unitsHere(): UnitsInUse {
  const tags = navigator.languages;
  if (tags !== asked) here = unitsWhere(tags);
  asked = tags;
  return here;
}

/** The unit that volumes are shown and typed in. */
export const volumeUnit = (choice: VolumeChoice): UnitsInUse["volumes"] =>
  choice === "auto" ? unitsHere().volumes : choice;

/** The unit that temperatures are shown and typed in. */
export const degreeUnit = (choice: DegreeChoice = degreesChosen.value): UnitsInUse["degrees"] =>
  choice === "auto" ? unitsHere().degrees : choice;

const isF = (): boolean => degreeUnit() === "F";

/** Degrees C in the house's unit. */
export const inHouse = (celsius: number): number => (isF() ? toFahrenheit(celsius) : celsius);

/** Degrees C of a figure in the house's unit. */
export const fromHouse = (figure: number): number => (isF() ? toCelsius(figure) : figure);

/** A difference, K, in the house's unit. */
export const stepInHouse = (kelvins: number): number => (isF() ? fahrenheitStep(kelvins) : kelvins);

/** The sign of the house's unit. */
export const degreeSign = (): string => (isF() ? "°F" : "°C");
