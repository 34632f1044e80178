import { ACID_NAMES, type AcidMasses, type AcidName, totalAcid } from "../quantity/acid-name.ts";
import { requireWithin } from "../quantity/require-within.ts";
import { accepted, type Result, refused } from "../quantity/result.ts";

/** Room that dissolved acid takes, ml per g: 0.595 to 0.600 over 2 to 30 wt% citric acid. */
const ROOM_OF_ACID = 0.598;
/** More than would dissolve and be drunk, g/L. */
const MOST_ACID = 500;

/**
 * What bars aim at when they sour a sweet juice, g/L: common practice, from memory, no source. It is
 * rounder and sharper than the measured juices (citric acid of lemon 48 g/L, of lime 46 g/L:
 * Penniston et al., J. Endourology 2008).
 */
export const ACID_TARGETS = {
  lemon: { citric: 60 },
  lime: { citric: 40, malic: 20 },
} as const;

/** What to weigh in, and what it makes. */
export interface AcidAddition {
  /** g of each acid per litre of juice as it stands. */
  readonly acids: AcidMasses;
  /** Litres made of one litre of juice. */
  readonly litres: number;
}

/**
 * Acid that brings a juice to another's acidity.
 *
 * @param current - what the juice has, g/L of each
 * @param target - what it is to have, g/L of each; an acid not named here is left as it is
 * @returns g of each acid to add per litre of juice, or a refusal naming the first acid it already has
 * too much of
 * @throws RangeError when a concentration is negative, not a number, or together over 500 g/L
 * @source mass balance with the room the acid takes, 0.598 ml/g: CRC Handbook, 102nd ed., densities of
 * citric acid solutions at 20 degrees C
 * @limits malic and tartaric acid are given citric acid's room. Practice leaves the room out and so
 * weighs 3 to 4 % less: orange to lime 32 + 20 g, grapefruit to lime 27 + 13 g, orange to lemon 52 g
 * @example
 * acidToAdd({ citric: 8 }, { citric: 60 }).value.acids.citric // => 53.9 ± 0.1
 */
export function acidToAdd(
  current: AcidMasses,
  target: AcidMasses,
): Result<AcidAddition, "already-more-acid"> {
  requireWithin(totalAcid(target), 0, MOST_ACID, "the acids aimed at, together, in g/L");
  const named = ACID_NAMES.filter((name) => target[name] !== undefined);
  for (const name of named) {
    requireWithin(target[name] ?? 0, 0, MOST_ACID, `${name} acid aimed at, in g/L`);
    requireWithin(current[name] ?? 0, 0, MOST_ACID, `${name} acid of the juice, in g/L`);
  }
  const over = named.find((name) => (current[name] ?? 0) > (target[name] ?? 0));
  if (over !== undefined) {
    return refused("already-more-acid", {
      acid: over,
      has: current[over] ?? 0,
      target: target[over] ?? 0,
    });
  }
  const has = named.reduce((sum, name) => sum + (current[name] ?? 0), 0);
  const aim = totalAcid(target);
  // Added acid X makes 1 + room X litres, all of which must hold the target: solved for X.
  const litres = 1 + (ROOM_OF_ACID / 1000) * ((aim - has) / (1 - (ROOM_OF_ACID / 1000) * aim));
  const acids: Partial<Record<AcidName, number>> = {};
  for (const name of named) {
    acids[name] = (target[name] ?? 0) * litres - (current[name] ?? 0);
  }
  return accepted({ acids, litres });
}
