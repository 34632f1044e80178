import { everyAnswerLed } from "../../../core/method/edit-procedure.ts";
import { ANSWERS, type Outcome, type Step } from "../../../core/method/procedure.ts";
import { SelectField } from "../../parts/select-field.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { sayLater } from "../../words/say-later.ts";
import { nameOfStep } from "./draft.ts";
import type { StepFormProps } from "./form.ts";

const words = sayLater.procedure;

type Branch = Step["branches"][number];

const roundOf = ({ fromRound = 1 }: Branch): number => fromRound;

/** Rounds that can be chosen; one that came from a file stays choosable. */
const roundsFor = (branch: Branch): readonly string[] =>
  [...new Set([2, 3, 4, 5, 6, roundOf(branch)])].map(String);

interface LaterProps {
  readonly branch: Branch;
  readonly answers: readonly Outcome[];
  readonly goals: readonly { readonly value: string; readonly label: string }[];
  readonly onChange: (next: Branch | undefined) => void;
}

/** A way that an answer takes only after so many rounds. */
function LaterWay({ branch, answers, goals, onChange }: LaterProps) {
  const answer = words.answers[branch.on];
  return (
    <fieldset class="procedure-way">
      <legend>{words.laterWay(answer, roundOf(branch))}</legend>
      <SelectField
        label={words.wayAnswer}
        choices={answers.map((value) => ({ value, label: words.answers[value] }))}
        value={branch.on}
        onChange={(on) => onChange({ ...branch, on })}
      />
      <SelectField
        label={words.wayRound}
        choices={roundsFor(branch).map((value) => ({ value, label: value }))}
        value={String(roundOf(branch))}
        onChange={(round) => onChange({ ...branch, fromRound: Number(round) })}
      />
      <SelectField
        label={words.wayTo}
        choices={goals}
        value={branch.to}
        onChange={(to) => onChange({ ...branch, to })}
      />
      <TapButton
        size="least"
        name={words.wayRemoveName(answer, roundOf(branch))}
        onAct={() => onChange(undefined)}
      >
        {words.wayRemove}
      </TapButton>
    </fieldset>
  );
}

/** Where each answer leads, at first and from a later round on. */
function AnswerWays({ draft, step, onChange }: StepFormProps) {
  const answers: readonly Outcome[] = step.asks === undefined ? [] : ANSWERS[step.asks];
  const goals = draft.procedure.steps.map((one) => ({ value: one.id, label: nameOfStep(one) }));
  const usual = { value: "", label: words.wayUsual };
  const first = step.branches.filter((one) => roundOf(one) === 1);
  const later = step.branches.filter((one) => roundOf(one) > 1);
  const set = (branches: readonly Branch[]) => onChange({ branches: [...branches] });
  const lead = (on: Outcome, to: string) => {
    const rest = first.filter((one) => one.on !== on);
    set([...rest, ...(to === "" ? [] : [{ on, to }]), ...later]);
  };
  const [likely] = answers;
  return (
    <>
      {answers.map((on) => (
        <SelectField
          key={on}
          label={words.leads(words.answers[on])}
          choices={[usual, ...goals]}
          value={first.find((one) => one.on === on)?.to ?? ""}
          onChange={(to) => lead(on, to)}
        />
      ))}
      {later.map((branch, at) => (
        <LaterWay
          key={at}
          branch={branch}
          answers={answers}
          goals={goals}
          onChange={(next) => set([...first, ...later.toSpliced(at, 1, ...(next ? [next] : []))])}
        />
      ))}
      {likely !== undefined && (
        <TapButton
          size="least"
          tone="quiet"
          onAct={() => set([...first, ...later, { on: likely, to: step.id, fromRound: 2 }])}
        >
          {words.wayAdd}
        </TapButton>
      )}
    </>
  );
}

type Asked = "" | "look" | "taste";

/** What a watched wait asks, and where it goes on. */
export function WaysForm(props: StepFormProps) {
  const { draft, step, onChange } = props;
  const { steps } = draft.procedure;
  const choices = [
    { value: "", label: words.nextUsual },
    ...steps
      .filter(({ id }) => id !== step.id)
      .map((one) => ({ value: one.id, label: nameOfStep(one) })),
  ];
  return (
    <>
      {step.kind === "watched-wait" && (
        <SelectField<Asked>
          label={words.asks}
          choices={(["", "look", "taste"] as const).map((value) => ({
            value,
            label: words.asked[value],
          }))}
          value={step.asks === "look" || step.asks === "taste" ? step.asks : ""}
          onChange={(asks) => onChange({ asks: asks === "" ? undefined : asks, branches: [] })}
        />
      )}
      <AnswerWays {...props} />
      {!everyAnswerLed(step) && (
        <SelectField
          label={step.asks === undefined ? words.next : words.nextOther}
          choices={choices}
          value={step.next ?? ""}
          onChange={(to) => onChange({ next: to === "" ? undefined : to })}
        />
      )}
    </>
  );
}
