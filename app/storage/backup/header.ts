import { field } from "../../../core/quantity/field.ts";
import { type Result, refused } from "../../../core/quantity/result.ts";

// One line of JSON each: a header, then one record a line, in UTF-8. The header's sum is over the
// other lines, joined by line feeds.
const FORMAT = "second-pour-backup";
const VERSION = 1;

/** A file larger than this is refused, bytes: some six hundred thousand entries. */
export const MOST_BYTES = 512 * 1024 * 1024;
/** One with more lines is refused: a bar of ten years has a quarter of that. */
export const MOST_LINES = 1_000_000;
/** A longer line is left out, bytes: the longest of ours, a plan with its procedure, has a fiftieth. */
export const MOST_LINE = 4 * 1024 * 1024;

/** Why a file was refused as a whole. */
export type BackupRefusal =
  | "backup-empty"
  | "backup-too-large"
  | "backup-too-many-lines"
  | "backup-encoding"
  | "backup-not-text"
  | "backup-not-ours"
  | "backup-newer"
  | "backup-unreadable";

/** What the first line of a file says. */
export interface Header {
  /** Epoch ms; 0 where it does not say. */
  readonly madeAt: number;
  /** Lines after the first. */
  readonly lines: number;
  readonly sha256: string;
}

/** The first line of a file. */
export const headerLine = (header: Header, app: string): string => {
  const { madeAt, lines, sha256 } = header;
  return JSON.stringify({ format: FORMAT, version: VERSION, madeAt, app, lines, sha256 });
};

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

const startsWith = (bytes: Uint8Array, ...start: readonly number[]): boolean =>
  start.every((byte, at) => bytes[at] === byte);

/** UTF-16 begins with a mark of its own, or has a NUL beside every letter. */
const isUtf16 = (bytes: Uint8Array): boolean =>
  startsWith(bytes, 0xff, 0xfe) ||
  startsWith(bytes, 0xfe, 0xff) ||
  (bytes[0] === 0) !== (bytes[1] === 0);

/** Text without a byte order mark; nothing where the bytes are not UTF-8. */
function textOf(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

const count = (value: unknown): number =>
  typeof value === "number" && Number.isSafeInteger(value) && value >= 0 ? value : 0;

/**
 * Reads the first line of a file.
 *
 * @param bytes - without its line end; a byte order mark is passed over
 */
export function readHeader(bytes: Uint8Array): Result<Header, BackupRefusal> {
  if (isUtf16(bytes)) return refused("backup-encoding");
  const text = textOf(bytes);
  if (text === undefined || text.includes("\0")) return refused("backup-not-text");
  const header = parsed(text);
  const version = field(header, "version");
  if (field(header, "format") !== FORMAT || typeof version !== "number" || !(version >= 1)) {
    return refused("backup-not-ours");
  }
  if (version > VERSION) return refused("backup-newer", { version });
  const lines = count(field(header, "lines"));
  if (lines > MOST_LINES) return refused("backup-too-many-lines", { most: MOST_LINES });
  const sha256 = String(field(header, "sha256"));
  return { ok: true, value: { madeAt: count(field(header, "madeAt")), lines, sha256 } };
}
