import { TimeField } from "../../parts/time-field.tsx";
import { typedNumber } from "../../parts/typed-number.ts";
import { settings } from "../../state.ts";
import { typed } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { Fault, Typed, useChoice } from "./choices.tsx";

const MOST_PEOPLE = 20;
const MOST_STANDS = 50;
const MOST_LITRES = 100_000;

/** What the house has only so much of: the prep list is planned within it. */
export function Room() {
  const { fault, choose } = useChoice();
  const { people, filterStands, fridge, freezer, hours } = settings.value;
  const words = sayLater.kit.room;
  const figure = (
    what: "people" | "filterStands" | "fridge" | "freezer",
    value: number,
    low: number,
    high: number,
  ) => (
    <Typed
      key={what}
      label={words.labels[what]}
      hint={words.hints[what]}
      fault={words.fault(low, high)}
      start={typed(value)}
      onType={(text) => {
        const whole = what === "people" || what === "filterStands";
        const next = typedNumber(text, { low, high, whole, units: ["l"] });
        if (next !== undefined) void choose({ [what]: next });
        return next !== undefined;
      }}
    />
  );
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <p class="soft">{words.why}</p>
      {figure("people", people, 1, MOST_PEOPLE)}
      {figure("filterStands", filterStands, 1, MOST_STANDS)}
      {figure("fridge", fridge, 0, MOST_LITRES)}
      {figure("freezer", freezer, 0, MOST_LITRES)}
      <TimeField
        label={words.from}
        value={hours.from}
        onChange={(from) => void choose({ hours: { ...hours, from } })}
      />
      <TimeField
        label={words.to}
        value={hours.to}
        onChange={(to) => void choose({ hours: { ...hours, to } })}
      />
      <p class="soft">{words.hoursNote}</p>
      <Fault fault={fault} />
    </section>
  );
}
