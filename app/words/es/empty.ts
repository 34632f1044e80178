import type { empty as english } from "../en/empty.ts";
import type { Spoken } from "../spoken.ts";

export const empty: Spoken<typeof english> = {
  lines: "Escribe el primero: grado, azúcar y ácido salen de ahí.",
  compare: (there) =>
    there === 0
      ? "Aún no ha acabado ningún lote. Dos acabados se ven aquí lado a lado, primero lo más distinto."
      : "Ha acabado un lote. Con otro más se ven aquí lado a lado, primero lo más distinto.",
  drip: "Pocas lecturas de este goteo. Dos trazan aquí su curva, y la próxima previsión aprende de ellas.",
  allSpecs: "Ver todas las recetas",
};
