import type { ReadonlySignal } from "@preact/signals";
import type { ComponentType, FunctionComponent } from "preact";
import type { AlarmKind } from "../core/run/alarm.ts";
import { type Late, later } from "./later.tsx";
import { Logged } from "./logged.tsx";
import { type Place, Places } from "./places.tsx";
import { BenchScreen, fetchRows } from "./screens/bench.tsx";
import { Notices } from "./screens/notices.tsx";
import { address, opening } from "./state.ts";
import type { UpdateOutcome } from "./update.ts";
import { say } from "./words/say.ts";
import "./app.css";

interface AppProps {
  readonly onSound: (kind: AlarmKind) => void;
  readonly onUpdate: () => Promise<UpdateOutcome>;
  /** What shows that something rings, as soon as it is there. */
  readonly sheet: ReadonlySignal<ComponentType | undefined>;
}

const RunScreen = later(async () => (await import("./screens/run.tsx")).RunScreen);
const SpecsScreen = later(async () => (await import("./screens/specs.tsx")).SpecsScreen);
const SpecScreen = later(async () => (await import("./screens/spec.tsx")).SpecScreen);
const PlanScreen = later(async () => (await import("./screens/plan.tsx")).PlanScreen);
const CupboardScreen = later(async () => (await import("./screens/cupboard.tsx")).CupboardScreen);
const IngredientScreen = later(
  async () => (await import("./screens/ingredient.tsx")).IngredientScreen,
);
const SumsScreen = later(async () => (await import("./screens/sums.tsx")).SumsScreen);
const ProceduresScreen = later(
  async () => (await import("./screens/procedures.tsx")).ProceduresScreen,
);
const ProcedureScreen = later(
  async () => (await import("./screens/procedure.tsx")).ProcedureScreen,
);
const DaysScreen = later(async () => (await import("./screens/days.tsx")).DaysScreen);
const HandScreen = later(async () => (await import("./screens/hand.tsx")).HandScreen);
const ShelfScreen = later(async () => (await import("./screens/shelf.tsx")).ShelfScreen);
const LabelScreen = later(async () => (await import("./screens/label.tsx")).LabelScreen);
const LogbookScreen = later(async () => (await import("./screens/logbook.tsx")).LogbookScreen);
const BatchScreen = later(async () => (await import("./screens/batch.tsx")).BatchScreen);
const CompareScreen = later(async () => (await import("./screens/compare.tsx")).CompareScreen);
const ServicesScreen = later(
  async () => (await import("./screens/plan/services.tsx")).ServicesScreen,
);
const LearntScreen = later(async () => (await import("./screens/learnt.tsx")).LearntScreen);
const SheetScreen = later(async () => (await import("./screens/sheet.tsx")).SheetScreen);
const KitScreen = later(async () => {
  const [{ KitScreen: Kit }, notify] = await Promise.all([
    import("./screens/kit.tsx"),
    import("./alarm/notify.ts"),
  ]);
  return ({ onSound, onUpdate }: AppProps) => (
    <Kit
      onSoundCheck={() => onSound("do")}
      onUpdate={onUpdate}
      notices={notify.notifyState()}
      onAskNotices={notify.askToNotify}
    />
  );
});
const DimScreen = later(async () => (await import("./screens/dim.tsx")).DimScreen);
const VesselScreen = later(async () => (await import("./screens/vessel.tsx")).VesselScreen);

interface Route {
  readonly place: string;
  readonly id: string;
}

function routeOf(hash: string): Route {
  const [, place = "", id = ""] = /^#\/([a-z]+)(?:\/(.*))?$/u.exec(hash) ?? [];
  try {
    return { place, id: decodeURIComponent(id) };
  } catch {
    return { place: "lost", id: "" };
  }
}

/** What stands at an address. */
interface Standing {
  /** The place whose word is lit in the bar. */
  readonly lit: Place;
  readonly Screen: FunctionComponent<AppProps & { readonly id: string }>;
  /** Fetches what the screen is drawn with. */
  readonly fetch: () => Promise<unknown>;
  /** The batch whose log must have been read first, from the address. */
  readonly batch?: (id: string) => string;
}

const standing = (
  lit: Place,
  Screen: Late<AppProps & { readonly id: string }>,
  batch?: (id: string) => string,
): Standing => ({ lit, Screen, fetch: Screen.fetch, ...(batch && { batch }) });

const itself = (id: string): string => id;
const bench: Standing = { lit: "bench", Screen: BenchScreen, fetch: fetchRows };

const SCREENS: Readonly<Record<string, Standing>> = {
  "": bench,
  bench,
  run: standing("bench", RunScreen, itself),
  read: standing("bench", RunScreen, itself),
  vessel: standing("bench", VesselScreen, itself),
  dim: standing("bench", DimScreen),
  days: standing("bench", DaysScreen),
  hand: standing("bench", HandScreen, (id) => id.replace(/^run~/u, "")),
  specs: standing("specs", SpecsScreen),
  spec: standing("specs", SpecScreen),
  plan: standing("specs", PlanScreen),
  procedures: standing("specs", ProceduresScreen),
  procedure: standing("specs", ProcedureScreen),
  cupboard: standing("specs", CupboardScreen),
  ingredient: standing("specs", IngredientScreen),
  sums: standing("specs", SumsScreen),
  services: standing("specs", ServicesScreen),
  shelf: standing("shelf", ShelfScreen),
  label: standing("shelf", LabelScreen, itself),
  logbook: standing("logbook", LogbookScreen),
  batch: standing("logbook", BatchScreen, itself),
  sheet: standing("logbook", SheetScreen, itself),
  compare: standing("logbook", CompareScreen),
  learnt: standing("logbook", LearntScreen),
  kit: standing("kit", KitScreen),
};

/** What stands at a place; an address may name anything. */
const at = (place: string): Standing | undefined =>
  Object.hasOwn(SCREENS, place) ? SCREENS[place] : undefined;

/** Fetches what the screen at an address is drawn with, before it can be shown. */
export async function fetchScreen(hash: string): Promise<void> {
  await at(routeOf(hash).place)?.fetch();
}

/** Whether the Bench stands at an address. */
export const isBench = (hash: string): boolean => at(routeOf(hash).place) === bench;

function Screen({ route, app }: { readonly route: Route; readonly app: AppProps }) {
  const { id } = route;
  const stands = at(route.place);
  if (stands === undefined) return <p class="app-say">{say.places.lost}</p>;
  const shown = <stands.Screen {...app} key={id} id={id} />;
  if (stands.batch === undefined) return shown;
  return (
    <Logged key={id} runId={stands.batch(id)}>
      {shown}
    </Logged>
  );
}

/** The shell: one screen, what is said about saving, what rings, and the five places. */
export function App(props: AppProps) {
  const route = routeOf(address.value);
  const open = opening.value;
  const Sheet = props.sheet.value;
  return (
    <>
      <div class="app-screen" key={address.value}>
        {open.type === "opening" && <p class="app-say">{say.places.opening}</p>}
        {open.type === "working-out" && (
          <p class="app-say">{say.places.workingOut(open.done, open.all)}</p>
        )}
        {open.type === "failed" && (
          <p class="app-say" role="alert">
            {say.places.failed(open.why)}
          </p>
        )}
        {open.type === "ready" && <Screen route={route} app={props} />}
      </div>
      <Notices onUpdate={props.onUpdate} />
      <Places lit={at(route.place)?.lit} />
      {Sheet !== undefined && <Sheet />}
    </>
  );
}
