import type { DemoWords } from "../written.ts";

export const english: DemoWords = {
  specs: {
    "demo-pear-beacon": {
      name: "Pear Beacon",
      glass: "Small rocks glass",
      garnish: "Thin slice of pear",
      notes: "Brew the oolong at double strength and cool it before it meets the lemon.",
    },
    "demo-boatyard-flip-side": {
      name: "Boatyard Flip-Side",
      glass: "Coupe",
      garnish: "Grapefruit peel, expressed",
      notes: "Use the red-hibiscus infusion of the gin. The wash takes some of its colour.",
    },
    "demo-smoked-barley": {
      name: "Smoked Barley",
      glass: "Small glass",
      garnish: "None",
      notes: "At room temperature. It turns bitter past 36 h.",
    },
    "demo-brown-butter-rye": {
      name: "Brown-Butter Rye",
      glass: "Small glass",
      garnish: "None",
      notes: "Melt the butter away from flames. Milk stays declared.",
    },
    "demo-chamomile-dry-vermouth": {
      name: "Chamomile Dry Vermouth",
      glass: "Small glass",
      garnish: "None",
      notes: "",
    },
    "demo-citrus-skin-sherbet": {
      name: "Citrus-Skin Sherbet",
      glass: "Small glass",
      garnish: "None",
      notes: "Aim for 50 °Bx.",
    },
    "demo-harbour-slush": {
      name: "Harbour Slush",
      glass: "Tall glass",
      garnish: "None",
      notes: "The unwashed drink, to set beside Pear Beacon.",
    },
  },
  history: {
    failed: "Milk went in too fast and the cake blinded",
    failedNote:
      "All the milk in one minute, into the punch. Fine curd, the filter shut within an hour.",
    failedTag: "blinded",
    best: ["bright", "pear", "silky"],
    bestTag: "best so far",
    bestNote: "Same amounts as the week before. Nobody knows what was different.",
    usual: [
      ["pear", "ginger"],
      ["clean", "tannin"],
      ["bright", "lemon"],
    ],
    barley: ["malt", "smoke"],
  },
};
