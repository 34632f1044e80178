import type { DemoWords } from "../written.ts";

export const spanish: DemoWords = {
  specs: {
    "demo-pear-beacon": {
      name: "Pear Beacon",
      glass: "Vaso bajo pequeño",
      garnish: "Lámina fina de pera",
      notes: "Prepara el oolong al doble de fuerza y enfríalo antes de juntarlo con el limón.",
    },
    "demo-boatyard-flip-side": {
      name: "Boatyard Flip-Side",
      glass: "Copa coupe",
      garnish: "Piel de pomelo, exprimida encima",
      notes:
        "Usa la infusión de hibisco rojo en la ginebra. La clarificación se lleva parte del color.",
    },
    "demo-smoked-barley": {
      name: "Cebada ahumada",
      glass: "Vaso pequeño",
      garnish: "Ninguna",
      notes: "A temperatura ambiente. Pasadas las 36 h amarga.",
    },
    "demo-brown-butter-rye": {
      name: "Centeno y mantequilla tostada",
      glass: "Vaso pequeño",
      garnish: "Ninguna",
      notes: "Funde la mantequilla lejos de llamas. La leche se declara igual.",
    },
    "demo-chamomile-dry-vermouth": {
      name: "Vermut seco de manzanilla",
      glass: "Vaso pequeño",
      garnish: "Ninguna",
      notes: "",
    },
    "demo-citrus-skin-sherbet": {
      name: "Sherbet de pieles de cítricos",
      glass: "Vaso pequeño",
      garnish: "Ninguna",
      notes: "Apunta a 50 °Bx.",
    },
    "demo-harbour-slush": {
      name: "Harbour Slush",
      glass: "Vaso alto",
      garnish: "Ninguna",
      notes: "La bebida sin clarificar, para ponerla al lado de Pear Beacon.",
    },
  },
  history: {
    failed: "La leche entró demasiado rápido y la cuajada se cegó",
    failedNote:
      "Toda la leche en un minuto, sobre el punch. Cuajada fina; el filtro se cegó antes de una hora.",
    failedTag: "filtro cegado",
    best: ["bright", "pera", "silky"],
    bestTag: "el mejor hasta ahora",
    bestNote: "Las mismas cantidades que la semana anterior. Nadie sabe qué hubo de distinto.",
    usual: [
      ["pera", "jengibre"],
      ["clean", "tanino"],
      ["bright", "limón"],
    ],
    barley: ["malta", "humo"],
  },
};
