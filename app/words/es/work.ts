import type * as english from "../en/work.ts";
import type { Spoken } from "../spoken.ts";

/** Se leen a dos metros: cortos. */
const verbs: Readonly<Record<string, string>> = {
  build: "Mezclar",
  milk: "Leche",
  pour: "Verter",
  curdle: "Reposo",
  "wet-filter": "Mojar filtro",
  "first-pass": "1.ª pasada",
  "re-pour": "Verter de nuevo",
  "check-clear": "¿Claro?",
  "slow-drip": "Goteo lento",
  yield: "Medir",
  "top-up": "Reforzar",
  bottle: "Llenar",
  label: "Etiquetar",
  rescue: "Sigue turbio",
  finer: "Filtro más fino",
  "cold-rest": "Reposo frío",
  rack: "Trasegar",
  steep: "Infusión",
  "strain-mesh": "Colar",
  "strain-paper": "Papel",
  melt: "Fundir",
  mingle: "Macerar",
  freeze: "Congelar",
  "lift-fat": "Quitar grasa",
  skins: "Pieles",
  "draw-oil": "Sacar aceite",
  stir: "Remover",
  brix: "°Brix",
  cool: "Enfriar",
  correct: "Corregir",
};

export const work: Spoken<typeof english.work> = {
  hints: {
    rest: "Mantén pulsado",
    short: "Más tiempo, hasta que se llene",
    wet: "Seca la pantalla y el dedo, y mantén pulsado",
  },
  verbs,
  due: (time) => `hasta ${time}`,
  since: (length) => `desde hace ${length}`,
};
