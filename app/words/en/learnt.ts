const batches = (count: string): string => (count === "1" ? "1 batch" : `${count} batches`);

/** What the screen says of what a bar's own batches have taught. */
export const learnt = {
  title: "What your batches tell",
  demoTitle: "What the demo's batches tell",
  none: "Nothing yet. From the third finished wash on, your own batches begin to set what is expected.",
  back: "Logbook",
  specs: "One drink at a time",
  specLine: (count: string) => batches(count),
  kind: (procedure: string, shape: string, dairy: string) => `${procedure}, ${shape}, ${dairy}`,
  kinds: "What is expected of the next batch",
  kindsWhy:
    "From your own batches and, while they are few, from common practice. 8 in 10 batches should lie in the range. A batch far off counts for little, so that one odd batch does not swing it.",
  source:
    "Normal means within a house level (Gelman and others, Bayesian Data Analysis); Student's t with 4 degrees of freedom against odd batches (Lange, Little and Taylor 1989). In simulations 80 to 85 % of next batches lay in the range.",
  lesson: "What",
  expect: "Expected",
  range: "8 in 10",
  from: "From",
  lessons: {
    curd: "Kept in the curd, L per L of whole milk",
    share: "Comes through",
    clear: "Until it runs clear",
    drip: "Slow drip, against the usual",
    passes: "Poured back",
  },
  times: (factor: string) => `× ${factor}`,
  n: (own: string, house: string) =>
    own === house ? batches(own) : `${batches(own)} of this kind, ${house} in all`,
  stated: "common practice, no batch yet",
  yields: {
    title: "Yield from batch to batch",
    says: (count: string, mean: string, low: string, high: string) =>
      `${batches(count)}: ${mean} came through on average; usually between ${low} and ${high}.`,
    outside: (names: string) => `Outside that: ${names}.`,
    inside: "None lies outside.",
    few: (count: string, least: string) =>
      `${batches(count)}: limits are drawn from ${least} batches on.`,
    widened: (low: string, high: string) =>
      `An odd batch has widened these limits; without it they would be ${low} to ${high}.`,
    reading:
      "Mean ± 2.66 × the mean difference from one batch to the next (individuals chart, NIST/SEMATECH e-Handbook 6.3.2.2). A full diamond lies outside.",
    high: "upper limit",
    mean: "mean",
    low: "lower limit",
    batch: "Batch",
    share: "Came through",
    date: "Date",
  },
  matters: {
    title: "What seems to go together",
    few: (count: string) => `${batches(count)}: n is too small to say. The search begins at eight.`,
    why: "Things that rose and fell together in your batches. It does not say that one made the other: other things may have changed at the same time.",
    looked: (count: string, batchCount: string) =>
      `${count} pairs of how it was made and how it came out were looked at, in ${batches(batchCount)}.`,
    nothing: "None of them stands out from what chance would show.",
    rest: "All other pairs",
    more: (input: string, result: string) =>
      `When “${input}” was higher, “${result}” was mostly higher`,
    less: (input: string, result: string) =>
      `When “${input}” was higher, “${result}” was mostly lower`,
    order: (result: string, way: "higher" | "lower") =>
      `When punch was poured into milk, “${result}” was mostly ${way}`,
    figures: (rho: string, n: string, p: string) => `rank correlation ${rho}, n = ${n}, p ${p}`,
    p: "p is corrected for everything looked at (Holm 1979): below 0.05, fewer than 1 in 20 such lists would show even one by chance. Spearman's rank correlation.",
    scatter: (input: string, result: string) => `${input} across, ${result} upwards`,
    table: "The likeliest first; p is corrected",
    pair: "Pair",
    rho: "ρ",
  },
  figures: "The figures",
  plan: {
    own: (amount: string, low: string, high: string, count: string) =>
      `${amount} should come through (${low} to ${high}): from ${batches(count)} of your own.`,
    practice: (amount: string, low: string, high: string) =>
      `${amount} should come through (${low} to ${high}): common practice, until you have three batches of your own.`,
    drip: (time: string, low: string, high: string, count: string) =>
      `The slow drip should take ${time} (${low} to ${high}): from ${batches(count)} of your own.`,
    link: "What your batches tell",
  },
  demo: {
    title: "Demo history",
    why: "Some twenty invented batches over six months: a failure, a lucky best, a trend to find. Marked as demo; your own plans learn nothing from them.",
    put: "Put the demo history in",
    remove: "Remove the demo history",
    removeWhy: "Removes these invented batches and what was added to them. Your own batches stay.",
    done: "The demo history is in the Logbook",
    removed: (count: string) => `${batches(count)} of the demo removed`,
  },
};
