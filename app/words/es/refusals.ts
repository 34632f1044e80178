import type { refusals as english } from "../en/refusals.ts";
import { abv, decimals, mass } from "../format.ts";
import { storageSize } from "../storage-size.ts";

const KINDS: Readonly<Record<string, string>> = {
  event: "entrada del registro",
  spec: "receta",
  ingredient: "ingrediente",
  procedure: "proceso",
  planned: "lote planificado",
  photo: "foto",
};

export const refusals: typeof english = {
  "amount-empty": () => "Escribe una cantidad, como 45 ml, 1 1/2 oz o 120 g.",
  "amount-without-number": ({ typed }) =>
    `“${typed}” no empieza por un número. Escríbelo como 45 ml o ¾ oz.`,
  "amount-without-unit": ({ typed }) =>
    `“${typed}” no tiene unidad. Añade ml, oz, g, golpe u otra.`,
  "amount-unknown-unit": ({ unit }) =>
    `“${unit}” no es una unidad conocida aquí. Usa ml, cl, l, oz, golpe, cucharilla, cdta, cda, taza, g o kg.`,
  "amount-not-positive": () => "La cantidad debe ser mayor que cero.",
  "amount-too-large": () => "Es más de una tonelada. Revisa el número y su unidad.",
  "line-without-ingredient": () =>
    "Escribe qué es después de la cantidad, como 45 ml jugo de limón.",
  "ingredient-impossible": ({ name }) =>
    `${name}: tanto alcohol, azúcar y ácido no cabe en un litro. Revisa sus cifras en la despensa.`,
  "dry-needs-weight": ({ name }) => `${name} se pesa, no se vierte. Da su cantidad en g.`,
  "spec-without-lines": () => "Esta receta aún no tiene ingredientes. Añade al menos uno.",
  "spec-ingredient-missing": () =>
    "Un ingrediente de esta receta ya no está en la despensa. Elige otro para esa línea.",
  "wash-dairy-missing": () =>
    "El lácteo de esta clarificación ya no está en la despensa. Elige otro.",
  "wash-dairy-not-dairy": ({ name }) =>
    `${name} no es un lácteo. Elige una leche para la clarificación.`,
  "nothing-to-wash": () =>
    "Todo está reservado, así que no hay nada que verter en la leche. Baja una parte reservada.",
  "botanicals-keep-all": () =>
    "Lo que se infusiona absorbe todo el líquido. Usa menos, o más líquido.",
  "stock-unused": () => "Esta receta no usa nada de ese ingrediente. Elige otro.",
  "vessel-too-small": () =>
    "Este recipiente es demasiado pequeño para el lote: los filtros se beberían lo que cabe. Usa uno más grande.",
  "size-too-small": () =>
    "Este lote es demasiado pequeño: no quedaría nada tras la cuajada y los filtros. Hazlo más grande.",
  "spec-holds-nothing": () =>
    "Esta receta no suma ningún volumen. Añade un ingrediente que se vierta.",
  "target-above-spirit": ({ nearest }) =>
    `El destilado reservado es demasiado flojo para ese grado. Lo más cerca queda justo por debajo de ${abv(Number(nearest))}.`,
  "target-below-base": ({ nearest }) =>
    `El punch clarificado ya es más fuerte que eso. Lo más cercano es ${abv(Number(nearest))}, sin refuerzo.`,
  "nothing-held-back": () =>
    "Se pide un grado, pero no hay nada reservado para llegar a él. Reserva una parte del destilado o refuerza en proporción.",
  "procedure-without-end": () =>
    "Este proceso nunca acaba: algunos pasos solo llevan unos a otros. Arréglalo en Procesos y luego empieza.",
  "run-already-started": () => "Este lote ya se empezó. Ábrelo desde la Mesa.",
  "run-not-started": () =>
    "Este lote no se empezó en este teléfono. Empiézalo desde su plan, o tómalo del otro teléfono en Ajustes.",
  "run-ended": () => "Este lote ha acabado. Su registro queda en el Diario.",
  "step-not-open": () =>
    "Ese paso ya está terminado, quizá en otra ventana. La pantalla muestra ahora dónde está el lote.",
  "reading-missing": () => "Mide antes: este paso necesita una cifra para terminarse.",
  "look-missing": () => "Di antes lo que ves: claro, velado o turbio.",
  "reading-not-a-number": () => "Esa cifra no se puede medir. Escríbela otra vez.",
  "reading-above-poured": ({ most }) =>
    `Es más de lo que entró en el recipiente (unos ${Math.round(Number(most))} ml). Revisa los dígitos.`,
  "tare-missing": () =>
    "Pesa antes el recipiente vacío: la báscula no lo distingue de lo que lleva.",
  "weight-below-tare": ({ gross, tare }) =>
    `${mass(Number(gross))} es menos que el recipiente vacío (${mass(Number(tare))}). Revisa los dígitos o pesa otra vez el recipiente.`,
  "order-does-not-fit": () =>
    "Eso no es de este paso. La pantalla muestra dónde está el lote; hazlo ahí otra vez.",
  "no-bottles": () => "Di cuántas botellas se llenaron, al menos una.",
  "note-empty": () => "La nota está vacía. Escribe algo antes.",
  "taste-empty": () => "La hoja está vacía. Da al menos una puntuación o elige una palabra.",
  "taster-missing": () => "Di quién probó, por sus iniciales.",
  "tag-empty": () => "El marcador está vacío. Escribe antes una palabra.",
  "not-bottled": () => "Este lote aún no está embotellado, así que no se puede servir de él.",
  "stock-ended": () =>
    "Este lote ya no está en el Estante: se acabó o se tiró. Deshazlo antes en su registro.",
  "pour-empty": () => "Di cuánto se sirvió: más que nada.",
  "not-a-picture": () =>
    "Este archivo no es una imagen que el teléfono pueda abrir. Elige otro; nada cambió.",
  "undo-later-first": () => "Después se hizo algo más. Deshaz antes el paso posterior.",
  "nothing-to-undo": () => "Ahí no queda nada que deshacer. El registro muestra lo que cuenta.",
  "part-missing": () =>
    "Una parte de la aplicación no se cargó, así que no se anotó nada. Cierra del todo la aplicación, ábrela otra vez y repítelo.",
  "not-saved": ({ why }) => `NO GUARDADO: ${why}. Hazlo otra vez; nada más cambió.`,
  "no-room": () =>
    "NO GUARDADO: al teléfono no le queda espacio. Borra vídeos, fotos o aplicaciones del teléfono y hazlo otra vez; nada más cambió.",
  "pen-elsewhere": () =>
    "Sin hacer: ahora escribe otra ventana de la aplicación. Pulsa “Trabajar en esta ventana” al pie de la pantalla y hazlo otra vez.",
  "newer-storage": () =>
    "Sin hacer: una versión más nueva de la aplicación ha escrito en este teléfono, y esta solo lee. Cierra del todo la aplicación y ábrela otra vez.",
  "storage-silent": ({ why }) =>
    `El almacén del teléfono no respondió: ${why}. Cierra del todo la aplicación, ábrela y prueba otra vez. Nada cambió.`,
  "backup-empty": () => "Este archivo está vacío. Elige el que guardó la aplicación. Nada cambió.",
  "backup-too-large": ({ most }) =>
    `Este archivo pasa de ${storageSize(Number(most))}, más que cualquier copia de seguridad. Elige el que guardó la aplicación. Nada cambió.`,
  "backup-too-many-lines": ({ most }) =>
    `Este archivo tiene más de ${decimals(Number(most), 0)} líneas, más que cualquier copia de seguridad. Elige el que guardó la aplicación. Nada cambió.`,
  "backup-encoding": () =>
    "Este archivo se volvió a guardar con otra codificación (UTF-16). Guárdalo como UTF-8 o toma el archivo que guardó la aplicación. Nada cambió.",
  "backup-not-text": () =>
    "No es un archivo de texto, así que no es una copia de seguridad: quizá una imagen. Elige el que guardó la aplicación. Nada cambió.",
  "backup-not-ours": () =>
    "Este archivo no es una copia de seguridad de Second Pour. Elige el que guardó la aplicación. Nada cambió.",
  "backup-newer": ({ version }) =>
    `Esta copia la hizo una versión más nueva (formato ${version}). Actualiza la aplicación y prueba otra vez. Nada cambió.`,
  "backup-unreadable": () =>
    "El teléfono no pudo leer el archivo hasta el final. Cópialo en el teléfono y elígelo otra vez. Nada cambió.",
  "backup-given-up": () => "Parado. Nada cambió.",
  "backup-added-unread": ({ why }) =>
    `Se añadió todo, pero no se pudo volver a leer: ${why}. Cierra del todo la aplicación y ábrela otra vez.`,
  "line-too-long": ({ most }) => `pasa de ${storageSize(Number(most))}, más que cualquier entrada.`,
  "line-not-utf8": () =>
    "tiene letras en una codificación distinta de UTF-8: dañada, o guardada otra vez con otro programa.",
  "line-too-deep": ({ most }) =>
    `corchetes anidados más de ${most} veces, más que en cualquier entrada.`,
  "line-not-json": () => "no se puede leer: cortada o alterada.",
  "line-no-record": () => "no contiene ninguna entrada.",
  "line-unknown-kind": ({ kind }) =>
    `es de una clase que esta versión no conoce: “${kind}”. Una más nueva quizá sí.`,
  "line-unknown-event": ({ type }) =>
    `es una entrada del registro que esta versión no conoce: “${type}”. Una más nueva quizá sí.`,
  "line-field": ({ kind, field }) =>
    field === ""
      ? `no contiene una entrada de esta clase: ${KINDS[kind ?? ""] ?? kind}.`
      : `clase ${KINDS[kind ?? ""] ?? kind}: “${field}” no es como se espera.`,
  "line-differs-here": () =>
    "aquí ya está esta entrada con otro contenido; lo que hay aquí se queda como está.",
  "line-differs-above": () =>
    "una línea de arriba lleva esta entrada con otro contenido; vale esa.",
};
