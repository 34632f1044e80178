import { type Liquid, NOTHING, strengthOf, volumeOf } from "../liquid/liquid.ts";
import { mix, portion } from "../liquid/mixing.ts";
import { accepted, type Result, refused } from "../quantity/result.ts";
import type { Absorption } from "./absorption-table.ts";

/** Something that lies in a liquid and is strained out of it. */
export interface Steeped {
  readonly g: number;
  /** Liquid it keeps, ml per g. */
  readonly absorbs: Absorption;
  /** Water it gives, g per g; none for what is dry. */
  readonly waterShare?: number;
}

/** An infusion after it was strained. */
export interface Infusion {
  readonly liquid: Liquid;
  /** ml */
  readonly volume: number;
  /** Where the botanicals keep the most and the least that was seen, ml. */
  readonly low: number;
  readonly high: number;
  /** v/v */
  readonly strength: number;
  /** ml that the botanicals keep. */
  readonly kept: number;
}

/** Why nothing can be strained. */
export type StrainRefusal = "botanicals-keep-all";

/** A smaller share than this left over is rounding, not a drink. */
const LEAST_LEFT = 1e-6;

/**
 * A liquid without what its botanicals keep: they keep it at the strength it has by then.
 *
 * @param liquid - with all that went into it
 * @param kept - ml that the botanicals keep, together
 * @returns what runs off, or a refusal where there is nothing left to run off
 * @source mass balance; dry botanicals leave the strength as it is
 */
export function strained(liquid: Liquid, kept: number): Result<Liquid, StrainRefusal> {
  if (kept === 0) return accepted(liquid);
  const volume = volumeOf(liquid);
  if (!(volume - kept > LEAST_LEFT * volume))
    return refused("botanicals-keep-all", { kept, volume });
  return accepted(portion(liquid, volume - kept));
}

/**
 * What is left of an infusion once it is strained, and how strong it is. Dry botanicals take spirit
 * with them; wet fruit gives its water first and so dilutes.
 *
 * @param spirit - what it steeps in
 * @param botanicals - what steeps, with what each keeps and gives
 * @returns the infusion with the range of its volume, or a refusal where the botanicals keep all of it
 * @source mass balance at equilibrium, contraction as `volumeOf`; ml per g as in `absorption-table.ts`
 * @limits long enough for fruit to come to one strength with its spirit; flavour, colour and sugar
 * that go over are left out. Fresh produce in weak spirit can spoil: from 30 % vol up it is reported
 * to be held in check (2022, abstract); the local code decides
 * @public checked against a worked example; plans strain by the same rule
 */
export function infusionLeft(
  spirit: Liquid,
  botanicals: readonly Steeped[],
): Result<Infusion, StrainRefusal> {
  const water = botanicals.reduce((sum, { g, waterShare = 0 }) => sum + g * waterShare, 0);
  const whole = mix([spirit, { ...NOTHING, water }]);
  const kept = (of: keyof Absorption): number =>
    botanicals.reduce((sum, { g, absorbs }) => sum + g * absorbs[of], 0);
  const left = strained(whole, kept("usual"));
  if (!left.ok) return left;
  const volume = volumeOf(whole);
  return accepted({
    liquid: left.value,
    volume: volumeOf(left.value),
    low: Math.max(0, volume - kept("high")),
    high: volume - kept("low"),
    strength: strengthOf(left.value),
    kept: kept("usual"),
  });
}
