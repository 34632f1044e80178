/** Fewer batches say nothing yet: judgement. */
export const FEWEST_TO_LEARN = 3;

/** Older batches than these of a kind were made by other hands, filters or milk: judgement. */
export const LATEST_TO_LEARN = 20;
