import { degrees, degreesBare, degreesTyped } from "../degrees.ts";
import type * as english from "../en/sheet.ts";
import { degreeSign } from "../house-units.ts";
import type { Spoken } from "../spoken.ts";

export const sheet: Spoken<typeof english.sheet> = {
  title: "Hoja de control",
  batch: "Lote",
  spec: "Receta",
  started: "Empezado",
  ended: "Acabado",
  running: "aún en marcha",
  useBy: "Caducidad",
  get warm() {
    return `Tiempo por encima de ${degrees(5)}`;
  },
  none: "nada contado",
  steps: "Pasos",
  from: "De",
  to: "A",
  by: "Por",
  temperatures: "Temperaturas",
  lots: "Lotes de origen",
  lotUseBy: (date) => `caduca ${date}`,
  earliest: (date) =>
    `La fecha más temprana de esos lotes es ${date}: una bebida mezclada no se guarda más que eso.`,
  hands: "Relevos",
  empty: "Nada anotado.",
  get addTemperature() {
    return `Temperatura ahora, ${degreeSign()}`;
  },
  noteTemperature: "Anotar la temperatura",
  temperatureFault: (low, high) =>
    `Escribe una temperatura de ${degreesBare(low)} a ${degreesBare(high)}, como ${degreesTyped(4.5)}.`,
  addLot: "Número de lote del envase",
  lotOf: "Ingrediente",
  lotDate: "Días hasta su caducidad, si la tiene",
  lotDateHint: "0 si es hoy. Déjalo vacío si no tiene.",
  lotDateFault: "Escribe un número entero de días de 0 a 3650, o déjalo vacío.",
  noteLot: "Anotar el número de lote",
  lotFault: "Escribe antes el número de lote.",
  addHands: "Iniciales",
  noteHands: "Tomar el relevo",
  handsFault: "Escribe de una a ocho letras.",
  noted: "Anotado",
  print: "Imprimir",
  cautions:
    "Esta hoja enumera lo anotado aquí. No dice que una bebida sea segura: deciden tu normativa local y quien tiene licencia para juzgarlo.",
  toRun: "Volver al lote",
};
