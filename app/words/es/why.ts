import type * as english from "../en/why.ts";
import type { Spoken } from "../spoken.ts";

export const why: Spoken<typeof english.why> = {
  milkFirst: "¿Por qué primero la leche?",
  clearEnough: "¿Qué es “claro”?",
  pourBack: "¿Por qué otra vez?",
  topUp: "¿Para qué es el refuerzo?",
  range: "¿Qué significa el margen?",
  curdle: "¿Con qué certeza?",
  whichYield: "¿Qué rendimiento?",
};

const practice = "Práctica común, sin fuente.";

export const answers: Spoken<typeof english.answers> = {
  milkFirst: {
    says: [
      "Vertido despacio en leche fría, el primer punch encuentra mucha leche y la cuaja fina. La cuajada fina se asienta apretada en el filtro y retiene el velo.",
      "La leche vertida en el punch encuentra todo el ácido de golpe y cuaja más gruesa. La receta dice cómo va esta bebida.",
    ],
    source: practice,
  },
  clearEnough: {
    says: [
      "Pon a contraluz un vaso de lo que gotea ahora, con letra impresa detrás. Se lee bien: claro. Se lee tras un velo: velado. No se lee: turbio.",
      "Lo primero siempre sale turbio, hasta que la cuajada se asienta en el filtro.",
      "Claro no quiere decir que se conserve: aún lleva leche. Mantenlo en frío.",
    ],
    source: practice,
  },
  pourBack: {
    says: [
      "La cuajada sobre el papel es el filtro más fino. Lo que salió antes de asentarse está turbio, y se aclara al pasar por la cuajada.",
      "Viértelo con cuidado, sobre una cuchara o por la pared: un hueco en la cuajada deja pasar el velo.",
    ],
    source: practice,
  },
  topUp: {
    says: [
      "El agua de la leche rebaja la bebida, y la cuajada y el filtro se quedan una parte de todo lo que llevaba. El destilado reservado hasta ahora no pierde nada y le devuelve la fuerza.",
      "Cuánto, depende de lo que haya pasado. Por eso se mide antes el rendimiento.",
    ],
    source: "La cantidad se calcula por masa; el plan la abre. Lo demás es práctica común.",
  },
  range: {
    says: [
      "De diez como este, unos ocho quedan entre las dos cifras. Los otros dos quedan por debajo o por encima.",
      "Fuera de él, tu medida no está mal: anota lo que veas. Con lotes propios, el margen se va ajustando a tu bar.",
    ],
    source:
      "Un rendimiento: práctica común, y desde tu tercer lote los tuyos; en bares simulados, del 80 al 85 % de los lotes siguientes quedó dentro. Un goteo: de sus lecturas.",
  },
  curdle: {
    says: [
      "Se calcula con los ácidos del punch y lo que absorbe la leche. Nadie ha medido tus limones ni tu leche. Donde una nota diga que algo se supone o no se midió, fíate menos.",
      "Claramente: esta leche cuaja en los dos extremos del margen de pH. Al límite: solo en uno. No: en ninguno.",
      "Ante la duda, pruébalo en un vaso: una cucharada de leche, y punch según la proporción. Si en unos minutos no se ha cortado, cambia el punch antes del lote.",
    ],
    source: "Cada cifra abre su propia fuente. La prueba en un vaso es práctica común.",
  },
  whichYield: {
    says: [
      "Todo lo claro cuando el goteo ha acabado, en un solo recipiente, antes del refuerzo. No lo turbio: se vertió de nuevo. No lo exprimido de la cuajada: sale turbio.",
      "De esta sola cifra salen el refuerzo, las botellas y la próxima previsión. Si dos teléfonos anotaron dos, vale la que se midió con todo dentro.",
    ],
    source: practice,
  },
};
