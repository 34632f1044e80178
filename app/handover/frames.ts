import { base45Of, bytesOf } from "./base45.ts";

// One frame: which parcel, which part of how many, and its bytes. All signs fit a QR code's
// alphanumeric mode.
const MARK = "2P";
const FRAME = /^2P\/([0-9A-F]{8})\/([1-9]\d{0,3})\/([1-9]\d{0,3})\/(.*)$/su;

/**
 * Bytes of a part. With its head a frame then fills a QR code of version 15 at medium correction,
 * which a phone reads off another's screen at arm's length.
 *
 * @source capacity of version 15-M: 412 bytes (ISO/IEC 18004), 600 alphanumeric signs
 */
export const PART_BYTES = 380;
/** More frames than this take minutes to show: a file does better. Judgement. */
export const MOST_FRAMES = 120;

/** The frames of a parcel, to be shown one after another, over and over, in any order. */
export function framesOf(bytes: Uint8Array, id: string): readonly string[] {
  const count = Math.max(1, Math.ceil(bytes.length / PART_BYTES));
  return Array.from({ length: count }, (_, at) => {
    const part = bytes.subarray(at * PART_BYTES, (at + 1) * PART_BYTES);
    return `${MARK}/${id}/${at + 1}/${count}/${base45Of(part)}`;
  });
}

/** What has been read of a parcel so far. */
export interface Gathered {
  readonly id: string;
  readonly count: number;
  readonly parts: ReadonlyMap<number, Uint8Array<ArrayBuffer>>;
}

/**
 * Takes one more frame.
 *
 * @param text - as read off the other phone
 * @returns the very same where it is no frame of ours, or was read before; a frame of another parcel
 *   begins anew, for that is what is being shown
 */
export function gather(so: Gathered | undefined, text: string): Gathered | undefined {
  const [, id = "", number, total, body = ""] = FRAME.exec(text) ?? [];
  const [at, count] = [Number(number), Number(total)];
  const part = id === "" || at > count || count > MOST_FRAMES ? undefined : bytesOf(body);
  if (part === undefined) return so;
  const same = so !== undefined && so.id === id && so.count === count;
  if (same && so.parts.has(at)) return so;
  const parts = new Map(same ? so.parts : []);
  return { id, count, parts: parts.set(at, part) };
}

/** The whole parcel, once every frame was read. */
export function wholeOf({ count, parts }: Gathered): Uint8Array<ArrayBuffer> | undefined {
  if (parts.size < count) return undefined;
  const all = Array.from({ length: count }, (_, at) => [...(parts.get(at + 1) ?? [])]);
  return Uint8Array.from(all.flat());
}
