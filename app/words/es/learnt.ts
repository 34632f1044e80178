import type * as english from "../en/learnt.ts";
import type { Spoken } from "../spoken.ts";

const batches = (count: string): string => (count === "1" ? "1 lote" : `${count} lotes`);

export const learnt: Spoken<typeof english.learnt> = {
  title: "Qué dicen tus lotes",
  demoTitle: "Qué dicen los lotes de muestra",
  none: "Nada todavía. Desde la tercera clarificación terminada, tus propios lotes empiezan a fijar lo que se espera.",
  back: "Diario",
  specs: "Bebida por bebida",
  specLine: (count) => batches(count),
  kind: (procedure, shape, dairy) => `${procedure}, ${shape}, ${dairy}`,
  kinds: "Qué se espera del próximo lote",
  kindsWhy:
    "De tus propios lotes y, mientras son pocos, de la práctica común. 8 de cada 10 lotes deberían caer en el margen. Un lote muy apartado cuenta poco, para que uno raro no lo mueva.",
  source:
    "Medias normales dentro de un nivel de la casa (Gelman y otros, Bayesian Data Analysis); t de Student con 4 grados de libertad frente a lotes raros (Lange, Little y Taylor 1989). En simulaciones, del 80 al 85 % de los lotes siguientes cayó en el margen.",
  lesson: "Qué",
  expect: "Previsto",
  range: "8 de 10",
  from: "De",
  lessons: {
    curd: "Retenido en la cuajada, L por L de leche entera",
    share: "Pasa",
    clear: "Hasta que sale claro",
    drip: "Goteo lento, frente a lo habitual",
    passes: "Vertido de nuevo",
  },
  times: (factor) => `× ${factor}`,
  n: (own, house) =>
    own === house ? batches(own) : `${batches(own)} de esta clase, ${house} en total`,
  stated: "práctica común, aún sin lotes",
  yields: {
    title: "Rendimiento de lote en lote",
    says: (count, mean, low, high) =>
      `${batches(count)}: de media pasó ${mean}; normalmente entre ${low} y ${high}.`,
    outside: (names) => `Fuera de eso: ${names}.`,
    inside: "Ninguno queda fuera.",
    few: (count, least) => `${batches(count)}: los límites se trazan desde ${least} lotes.`,
    widened: (low, high) =>
      `Un lote raro ha ensanchado estos límites; sin contarlo serían de ${low} a ${high}.`,
    reading:
      "Media ± 2,66 × la diferencia media de un lote al siguiente (gráfico de individuos, NIST/SEMATECH e-Handbook 6.3.2.2). Un rombo lleno queda fuera.",
    high: "límite superior",
    mean: "media",
    low: "límite inferior",
    batch: "Lote",
    share: "Pasó",
    date: "Fecha",
  },
  matters: {
    title: "Qué parece ir junto",
    few: (count) =>
      `${batches(count)}: n es muy pequeño para decirlo. La búsqueda empieza con ocho.`,
    why: "Cosas que subieron y bajaron juntas en tus lotes. No dice que una causara la otra: a la vez pueden haber cambiado otras.",
    looked: (count, batchCount) =>
      `Se miraron ${count} pares de un factor y un resultado en ${batches(batchCount)}.`,
    nothing: "Ninguno destaca sobre lo que daría el azar.",
    rest: "Todos los demás pares",
    more: (input, result) => `Cuando “${input}” era mayor, “${result}” era casi siempre mayor`,
    less: (input, result) => `Cuando “${input}” era mayor, “${result}” era casi siempre menor`,
    order: (result, way) =>
      `Cuando el punch se vertió en la leche, “${result}” era casi siempre ${way === "higher" ? "mayor" : "menor"}`,
    figures: (rho, n, p) => `correlación de rangos ${rho}, n = ${n}, p ${p}`,
    p: "p está corregida por todo lo que se miró (Holm 1979): por debajo de 0,05, menos de 1 de cada 20 listas así mostraría siquiera uno por azar. Correlación de rangos de Spearman.",
    scatter: (input, result) => `${input} a lo ancho, ${result} hacia arriba`,
    table: "Primero los más probables; p está corregida",
    pair: "Par",
    rho: "ρ",
  },
  figures: "Las cifras",
  plan: {
    own: (amount, low, high, count) =>
      `Deberían pasar ${amount} (${low} a ${high}): por ${batches(count)} de los tuyos.`,
    practice: (amount, low, high) =>
      `Deberían pasar ${amount} (${low} a ${high}): práctica común, hasta que tengas tres lotes propios.`,
    drip: (time, low, high, count) =>
      `El goteo lento debería durar ${time} (${low} a ${high}): por ${batches(count)} de los tuyos.`,
    link: "Qué dicen tus lotes",
  },
  demo: {
    title: "Historia de muestra",
    why: "Unos veinte lotes inventados, en seis meses: uno que falló, uno mejor por suerte, una tendencia por encontrar. Marcados como muestra; tus planes no aprenden de ellos.",
    put: "Poner la historia de muestra",
    remove: "Quitar la historia de muestra",
    removeWhy: "Quita estos lotes inventados y lo que se les añadió. Los tuyos se quedan.",
    done: "La historia de muestra está en el Diario",
    removed: (count) =>
      count === "1" ? "1 lote de la muestra, quitado" : `${count} lotes de la muestra, quitados`,
  },
};
