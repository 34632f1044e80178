import { labelsOn, type Paper } from "../../../core/label/paper.ts";
import { Chips } from "../../parts/chips.tsx";
import { Stepper } from "../../parts/stepper.tsx";
import { sayLater } from "../../words/say-later.ts";
import type { Choices, Choose } from "./choices.ts";

const MOST = 100;

/** How many are printed, and where on its sheet the first one stands. */
export function Copies(props: {
  readonly paper: Paper;
  readonly chosen: Choices;
  readonly choose: Choose;
}) {
  const words = sayLater.label;
  const { paper, choose } = props;
  const { labelCopies, labelFrom } = props.chosen;
  const all = labelsOn(paper);
  const from = Math.min(labelFrom, all);
  const count = (to: number) => choose({ labelCopies: to });
  const start = (to: number) => choose({ labelFrom: to });
  return (
    <>
      <Chips
        label={words.howMany}
        options={[
          { value: "each", label: words.copiesEach },
          { value: "number", label: words.copiesNumber },
        ]}
        value={labelCopies === 0 ? "each" : "number"}
        onChange={(value) => count(value === "each" ? 0 : 1)}
      />
      {labelCopies > 0 && (
        <Stepper
          label={words.number}
          shown={String(labelCopies)}
          lessName={words.fewer}
          moreName={words.more}
          atLeast={labelCopies <= 1}
          atMost={labelCopies >= MOST}
          onLess={() => count(labelCopies - 1)}
          onMore={() => count(labelCopies + 1)}
        />
      )}
      {all > 1 && (
        <Stepper
          label={words.from}
          shown={words.fromShown(from, all)}
          lessName={words.earlier}
          moreName={words.later}
          atLeast={from <= 1}
          atMost={from >= all}
          onLess={() => start(from - 1)}
          onMore={() => start(from + 1)}
        />
      )}
    </>
  );
}
