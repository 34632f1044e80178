import type * as english from "../en/clock.ts";
import type { Spoken } from "../spoken.ts";

export const clock: Spoken<typeof english.clock> = {
  moved: (by) => `El reloj del teléfono se movió ${by}.`,
  behind: (by) =>
    `El reloj del teléfono fue hacia atrás: está ${by} por detrás de lo último escrito aquí.`,
  ask: "¿Se perdió tiempo de verdad o solo cambió el reloj?",
  keep: "Solo cambió el reloj",
  keepMeans: (due) => `Las esperas duran lo mismo: la próxima, ${due}`,
  trust: "La hora nueva es la buena",
  trustMeans: (due) => `Las horas previstas no cambian: la próxima, ${due}`,
  noWait: "No se espera nada; queda anotado en el registro",
  late: (due, length) => `${due}, ${length} de retraso`,
  zone: (zone) =>
    `El teléfono va ahora con la hora de ${zone}. Aquí las horas se muestran así; cada espera dura lo mismo que antes.`,
  slept: (length) => `El teléfono estuvo dormido ${length}: aquí nada podía sonar.`,
};
