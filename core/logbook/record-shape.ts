/**
 * Version of what a batch record says. Raise it with every change to `recordOf`: records are worked
 * out from the log, and those of another version are worked out anew.
 */
export const RECORD_SHAPE = 4;
