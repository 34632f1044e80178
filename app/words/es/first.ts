import type { first as english } from "../en/first.ts";

export const first: typeof english = {
  title: "¿Primera vez?",
  what: "De la receta a la botella etiquetada: qué pesar, cuándo volver, cuánto ha salido. Suena, apunta y funciona sin señal.",
  practise: "Practicar una clarificación",
  practiseWhy:
    "La clarificación entera en un minuto, con esperas de segundos. Con el recipiente vacío. No queda nada guardado.",
  name: "Clarificación de práctica",
  mark: "Práctica: las esperas duran segundos y no queda nada.",
  leave: "Dejar la práctica",
  over: "Así es una clarificación entera",
  overWhy: "Una de verdad dura un día. La aplicación suena en cada espera y recuerda cada cifra.",
  done: "Listo, quitarla",
  gone: "La práctica se ha quitado.",
};
