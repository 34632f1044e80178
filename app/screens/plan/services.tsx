import { useMemo, useState } from "preact/hooks";
import { type Served, type Service, serveAs } from "../../../core/logbook/compare/services.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import { house, shelf } from "../../house.ts";
import { LETTERS } from "../../parts/chart-mark.tsx";
import { DrinkBalance } from "../../parts/drink-balance.tsx";
import { LinkButton } from "../../parts/link-button.tsx";
import { Lettered, SideRow } from "../../parts/sides.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { routes } from "../../routes.ts";
import { settings, specs } from "../../state.ts";
import { degrees } from "../../words/degrees.ts";
import { percent, volume } from "../../words/format.ts";
import { sayLater, sentence } from "../../words/say-later.ts";
import "./services.css";

const METHODS = ["stirred", "shaken", "over-ice", "blended"] as const;
const MOST = LETTERS.length;
const FEWEST = 2;
/** What the size is does not matter to the glass, only that it can be planned. */
const SERVES = { by: "serves", serves: 20 } as const;

const keyOf = ({ washed, method }: Service): string => `${washed} ${method}`;

/** Every way that is offered; its own comes first, washed before unwashed. */
function offered(spec: Spec): readonly Service[] {
  const own = spec.serve.method;
  const methods = [own, ...METHODS.filter((method) => method !== own)];
  const ways = spec.wash === undefined ? [false] : [true, false];
  return ways.flatMap((washed) => methods.map((method) => ({ washed, method })));
}

function nameOf({ washed, method }: Service, spec: Spec): string {
  const words = sayLater.compare.services;
  const how = sayLater.spec.serve.methods[method];
  if (spec.wash === undefined) return how;
  return words.name(washed ? words.washed : words.unwashed, how);
}

function Glass({ served, spec }: { readonly served: readonly Served[]; readonly spec: Spec }) {
  const words = sayLater.compare.services;
  const rows = [
    [words.glassMl, ({ glassMl }: Served) => volume(glassMl, settings.value)],
    [words.glassAt, ({ glassAt }: Served) => degrees(glassAt)],
    [words.water, ({ water }: Served) => volume(water, settings.value)],
    [words.ice, ({ ice }: Served) => percent(ice)],
  ] as const;
  return (
    <section class="part">
      <h2>{words.glass}</h2>
      <Lettered sides={served.map(({ service }) => nameOf(service, spec))} />
      <ul class="sides-rows">
        {rows.map(([name, text]) => (
          <SideRow key={name} name={name} texts={served.map(text)} />
        ))}
      </ul>
      <p class="soft-small">{words.limits}</p>
    </section>
  );
}

function Screen({ spec }: { readonly spec: Spec }) {
  const words = sayLater.compare.services;
  const ways = offered(spec);
  const [chosen, setChosen] = useState<readonly string[]>(() => {
    const [own] = ways;
    const blended = ways.find(
      ({ method, washed }) => method === "blended" && washed === own?.washed,
    );
    const unwashed = ways.find(({ method, washed }) => !washed && method === own?.method);
    const first = [own, blended, unwashed].flatMap((one) =>
      one === undefined ? [] : [keyOf(one)],
    );
    return [...new Set(first)];
  });
  const [cupboard, rules] = [shelf.value, house.value];
  const found = useMemo(
    () =>
      ways
        .filter((way) => chosen.includes(keyOf(way)))
        .map((way) => serveAs(spec, way, cupboard, SERVES, rules)),
    [spec, chosen, cupboard, rules],
  );
  const served = found.flatMap((one) => (one.ok ? [one.value] : []));
  const refusal = found.find((one) => !one.ok);
  const toggle = (key: string) =>
    setChosen(chosen.includes(key) ? chosen.filter((one) => one !== key) : [...chosen, key]);
  return (
    <>
      <p>{words.why}</p>
      <div class="services-choices">
        {ways.map((way) => {
          const isIn = chosen.includes(keyOf(way));
          const stuck = isIn ? chosen.length <= FEWEST : chosen.length >= MOST;
          return (
            <TapButton
              key={keyOf(way)}
              pressed={isIn}
              disabled={stuck}
              onAct={() => toggle(keyOf(way))}
            >
              {nameOf(way, spec)}
            </TapButton>
          );
        })}
      </div>
      {refusal !== undefined && !refusal.ok && <p role="alert">{sentence(refusal)}</p>}
      {served.length > 0 && (
        <>
          <Glass served={served} spec={spec} />
          <section class="part">
            <h2>{sayLater.compare.balance.title}</h2>
            <DrinkBalance
              glass
              drinks={served.map(({ service, glass }) => ({
                name: nameOf(service, spec),
                ...glass,
              }))}
            />
          </section>
        </>
      )}
    </>
  );
}

/** One drink in several services: washed or not, stirred, blended, over ice. */
export function ServicesScreen({ id }: { readonly id: string }) {
  const spec = specs.value.find((one) => one.id === id);
  const words = sayLater.compare.services;
  return (
    <main class="services">
      <LinkButton tone="quiet" href={spec === undefined ? routes.specs : routes.plan(id)}>
        {spec === undefined ? sayLater.specs.title : sayLater.plan.title(spec.name)}
      </LinkButton>
      <h1>{spec === undefined ? words.title : spec.name}</h1>
      {spec !== undefined && <p class="services-lead">{words.title}</p>}
      {spec === undefined ? <p>{words.lost}</p> : <Screen spec={spec} />}
    </main>
  );
}
