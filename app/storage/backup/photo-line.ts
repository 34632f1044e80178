import * as z from "zod/mini";
import { moment } from "../../../core/run/event.ts";
import type { Checked } from "../checked.ts";
import type { StoredPhoto } from "../database.ts";

/** So many bytes become text in one go: a call takes only so many arguments. */
const PART = 8192;

/** Pictures a browser shows and that cannot hold a program. */
const MEDIA = ["image/jpeg", "image/png", "image/webp"] as const;
const BASE64 = /^(?:[A-Za-z0-9+/]{4})*(?:[A-Za-z0-9+/]{2}==|[A-Za-z0-9+/]{3}=)?$/u;

const id = z.string().check(z.minLength(1), z.maxLength(80));
const side = z.number().check(z.int(), z.gte(1), z.lte(20_000));

const photoSchema = z.object({
  id,
  runId: id,
  at: moment,
  type: z.enum(MEDIA),
  width: side,
  height: side,
  /** Its bytes: RFC 4648, section 4. */
  base64: z.string().check(z.regex(BASE64)),
});

function textOf(bytes: Uint8Array): string {
  let text = "";
  for (let at = 0; at < bytes.length; at += PART) {
    text += String.fromCharCode(...bytes.subarray(at, at + PART));
  }
  return btoa(text);
}

/** A stored picture as a line of a file says it; what is no picture goes as it is. */
export function photoLine(stored: object): object {
  if (!("bytes" in stored) || !(stored.bytes instanceof ArrayBuffer)) return stored;
  const { bytes, ...rest } = stored;
  return { ...rest, base64: textOf(new Uint8Array(bytes)) };
}

/** Reads a picture from a line of a file. */
export function photoOf(value: unknown): Checked<StoredPhoto> {
  const { data, error } = photoSchema.safeParse(value);
  if (data === undefined) return { success: false, error };
  const { base64, ...rest } = data;
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  return { success: true, data: { ...rest, bytes: bytes.buffer } };
}
