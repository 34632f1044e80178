/** The questions that steps and figures raise; short, they stand beside what raises them. */
export const why = {
  milkFirst: "Why the milk first?",
  clearEnough: "How clear is clear?",
  pourBack: "Why pour it back?",
  topUp: "What is the top-up for?",
  range: "What does the range mean?",
  curdle: "How sure is this?",
  whichYield: "Which yield is meant?",
};

const practice = "Common practice, no source.";

/** Their answers, a few sentences each, and where they come from. */
export const answers = {
  milkFirst: {
    says: [
      "Poured slowly into cold milk, the first of the punch meets much milk and curdles it fine. Fine curd lies close on the filter and keeps the haze back.",
      "Milk poured into punch meets all the acid at once and sets in larger curd. The spec says which way this drink goes.",
    ],
    source: practice,
  },
  clearEnough: {
    says: [
      "Hold a glass of what drips now against the light, with print behind it. You read it easily: clear. You read it through a veil: hazy. You cannot read it: cloudy.",
      "The first of it always runs cloudy, until the curd has settled on the filter.",
      "Clear does not mean that it keeps: there is still milk in it. Keep it cold.",
    ],
    source: practice,
  },
  pourBack: {
    says: [
      "The curd on the paper is the finer filter. What ran before it had settled is cloudy, and clears by running through the curd.",
      "Pour it gently, over a spoon or down the wall: a hole in the curd lets the haze through.",
    ],
    source: practice,
  },
  topUp: {
    says: [
      "The milk's water thins the drink, and curd and filter keep a part of everything that was in it. Spirit that is held back until now loses nothing, and brings the strength back.",
      "How much depends on what came through. That is why the yield is measured first.",
    ],
    source: "The amount is worked out by mass; the plan opens it. The rest is common practice.",
  },
  range: {
    says: [
      "Of ten like this one, about eight come out between the two figures. The other two come out below or above.",
      "Outside it, nothing is wrong with your measuring: note what you see. With batches of your own the range comes to fit your bar.",
    ],
    source:
      "A yield: common practice, from your third batch on your own; in simulated bars 80 to 85 % of the next batches lay within. A drip: from its readings.",
  },
  curdle: {
    says: [
      "It is worked out from the punch's acids and what the milk takes up. Nobody has measured your lemons or your milk. Where a note says assumed, a guess or not measured, trust it less.",
      "Clearly: this milk curdles at both ends of the pH range. Borderline: at one end only. No: at neither.",
      "In doubt, try it in a glass: a spoonful of milk, and punch as the ratio asks. If it has not broken after some minutes, change the punch before the batch.",
    ],
    source: "Each figure opens its own source. The trial in a glass is common practice.",
  },
  whichYield: {
    says: [
      "All that is clear once the drip has ended, in one vessel, before the top-up. Not the cloudy run: it went back. Not what is squeezed from the curd: it runs cloudy.",
      "The top-up, the bottles and the next forecast are worked out from this one figure. Where two phones noted two, the one counts that was measured with everything in.",
    ],
    source: practice,
  },
};
