import { computed } from "@preact/signals";
import { learntRules } from "../core/logbook/learn/house-learning.ts";
import { declaredCupboard } from "../core/spec/declared.ts";
import { type HouseRules, NEW_HOUSE } from "../core/spec/house-rules.ts";
import type { Tools } from "../core/spec/rounded-plan.ts";
import { cupboard, specBook } from "./pantry.ts";
import { records, settings } from "./state.ts";

/** The cupboard with the allergens and cautions of what the house makes itself. */
export const shelf = computed(() => declaredCupboard(cupboard.value, specBook.value));

const ounce = computed(() => settings.value.ounce);
const learnt = computed(() => learntRules(records.value));

/** What this house's batches are worked out with, its own experience included. */
export const house = computed<HouseRules>(() => ({
  ...NEW_HOUSE,
  ounce: ounce.value,
  learnt: learnt.value,
}));

/** What this house measures with; nothing while amounts are to be exact. */
export const tools = computed<Tools | undefined>(() => {
  const { rounding, jiggerStep, scaleStep } = settings.value;
  if (rounding === "exact") return undefined;
  const weigh = rounding === "scale" ? "masses" : "volumes";
  return { volumeStep: jiggerStep, massStep: scaleStep, weigh };
});
