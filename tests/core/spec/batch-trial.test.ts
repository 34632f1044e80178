import { expect, test } from "vitest";
import { massOf, strengthOf, volumeOf } from "../../../core/liquid/liquid.ts";
import { writtenAmounts } from "../../../core/spec/batch-amounts.ts";
import { pouredShare, trialAt, washedTrial } from "../../../core/spec/batch-trial.ts";
import { NEW_HOUSE } from "../../../core/spec/house-rules.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import {
  cupboardWith,
  fromCupboard,
  lineOf,
  must,
  PUNCH,
  unwashed,
} from "../../support/world/punch-spec.ts";

const writtenOf = (spec: Spec) => must(writtenAmounts(spec, cupboardWith(), "bar"));

// Project's reference notes, rules of thumb: what comes through is punch + milk (1 - 0.055 - 0.35)
// less 20 ml per filter, at ABV x V / (V + 0.945 V_milk).
test("the wash keeps to the rules of thumb for yield and strength", () => {
  const written = writtenOf(PUNCH);
  const scale = 4000 / volumeOf(written.before);
  const { mixed, clear, clearMl, wash } = must(trialAt(PUNCH, written, NEW_HOUSE, scale));
  expect(volumeOf(mixed)).toBeCloseTo(4000, 4);
  expect(wash?.milk).toBeCloseTo(1000, 4);
  const byThumb = 4000 + 1000 * (1 - 0.055 - 0.35) - 2 * 20;
  expect(Math.abs(clearMl / byThumb - 1)).toBeLessThan(0.005);
  const strength = (strengthOf(mixed) * 4000) / (4000 + 0.945 * 1000);
  expect(Math.abs(strengthOf(clear) - strength)).toBeLessThan(0.001);
});

test("masses add up: what is bottled is what came through and what was held back", () => {
  const written = writtenOf(PUNCH);
  const trial = must(trialAt(PUNCH, written, NEW_HOUSE, 30));
  expect(massOf(trial.final)).toBeCloseTo(massOf(trial.clear) + massOf(trial.heldBack), 6);
  expect(trial.heldBackMl).toBeCloseTo(300, 9);
  expect(pouredShare(written, trial, 30)).toBeCloseTo(1, 12);
});

test("nothing is washed without a wash", () => {
  const spec = unwashed();
  const trial = must(trialAt(spec, writtenOf(spec), NEW_HOUSE, 10));
  expect(trial.wash).toBeUndefined();
  expect(trial.clear).toEqual(trial.mixed);
  expect(trial.final).toEqual(trial.mixed);
  const { mixed } = trial;
  const milkless = washedTrial(PUNCH, NEW_HOUSE, mixed, fromCupboard("lemon-juice"), 100);
  expect(milkless.wash).toBeUndefined();
});

// Sugar kept back has no ml of its own; it must not be lost on the way.
test("held-back dry goods reach the bottle without any held-back spirit", () => {
  const lines = [
    lineOf("brandy-40", 40),
    lineOf("lemon-juice", 20),
    lineOf("white-sugar", 10, "g", 1),
  ];
  const spec: Spec = { ...PUNCH, lines };
  const written = writtenOf(spec);
  const trial = must(trialAt(spec, written, NEW_HOUSE, 20));
  expect(trial.heldBack.sugar).toBeCloseTo(200, 9);
  expect(trial.final.sugar - trial.clear.sugar).toBeCloseTo(200, 9);
  expect(pouredShare(written, trial, 20)).toBe(1);
});

test("a target that the held-back spirit cannot reach is refused", () => {
  const spec: Spec = { ...PUNCH, topUp: { rule: "strength", target: 0.5 } };
  expect(trialAt(spec, writtenOf(spec), NEW_HOUSE, 10)).toMatchObject({
    ok: false,
    refusal: "target-above-spirit",
  });
});

// Filters: 20 ml each, common practice, no source.
test("each filter more keeps its 20 ml", () => {
  const through = (filters: number) => {
    const { wash } = PUNCH;
    const spec: Spec = { ...PUNCH, ...(wash && { wash: { ...wash, filters } }) };
    return must(trialAt(spec, writtenOf(spec), NEW_HOUSE, 30)).clearMl;
  };
  expect(through(2) - through(5)).toBeCloseTo(3 * 20, 6);
});

test("a target strength pours what it takes of the held-back spirit, no more and no less", () => {
  const spec: Spec = { ...PUNCH, topUp: { rule: "strength", target: 0.17 } };
  const written = writtenOf(spec);
  const trial = must(trialAt(spec, written, NEW_HOUSE, 30));
  expect(strengthOf(trial.final)).toBeCloseTo(0.17, 9);
  // All of it is brandy, so that what is measured out is what it comes to.
  expect(volumeOf(trial.heldBack)).toBeCloseTo(trial.heldBackMl, 6);
  expect(pouredShare(written, trial, 30)).toBeCloseTo(trial.heldBackMl / 300, 12);
  expect(Math.abs(trial.heldBackMl - 300)).toBeGreaterThan(20);
});
