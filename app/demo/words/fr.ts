import type { DemoWords } from "../written.ts";

export const french: DemoWords = {
  specs: {
    "demo-pear-beacon": {
      name: "Pear Beacon",
      glass: "Petit verre à whisky",
      garnish: "Fine tranche de poire",
      notes: "Infuser l’oolong deux fois plus fort et le refroidir avant de l’unir au citron.",
    },
    "demo-boatyard-flip-side": {
      name: "Boatyard Flip-Side",
      glass: "Verre coupe",
      garnish: "Zeste de pamplemousse, exprimé sur le verre",
      notes:
        "Prendre l’infusion d’hibiscus rouge au gin. La clarification emporte une part de sa couleur.",
    },
    "demo-smoked-barley": {
      name: "Orge fumée",
      glass: "Petit verre",
      garnish: "Aucune",
      notes: "À température ambiante. Au-delà de 36 h, elle devient amère.",
    },
    "demo-brown-butter-rye": {
      name: "Seigle au beurre noisette",
      glass: "Petit verre",
      garnish: "Aucune",
      notes: "Faire fondre le beurre loin des flammes. Le lait reste à déclarer.",
    },
    "demo-chamomile-dry-vermouth": {
      name: "Vermouth sec à la camomille",
      glass: "Petit verre",
      garnish: "Aucune",
      notes: "",
    },
    "demo-citrus-skin-sherbet": {
      name: "Sherbet de zestes d’agrumes",
      glass: "Petit verre",
      garnish: "Aucune",
      notes: "Viser 50 °Bx.",
    },
    "demo-harbour-slush": {
      name: "Harbour Slush",
      glass: "Grand verre",
      garnish: "Aucune",
      notes: "La boisson non clarifiée, à mettre à côté du Pear Beacon.",
    },
  },
  history: {
    failed: "Lait versé trop vite, le caillé s’est bouché",
    failedNote:
      "Tout le lait en une minute, dans le punch. Caillé fin, filtre bouché en moins d’une heure.",
    failedTag: "filtre bouché",
    best: ["bright", "poire", "silky"],
    bestTag: "le meilleur jusqu’ici",
    bestNote: "Mêmes quantités que la semaine d’avant. Personne ne sait ce qui a changé.",
    usual: [
      ["poire", "gingembre"],
      ["clean", "tanin"],
      ["bright", "citron"],
    ],
    barley: ["malt", "fumée"],
  },
};
