import type { ReadonlySignal } from "@preact/signals";
import type { ComponentType } from "preact";
import type { AlarmKind } from "../core/run/alarm.ts";
import { later } from "./later.tsx";
import { Logged } from "./logged.tsx";
import { routes } from "./routes.ts";
import { BenchScreen } from "./screens/bench.tsx";
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
  const { KitScreen: Kit } = await import("./screens/kit.tsx");
  const notify = await import("./alarm/notify.ts");
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

/** The place whose word is lit in the bar for each screen. */
const PLACE_OF: Readonly<Record<string, keyof typeof TABS>> = {
  "": "bench",
  bench: "bench",
  run: "bench",
  vessel: "bench",
  dim: "bench",
  days: "bench",
  hand: "bench",
  specs: "specs",
  spec: "specs",
  plan: "specs",
  procedures: "specs",
  procedure: "specs",
  cupboard: "specs",
  ingredient: "specs",
  sums: "specs",
  shelf: "shelf",
  label: "shelf",
  logbook: "logbook",
  batch: "logbook",
  sheet: "logbook",
  compare: "logbook",
  services: "specs",
  learnt: "logbook",
  kit: "kit",
};

const TABS = {
  bench: routes.bench,
  specs: routes.specs,
  shelf: routes.shelf,
  logbook: routes.logbook,
  kit: routes.kit,
} as const;

const PLACES = ["bench", "specs", "shelf", "logbook", "kit"] as const;

/** A screen of one batch, drawn once the batch's log has been read. */
const logged = (Shown: ComponentType<{ readonly id: string }>, id: string, runId = id) => (
  <Logged key={id} runId={runId}>
    <Shown id={id} />
  </Logged>
);

function Screen({ route, app }: { readonly route: Route; readonly app: AppProps }) {
  const { place, id } = route;
  switch (place) {
    case "":
    case "bench":
      return <BenchScreen />;
    case "run":
      return logged(RunScreen, id);
    case "days":
      return <DaysScreen />;
    case "hand":
      return logged(HandScreen, id, id.replace(/^run~/u, ""));
    case "specs":
      return <SpecsScreen />;
    case "spec":
      return <SpecScreen key={id} id={id} />;
    case "plan":
      return <PlanScreen key={id} id={id} />;
    case "procedures":
      return <ProceduresScreen />;
    case "procedure":
      return <ProcedureScreen key={id} id={id} />;
    case "cupboard":
      return <CupboardScreen />;
    case "ingredient":
      return <IngredientScreen key={id} id={id} />;
    case "sums":
      return <SumsScreen key={id} id={id} />;
    case "shelf":
      return <ShelfScreen />;
    case "label":
      return logged(LabelScreen, id);
    case "vessel":
      return logged(VesselScreen, id);
    case "dim":
      return <DimScreen key={id} id={id} />;
    case "logbook":
      return <LogbookScreen />;
    case "compare":
      return <CompareScreen key={id} id={id} />;
    case "services":
      return <ServicesScreen key={id} id={id} />;
    case "learnt":
      return <LearntScreen key={id} id={id} />;
    case "sheet":
      return logged(SheetScreen, id);
    case "batch":
      return logged(BatchScreen, id);
    case "kit":
      return <KitScreen {...app} />;
    default:
      return <p class="app-say">{say.places.lost}</p>;
  }
}

function Places({ route }: { readonly route: Route }) {
  const lit = PLACE_OF[route.place];
  return (
    <nav class="app-places" aria-label={say.places.nav}>
      {PLACES.map((place) => (
        <a
          key={place}
          class="app-place"
          href={TABS[place]}
          aria-current={lit === place ? "page" : undefined}
        >
          {say.places[place]}
        </a>
      ))}
    </nav>
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
      <Places route={route} />
      {Sheet !== undefined && <Sheet />}
    </>
  );
}
