import { type InputName, type ResultName, sideOf } from "../../../core/logbook/compare/inputs.ts";
import { type Together as Pair, whatMatters } from "../../../core/logbook/matters/what-matters.ts";
import type { BatchRecord } from "../../../core/logbook/record.ts";
import { HOUR, MINUTE } from "../../../core/quantity/time-units-table.ts";
import { ScatterChart } from "../../parts/scatter-chart.tsx";
import { figureIn } from "../../words/compared.ts";
import { decimals } from "../../words/format.ts";
import { fromHouse, inHouse } from "../../words/house-units.ts";
import { named } from "../../words/joined.ts";
import { sayLater } from "../../words/say-later.ts";

const whole = (value: number): string => decimals(value, 0);
/** So many are drawn; the others stand in the table. */
const DRAWN = 4;
/** More of what does not stand out is nothing to read. */
const MOST = 16;

const UNITS: Readonly<Partial<Record<InputName | ResultName, number>>> = {
  "pour-time": MINUTE,
  "rest-time": MINUTE,
  "time-to-clear": MINUTE,
  "drip-time": HOUR,
  "yield-share": 0.01,
  "punch-strength": 0.01,
};

const inputName = ({ input }: Pair): string => sayLater.compare.inputs[input];
const resultName = ({ result }: Pair): string => sayLater.compare.results[result];

function pText(corrected: number): string {
  if (corrected < 0.001) return `< ${decimals(0.001, 3)}`;
  return decimals(corrected, corrected < 0.1 ? 3 : 2);
}

const signed = (rho: number): string => decimals(rho, 2).replace("-", "−");

function sentenceOf(pair: Pair): string {
  const words = sayLater.learnt.matters;
  const result = resultName(pair);
  if (pair.input === "order") return words.order(result, pair.rho > 0 ? "higher" : "lower");
  return pair.rho > 0 ? words.more(inputName(pair), result) : words.less(inputName(pair), result);
}

const numbersOf = ({ rho, n, corrected }: Pair): string =>
  sayLater.learnt.matters.figures(signed(rho), whole(n), pText(corrected));

function StandsOut({ pair }: { readonly pair: Pair }) {
  const words = sayLater.learnt.matters;
  const { input, result } = pair;
  const isWarmth = input === "degrees-curdle" || input === "degrees-drip";
  // Drawn in the house's unit, so that ticks stand on its round figures.
  const pairs = isWarmth ? pair.pairs.map(({ x, y }) => ({ x: inHouse(x), y })) : pair.pairs;
  const xText = (x: number): string =>
    input === "order" ? whole(x) : figureIn(input, isWarmth ? fromHouse(x) : x);
  const yText = (y: number): string => figureIn(result, y);
  return (
    <li class="learnt-found">
      <h3>{sentenceOf(pair)}</h3>
      <ScatterChart
        points={pairs}
        xText={xText}
        yText={yText}
        xUnit={input === "order" ? 1 : (UNITS[input] ?? 1)}
        yUnit={UNITS[result] ?? 1}
        says={`${numbersOf(pair)}.`}
        reading={words.scatter(inputName(pair), resultName(pair))}
        open={sayLater.learnt.figures}
        figures={{
          caption: words.scatter(inputName(pair), resultName(pair)),
          head: [inputName(pair), resultName(pair)],
          rows: pairs.map(({ x, y }) => [xText(x), yText(y)]),
        }}
      />
    </li>
  );
}

function Rest({ pairs }: { readonly pairs: readonly Pair[] }) {
  const words = sayLater.learnt.matters;
  if (pairs.length === 0) return null;
  return (
    <details class="chart-figures">
      <summary>{words.rest}</summary>
      <table class="chart-table">
        <caption>{words.table}</caption>
        <thead>
          <tr>
            <th scope="col">{words.pair}</th>
            <th scope="col">{words.rho}</th>
            <th scope="col">n</th>
            <th scope="col">p</th>
          </tr>
        </thead>
        <tbody>
          {pairs.slice(0, MOST).map((pair) => (
            <tr key={`${pair.input} ${pair.result}`}>
              <th scope="row">{named(inputName(pair), resultName(pair))}</th>
              <td>{signed(pair.rho)}</td>
              <td>{whole(pair.n)}</td>
              <td>{pText(pair.corrected)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

/** Which inputs and results rose and fell together; never why. */
export function Together({ batches }: { readonly batches: readonly BatchRecord[] }) {
  const words = sayLater.learnt.matters;
  const found = whatMatters(batches.map(sideOf));
  if (found.type === "too-few") {
    return (
      <section class="part">
        <h2>{words.title}</h2>
        <p>{words.few(whole(found.batches))}</p>
      </section>
    );
  }
  const standing = found.together.filter(({ standsOut }) => standsOut).slice(0, DRAWN);
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <p>{words.why}</p>
      {standing.length === 0 && <p>{words.nothing}</p>}
      <ul class="learnt-list">
        {standing.map((pair) => (
          <StandsOut key={`${pair.input} ${pair.result}`} pair={pair} />
        ))}
      </ul>
      <p class="soft-small">
        {words.looked(whole(found.together.length), whole(found.batches))} {words.p}
      </p>
      <Rest pairs={found.together.slice(standing.length)} />
    </section>
  );
}
