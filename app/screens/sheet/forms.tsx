import { useState } from "preact/hooks";
import { useByOf } from "../../../core/label/use-by.ts";
import { refusedFigure, SCALES } from "../../../core/run/answer.ts";
import type { Command } from "../../../core/run/command.ts";
import { openVisit, type Run } from "../../../core/run/run.ts";
import { noted } from "../../noted.ts";
import { Field } from "../../parts/field.tsx";
import { SelectField } from "../../parts/select-field.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { typedNumber } from "../../parts/typed-number.ts";
import { now } from "../../state.ts";
import { sayLater } from "../../words/say-later.ts";
import { celsiusIn } from "../../words/typed-in.ts";

interface FormProps {
  readonly run: Run;
}

const words = sayLater.sheet;

/** Stores an order; the sentence when it was refused. */
const store = (runId: string, command: Command) => noted(runId, command, words.noted);

/** Degrees C, as far as a thermometer goes. */
const temperatureOf = (text: string): number | undefined => {
  const celsius = celsiusIn(text);
  const shows = celsius !== undefined && refusedFigure("temperature", celsius) === undefined;
  return shows ? celsius : undefined;
};

/** The temperature of the liquid, now. */
export function NoteTemperature({ run }: FormProps) {
  const [text, setText] = useState("");
  const [fault, setFault] = useState<string | undefined>(undefined);
  const note = async () => {
    const value = temperatureOf(text);
    const visit = openVisit(run)?.key;
    if (value === undefined || visit === undefined) {
      const { low, high } = SCALES.temperature;
      return setFault(words.temperatureFault(low, high));
    }
    const refused = await store(run.id, {
      type: "log-reading",
      visit,
      what: "temperature",
      value,
      unit: "degC",
    });
    setFault(refused);
    if (refused === undefined) setText("");
  };
  return (
    <section class="part">
      <Field
        label={words.addTemperature}
        value={text}
        keyboard="decimal"
        narrow
        insist
        fault={fault}
        onInput={(typed) => {
          setText(typed);
          setFault(undefined);
        }}
      />
      <TapButton onAct={() => void note()}>{words.noteTemperature}</TapButton>
    </section>
  );
}

/** From which lot an ingredient came. */
export function NoteLot({ run }: FormProps) {
  const [ingredient, setIngredient] = useState(run.plan.ingredients.at(-1)?.id ?? "");
  const [lot, setLot] = useState("");
  const [days, setDays] = useState("");
  const [fault, setFault] = useState<string | undefined>(undefined);
  const until = typedNumber(days, { low: 0, high: 3650, whole: true });
  const wrongDays = days.trim() !== "" && until === undefined;
  const note = async () => {
    if (lot.trim() === "") return setFault(words.lotFault);
    if (wrongDays) return;
    // The day itself still counts: it ends with the day.
    const useBy = until === undefined ? {} : { useBy: useByOf(now.value, until + 1) };
    const refused = await store(run.id, {
      type: "note-lot",
      ingredient,
      lot: lot.trim(),
      ...useBy,
    });
    setFault(refused);
    if (refused !== undefined) return;
    setLot("");
    setDays("");
  };
  return (
    <section class="part">
      <SelectField
        label={words.lotOf}
        choices={run.plan.ingredients.map(({ id, name }) => ({ value: id, label: name }))}
        value={ingredient}
        onChange={setIngredient}
      />
      <Field
        label={words.addLot}
        value={lot}
        longest={60}
        insist
        fault={fault}
        onInput={(text) => {
          setLot(text);
          setFault(undefined);
        }}
      />
      <Field
        label={words.lotDate}
        value={days}
        hint={words.lotDateHint}
        keyboard="numeric"
        narrow
        insist
        fault={wrongDays ? words.lotDateFault : undefined}
        onInput={setDays}
      />
      <TapButton onAct={() => void note()}>{words.noteLot}</TapButton>
    </section>
  );
}

/** Whose hands the batch is in from now on. */
export function NoteHands({ run }: FormProps) {
  const [text, setText] = useState("");
  const [fault, setFault] = useState<string | undefined>(undefined);
  const note = async () => {
    const initials = text.trim();
    if (!/^\p{L}{1,8}$/u.test(initials)) return setFault(words.handsFault);
    const refused = await store(run.id, { type: "change-hands", initials });
    setFault(refused);
    if (refused === undefined) setText("");
  };
  return (
    <section class="part">
      <Field
        label={words.addHands}
        value={text}
        longest={8}
        narrow
        insist
        fault={fault}
        onInput={(typed) => {
          setText(typed);
          setFault(undefined);
        }}
      />
      <TapButton onAct={() => void note()}>{words.noteHands}</TapButton>
    </section>
  );
}
