import { usedIn } from "../../../core/spec/house-made.ts";
import type { Ingredient } from "../../../core/spec/ingredient.ts";
import { genericOf, isGeneric } from "../../pantry.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { ownIngredients, specs } from "../../state.ts";
import { sayLater } from "../../words/say-later.ts";

const words = sayLater.ingredient;

/** Names of the specs that use an ingredient. */
export const specsWith = (id: string): readonly string[] =>
  specs.value.filter((spec) => usedIn(spec).includes(id)).map(({ name }) => name);

/** What the app came with, where the house changed it. */
export function changedGeneric(id: string): Ingredient | undefined {
  const generic = genericOf(id);
  const own = ownIngredients.value.find((one) => one.id === id);
  if (generic === undefined || own === undefined) return undefined;
  return isGeneric(own) ? undefined : generic;
}

interface WayBackProps {
  readonly stored: Ingredient | undefined;
  readonly changed: boolean;
  readonly actions: {
    readonly forget: () => void;
    readonly remove: (one: Ingredient, generic: Ingredient | undefined) => Promise<void>;
  };
}

/** Back to what is stored, back to what the app came with, or out of the cupboard. */
export function WayBack({ stored, changed, actions }: WayBackProps) {
  const generic = stored && changedGeneric(stored.id);
  const kept = stored !== undefined && ownIngredients.value.some(({ id }) => id === stored.id);
  // One that is just as the app came with it has nowhere to go back to.
  const own = kept && (generic !== undefined || genericOf(stored.id) === undefined);
  if (!changed && !own) return null;
  const { hints } = sayLater.spec;
  return (
    <section class="ingredient-section">
      {changed && (
        <HoldButton
          label={words.forget}
          hints={hints}
          tone="plain"
          size="secondary"
          onAct={actions.forget}
        />
      )}
      {own && (
        <HoldButton
          label={generic === undefined ? words.remove : words.backToGeneric}
          detail={generic === undefined ? words.removeDetail : words.backDetail(generic.name)}
          hints={hints}
          tone="plain"
          size="secondary"
          onAct={() => void actions.remove(stored, generic)}
        />
      )}
    </section>
  );
}
