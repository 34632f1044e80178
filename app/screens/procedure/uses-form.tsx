import { isWait, type Step } from "../../../core/method/procedure.ts";
import { Stepper } from "../../parts/stepper.tsx";
import { sayLater } from "../../words/say-later.ts";
import type { StepFormProps } from "./form.ts";

const words = sayLater.procedure;

/** What can be said here; room in the fridge and freezer follows from where the vessel stands. */
const COUNTED = ["person", "filter-stand", "blender", "burner"] as const;
const MOST = 9;

type Counted = (typeof COUNTED)[number];

/** A step done by hand takes one person unless it says otherwise. */
const usually = (step: Step, resource: Counted): number =>
  resource === "person" && !isWait(step) ? 1 : 0;

/** What the step keeps others from using, and how many of it. */
export function UsesForm({ step, onChange }: StepFormProps) {
  const uses = step.uses ?? [];
  const set = (resource: Counted, amount: number) => {
    const rest = uses.filter((one) => one.resource !== resource);
    const said = amount === usually(step, resource) ? rest : [...rest, { resource, amount }];
    onChange({ uses: said.length === 0 ? undefined : said });
  };
  return (
    <fieldset class="procedure-uses">
      <legend>{words.uses}</legend>
      {COUNTED.map((resource) => {
        const least = usually(step, resource);
        const amount = uses.find((one) => one.resource === resource)?.amount ?? least;
        const name = words.resources[resource];
        return (
          <Stepper
            key={resource}
            label={name}
            shown={amount === 0 ? words.usesNone : String(amount)}
            lessName={words.fewer(name)}
            moreName={words.moreOf(name)}
            atLeast={amount <= least}
            atMost={amount >= MOST}
            onLess={() => set(resource, amount - 1)}
            onMore={() => set(resource, amount + 1)}
          />
        );
      })}
    </fieldset>
  );
}
