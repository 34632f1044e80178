import { field } from "../../../core/quantity/field.ts";
import { type Result, refused } from "../../../core/quantity/result.ts";
import { unturned } from "../../../core/quantity/unturned.ts";
import { type Kept, KINDS, STORES, type StoreName } from "./kinds.ts";

/** Nothing of ours is nested deeper than a plan in an event; the rest is refused unparsed. */
const MOST_DEPTH = 64;
/** So much of somebody else's word is repeated to a person. */
const MOST_SAID = 40;

/** Why a line was left out. */
export type LineRefusal =
  | "line-too-long"
  | "line-not-utf8"
  | "line-too-deep"
  | "line-not-json"
  | "line-no-record"
  | "line-unknown-kind"
  | "line-unknown-event"
  | "line-field"
  | "line-differs-here"
  | "line-differs-above";

/** A record and the store that it belongs to. */
export interface Entry {
  readonly store: StoreName;
  readonly record: Kept[StoreName];
}

const QUOTE = 0x22;
const BACKSLASH = 0x5c;
/** What a byte does to the depth of brackets. */
const STEPS = new Int8Array(256);
STEPS.set([1, 0, -1], 0x5b);
STEPS.set([1, 0, -1], 0x7b);

/** Whether brackets are nested deeper than ours ever are; those in texts do not count. */
function isTooDeep(bytes: Uint8Array): boolean {
  let depth = 0;
  let quoted = false;
  for (let at = 0; at < bytes.length && depth <= MOST_DEPTH; at += 1) {
    const byte = bytes[at] ?? 0;
    if (byte === QUOTE) quoted = !quoted;
    else if (!quoted) depth += STEPS[byte] ?? 0;
    else if (byte === BACKSLASH) at += 1;
  }
  return depth > MOST_DEPTH;
}

const decoder = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });

/** A mark that turns text round may be written out or by its number: only such a line is looked through. */
const BY_NUMBER = /\\u(?:061c|200[ef]|202[a-e]|206[6-9])/iu;

const unturnedPart = (_key: string, part: unknown): unknown =>
  typeof part === "string" ? unturned(part) : part;

const mayTurn = (text: string): boolean => BY_NUMBER.test(text) || unturned(text) !== text;

function textOf(bytes: Uint8Array): string | undefined {
  try {
    return decoder.decode(bytes);
  } catch {
    return undefined;
  }
}

/** Of somebody else's word, what can be shown in a sentence. */
function shown(word: unknown): string {
  const text = String(word).replace(/[\p{C}\p{Z}]+/gu, " ");
  return text.length > MOST_SAID ? `${text.slice(0, MOST_SAID)}…` : text;
}

function checked(store: StoreName, value: unknown): Result<Entry, LineRefusal> {
  const { success, data, error } = KINDS[store].check(value);
  if (success && data !== undefined) return { ok: true, value: { store, record: data } };
  const path = error?.issues[0]?.path ?? [];
  const type = field(value, "type");
  if (store === "events" && path.length === 1 && path[0] === "type" && typeof type === "string") {
    return refused("line-unknown-event", { type: shown(type) });
  }
  return refused("line-field", {
    kind: KINDS[store].line,
    field: shown(path.map(String).join(".")),
  });
}

function recordIn(value: unknown): Result<Entry, LineRefusal> {
  if (typeof value !== "object" || value === null || Array.isArray(value)) {
    return refused("line-no-record");
  }
  const store = STORES.find((name) => Object.hasOwn(value, KINDS[name].line));
  if (store !== undefined) return checked(store, field(value, KINDS[store].line));
  const [kind] = Object.keys(value);
  return kind === undefined
    ? refused("line-no-record")
    : refused("line-unknown-kind", { kind: shown(kind) });
}

/**
 * Reads one line of a backup.
 *
 * @returns the record as this version understands it, or what is wrong with the line
 * @limits brackets nested up to 64 deep; what a record has beyond its shape is dropped
 */
export function entryOf(bytes: Uint8Array): Result<Entry, LineRefusal> {
  const text = textOf(bytes);
  if (text === undefined) return refused("line-not-utf8");
  if (isTooDeep(bytes)) return refused("line-too-deep", { most: MOST_DEPTH });
  let value: unknown;
  try {
    value = mayTurn(text) ? JSON.parse(text, unturnedPart) : JSON.parse(text);
  } catch {
    return refused("line-not-json");
  }
  return recordIn(value);
}
