/** A parcel unpacks to no more than this, bytes: a small file may hold a huge one. */
const MOST_BYTES = 20_000_000;

async function through(
  bytes: Uint8Array<ArrayBuffer>,
  change: ReadableWritablePair<Uint8Array<ArrayBuffer>, BufferSource>,
): Promise<Uint8Array<ArrayBuffer>> {
  const reader = new Blob([bytes]).stream().pipeThrough(change).getReader();
  const chunks: Uint8Array<ArrayBuffer>[] = [];
  let size = 0;
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    size += next.value.length;
    if (size > MOST_BYTES) throw new RangeError(`a parcel holds at most ${MOST_BYTES} bytes`);
    chunks.push(next.value);
  }
  return new Uint8Array(await new Blob(chunks).arrayBuffer());
}

/** The parcel's own name: the first eight digits of its SHA-256. */
export async function nameOf(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const sum = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return [...sum.subarray(0, 4)]
    .map((byte) => byte.toString(16).padStart(2, "0"))
    .join("")
    .toUpperCase();
}

/** A text made small. */
export const packed = (text: string): Promise<Uint8Array<ArrayBuffer>> =>
  through(new TextEncoder().encode(text), new CompressionStream("gzip"));

/** The text of a parcel; nothing where it is damaged. */
export async function unpacked(bytes: Uint8Array<ArrayBuffer>): Promise<string | undefined> {
  try {
    const text = await through(bytes, new DecompressionStream("gzip"));
    return new TextDecoder("utf-8", { fatal: true }).decode(text);
  } catch {
    return undefined;
  }
}
