/** What is said where nothing stands yet: what will stand there, and what it is good for. */
export const empty = {
  lines: "Type the first one: strength, sugar and acid follow.",
  compare: (there: number) =>
    there === 0
      ? "No batch has ended yet. Two that have stand here side by side, what differed most first."
      : "One batch has ended. With a second, they stand here side by side, what differed most first.",
  drip: "Too few readings of this drip. Two draw its curve here, and the next forecast learns from them.",
  allSpecs: "Show all specs",
};
