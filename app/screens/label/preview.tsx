import { PAPERS, type Paper } from "../../../core/label/paper.ts";
import type { CodeRows } from "../../label/code.ts";
import { type Drawn, drawn } from "../../label/drawn.ts";
import { LabelCard } from "../../parts/label-card.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { sayLater } from "../../words/say-later.ts";
import type { Choose } from "./choices.ts";
import type { Wanted } from "./wanted.ts";

/** What a paper is called. */
export const paperName = ({ id }: Paper): string => sayLater.label.papers[id] ?? id;

const areaOf = ({ width, height }: Paper): number => width * height;

/** The papers that all of it fits, the smallest first. */
const thatFit = (wanted: readonly Wanted[], code: CodeRows): readonly Paper[] =>
  PAPERS.filter((paper) => wanted.every(({ content }) => drawn(content, code, paper))).sort(
    (a, b) => areaOf(a) - areaOf(b),
  );

/** Says that it does not fit, and offers the next larger paper of the same kind, and of the other. */
function Larger(props: {
  readonly wanted: readonly Wanted[];
  readonly code: CodeRows;
  readonly paper: Paper;
  readonly choose: Choose;
}) {
  const { wanted, code, paper, choose } = props;
  const words = sayLater.label;
  const fit = thatFit(wanted, code);
  const offered = [
    fit.find(({ sheet }) => (sheet === undefined) === (paper.sheet === undefined)),
    fit.find(({ sheet }) => (sheet === undefined) !== (paper.sheet === undefined)),
  ];
  return (
    <div class="label-one">
      <p role="alert" class="label-planned">
        {fit.length === 0 ? words.noneFits : words.tooSmall(paperName(paper))}
      </p>
      {offered.map(
        (one) =>
          one && (
            <TapButton key={one.id} onAct={() => choose({ labelPaper: one.id })}>
              {words.takeLarger(paperName(one))}
            </TapButton>
          ),
      )}
    </div>
  );
}

/** What was left off, in its own words. */
function leftWords({ content }: Wanted, { layout }: Drawn): readonly string[] {
  const parts = content.parts.filter(({ key }) => layout.left.includes(key));
  const said = parts.map(({ lead, text }) => (lead === undefined ? text : `${lead} ${text}`));
  return layout.coded ? said : [sayLater.label.code, ...said];
}

/** The labels as they print, or why they do not. */
export function Preview(props: {
  readonly wanted: readonly Wanted[];
  readonly labels: readonly (Drawn | undefined)[];
  readonly name: string;
  readonly code: CodeRows;
  readonly paper: Paper;
  readonly choose: Choose;
}) {
  const { wanted, labels, name, code, paper, choose } = props;
  const words = sayLater.label;
  if (labels.includes(undefined))
    return <Larger wanted={wanted} code={code} paper={paper} choose={choose} />;
  return (
    <>
      {wanted.map((one, index) => {
        const label = labels[index];
        if (label === undefined) return null;
        const left = leftWords(one, label);
        return (
          <div class="label-one" key={one.title}>
            {one.title !== "" && <p class="label-copies">{one.title}</p>}
            <LabelCard label={label} name={name} />
            {left.length > 0 && <p class="soft">{words.leftOut(left)}</p>}
            {label.layout.coded && <p class="soft">{words.codeNote}</p>}
          </div>
        );
      })}
    </>
  );
}
