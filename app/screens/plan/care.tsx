import { allergensThrough, cautionsOf, milkStays } from "../../../core/spec/declared.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import { shelf } from "../../house.ts";
import { specBook } from "../../pantry.ts";
import { sayLater } from "../../words/say-later.ts";
import { Section } from "./section.tsx";

const words = sayLater.plan.care;

interface Declared {
  readonly contains: string;
  /** What could not be looked up, by name where it has one. */
  readonly missing: string;
}

function declaredOf(plan: Plan): Declared {
  const ids = plan.ingredients.map(({ id }) => id);
  const { allergens, missing } = allergensThrough(ids, shelf.value, specBook.value);
  const named = allergens.map((one) => sayLater.ingredient.allergen[one].toLowerCase());
  return {
    contains: named.length === 0 ? words.none : words.contains(named.join(", ")),
    missing: missing.map((id) => shelf.value.get(id)?.name ?? id).join(", "),
  };
}

/** Codes of every caution of a plan; a wash leaves milk in the drink. */
function codesOf(plan: Plan): readonly string[] {
  const codes = cautionsOf(plan.ingredients);
  return milkStays(plan) ? ["milk-stays", ...codes] : codes;
}

/** Allergens to declare and what to take care of, each with where it comes from. */
export function Care({ specId, plan }: { readonly specId: string; readonly plan: Plan }) {
  const { contains, missing } = declaredOf(plan);
  const codes = codesOf(plan);
  return (
    <Section
      specId={specId}
      name="care"
      title={words.title}
      says={
        <>
          <b>{contains}</b>
          {codes.length > 0 && `, ${words.cautions(codes.length)}`}
        </>
      }
    >
      {() => (
        <>
          {missing !== "" && <p class="plan-strong">{words.missing(missing)}</p>}
          <ul class="plan-care">
            {codes.map((code) => (
              <li key={code}>
                <p>{sayLater.cautions.full(code)}</p>
                {words.sources[code] !== undefined && (
                  <small>{words.source(words.sources[code])}</small>
                )}
              </li>
            ))}
          </ul>
          <p>{words.fromGarnish}</p>
          <p class="plan-strong">{words.local}</p>
        </>
      )}
    </Section>
  );
}
