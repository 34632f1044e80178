import { useEffect, useState } from "preact/hooks";
import { REPEATS, VERDICTS } from "../../../core/run/taste.ts";
import { atDesk } from "../../desk.ts";
import { Chips } from "../../parts/chips.tsx";
import { SelectField } from "../../parts/select-field.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { TimeField } from "../../parts/time-field.tsx";
import { sayLater } from "../../words/say-later.ts";
import { ANYTHING, type Asked, ask, asked, ended, facets, typed } from "./asked.ts";

const ANY = "any";
const BANDS = ["low", "near", "high"] as const;

interface OneOfProps<Value extends string> {
  readonly label: string;
  readonly options: readonly Value[];
  readonly names: Readonly<Record<Value, string>>;
  readonly value: Value | undefined;
  readonly onChange: (value: Value | undefined) => void;
}

/** One of a few, or any. */
function OneOf<Value extends string>(props: OneOfProps<Value>) {
  const { label, options, names, value, onChange } = props;
  return (
    <Chips<Value | typeof ANY>
      label={label}
      options={[
        { value: ANY, label: sayLater.logbook.find.any },
        ...options.map((one) => ({ value: one, label: names[one] })),
      ]}
      value={value ?? ANY}
      onChange={(next) => onChange(next === ANY ? undefined : next)}
    />
  );
}

interface PickProps {
  readonly label: string;
  readonly choices: readonly { readonly value: string; readonly label: string }[];
  readonly value: string | undefined;
  readonly onChange: (value: string | undefined) => void;
}

/** One of many, or any. */
function Pick({ label, choices, value = "", onChange }: PickProps) {
  if (choices.length === 0) return null;
  return (
    <SelectField
      label={label}
      choices={[{ value: "", label: sayLater.logbook.find.any }, ...choices]}
      value={value}
      onChange={(next) => onChange(next === "" ? undefined : next)}
    />
  );
}

const named = (names: readonly string[]) => names.map((value) => ({ value, label: value }));
const dated = (date: string): string | undefined => (date === "" ? undefined : date);

/** Of which spec, with what in it, and what it was tagged. */
function Which() {
  const words = sayLater.logbook.find;
  const { specs, ingredients, tags } = facets.value;
  const { specId, ingredient, tag } = asked.value;
  return (
    <>
      <Pick
        label={words.spec}
        choices={specs.map(({ id, name }) => ({ value: id, label: name }))}
        value={specId}
        onChange={(next) => ask({ specId: next })}
      />
      <Pick
        label={words.ingredient}
        choices={named(ingredients)}
        value={ingredient}
        onChange={(next) => ask({ ingredient: next })}
      />
      <Pick
        label={words.tag}
        choices={named(tags)}
        value={tag}
        onChange={(next) => ask({ tag: next })}
      />
    </>
  );
}

/** From when to when. */
function When() {
  const words = sayLater.logbook.find;
  const { from = "", to = "" } = asked.value;
  return (
    <div class="logbook-dates">
      <TimeField
        label={words.from}
        kind="date"
        value={from}
        onChange={(next) => ask({ from: dated(next) })}
      />
      <TimeField
        label={words.to}
        kind="date"
        value={to}
        onChange={(next) => ask({ to: dated(next) })}
      />
    </div>
  );
}

function Verdicts() {
  return (
    <OneOf
      label={sayLater.logbook.find.verdict}
      options={VERDICTS}
      names={sayLater.tasting.verdicts}
      value={asked.value.verdict}
      onChange={(next) => ask({ verdict: next })}
    />
  );
}

function Repeats() {
  return (
    <OneOf
      label={sayLater.logbook.find.repeat}
      options={REPEATS}
      names={sayLater.tasting.verdict.repeat}
      value={asked.value.repeat}
      onChange={(next) => ask({ repeat: next })}
    />
  );
}

function Yields() {
  const words = sayLater.logbook.find;
  return (
    <OneOf
      label={words.yielded}
      options={BANDS}
      names={words.bands}
      value={asked.value.yielded}
      onChange={(next) => ask({ yielded: next })}
    />
  );
}

const PARTS = [Which, When, Verdicts, Repeats, Yields] as const;

/** All that batches can be told apart by; drawn part by part, so that a slow phone stays awake. */
export function Filters() {
  const [drawn, setDrawn] = useState(1);
  useEffect(() => {
    if (drawn >= PARTS.length) return;
    return atDesk().clock.after(0, () => setDrawn(drawn + 1));
  }, [drawn]);
  return (
    <section class="logbook-filters" aria-label={sayLater.logbook.find.filters}>
      {PARTS.slice(0, drawn).map((Part) => (
        <Part key={PARTS.indexOf(Part)} />
      ))}
    </section>
  );
}

/** A filter in words, or nothing where it does not stand. */
function standing(key: keyof Asked, value: string): string | undefined {
  const words = sayLater.logbook.find;
  const { verdict, repeat, yielded, specId } = asked.value;
  switch (key) {
    case "text":
      return value.trim() === "" ? undefined : words.quoted(value.trim());
    case "specId":
      return ended.value.find((one) => one.specId === specId)?.name ?? value;
    case "verdict":
      return verdict && sayLater.tasting.verdicts[verdict];
    case "repeat":
      return repeat && sayLater.tasting.repeats[repeat];
    case "yielded":
      return yielded && words.bands[yielded];
    case "from":
      return words.fromDate(value);
    case "to":
      return words.toDate(value);
    case "ingredient":
    case "tag":
      return value;
  }
}

const KEYS = [
  "text",
  "specId",
  "ingredient",
  "tag",
  "from",
  "to",
  "verdict",
  "repeat",
  "yielded",
] as const;

/** The filters that stand, each a tap away from being gone. */
export function Standing() {
  const words = sayLater.logbook.find;
  const all = KEYS.flatMap((key) => {
    const value = asked.value[key];
    const label = value === undefined ? undefined : standing(key, value);
    return label === undefined ? [] : [{ key, label }];
  });
  if (all.length === 0) return null;
  return (
    <div class="logbook-standing">
      {all.map(({ key, label }) => (
        <TapButton
          key={key}
          name={words.without(label)}
          onAct={() => {
            if (key === "text") typed.value = "";
            ask({ [key]: key === "text" ? "" : undefined });
          }}
        >
          {label} ×
        </TapButton>
      ))}
      {all.length > 1 && (
        <TapButton
          tone="quiet"
          onAct={() => {
            typed.value = "";
            asked.value = ANYTHING;
          }}
        >
          {words.clear}
        </TapButton>
      )}
    </div>
  );
}
