/** What the invented bar wrote down. */
export const demoWords = {
  /** ml that came through, and minutes since the reading before. */
  blinded: [
    [320, 45],
    [390, 90],
    [410, 150],
  ],
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
} as const;
