/** Where the page leaves calendar files for the worker to hand out. Both must call it the same. */
export const DUE_FILES = "second-pour-due";

/** The folder their addresses lie in, below the app's own. */
const FOLDER = "due/";
const ENDING = ".ics";

/** What a calendar file is sent as. */
export const CALENDAR_TYPE = "text/calendar; charset=utf-8";

/**
 * The address of a wait's calendar file, below the app's own. It stays the same as the due time
 * moves, so that a calendar replaces what it had.
 *
 * @param runId - any text
 * @param visit - any text, such as "curdle#1"
 */
export const dueFileOf = (runId: string, visit: string): string =>
  `${FOLDER}${encodeURIComponent(runId)}/${encodeURIComponent(visit.replace("#", "-"))}${ENDING}`;

/**
 * Whether an address is that of a calendar file.
 *
 * @param pathname - of the address
 * @param scope - the path that the app lies under, with a closing slash
 */
export const isDueFile = (pathname: string, scope: string): boolean =>
  pathname.startsWith(`${scope}${FOLDER}`) && pathname.endsWith(ENDING);
