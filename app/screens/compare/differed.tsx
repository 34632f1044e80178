import type { Difference, Differences } from "../../../core/logbook/compare/differences.ts";
import type { InputName, ResultName } from "../../../core/logbook/compare/inputs.ts";
import { SideRow } from "../../parts/sides.tsx";
import { figureIn, kindIn } from "../../words/compared.ts";
import { decimals } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";

interface RowProps {
  readonly name: string;
  /** One for each side; nothing where it was not noted. */
  readonly texts: readonly (string | undefined)[];
  readonly size?: string;
}

/** One thing that differed, and by how much where that is a figure. */
function Row({ name, texts, size }: RowProps) {
  return (
    <SideRow name={name} texts={texts} absent={sayLater.compare.notNoted}>
      {size !== undefined && <p class="soft-small">{size}</p>}
    </SideRow>
  );
}

/** A figure in the usual gap's units. */
const times = (size: number): string => decimals(size, size < 10 ? 1 : 0);

function Figures<Name extends InputName | ResultName>(props: {
  readonly some: readonly Difference<Name>[];
  readonly nameOf: (name: Name) => string;
}) {
  return props.some.map(({ name, figures, size, scaledBy }) => (
    <Row
      key={name}
      name={props.nameOf(name)}
      texts={figures.map((one) => (one === undefined ? undefined : figureIn(name, one)))}
      size={sayLater.compare.size(times(size), scaledBy)}
    />
  ));
}

/** What differed in the making, the widest first, and what differed in what came of it. */
export function Differed({ choices, inputs, results }: Differences) {
  const words = sayLater.compare;
  const none = choices.length + inputs.length === 0;
  return (
    <>
      <section class="part">
        <h2>{words.differed}</h2>
        {none ? <p>{words.same}</p> : <p class="soft-small">{words.differedWhy}</p>}
        <ul class="sides-rows">
          {choices.map(({ name, kinds }) => (
            <Row
              key={name}
              name={words.inputs[name]}
              texts={kinds.map((kind) => (kind === undefined ? undefined : kindIn(name, kind)))}
            />
          ))}
          <Figures some={inputs} nameOf={(name) => words.inputs[name]} />
        </ul>
      </section>
      <section class="part">
        <h2>{words.came}</h2>
        {results.length === 0 && <p>{words.cameSame}</p>}
        <ul class="sides-rows">
          <Figures some={results} nameOf={(name) => words.results[name]} />
        </ul>
      </section>
    </>
  );
}
