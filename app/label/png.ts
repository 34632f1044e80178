const DOTS_A_METRE = (dotsAnInch: number): number => Math.round(dotsAnInch / 0.0254);

/** @source the PNG specification, annex D: CRC of the polynomial of ISO 3309 */
function crcOf(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}

/** Says how large a picture is: the same number of dots a metre both ways. */
function sizeChunk(dotsAnInch: number): Uint8Array<ArrayBuffer> {
  const chunk = new Uint8Array(21);
  const view = new DataView(chunk.buffer);
  view.setUint32(0, 9);
  chunk.set(new TextEncoder().encode("pHYs"), 4);
  view.setUint32(8, DOTS_A_METRE(dotsAnInch));
  view.setUint32(12, DOTS_A_METRE(dotsAnInch));
  chunk[16] = 1;
  view.setUint32(17, crcOf(chunk.subarray(4, 17)));
  return chunk;
}

/** After the signature (8 bytes) and the head (25). */
const AFTER_HEAD = 33;

/**
 * A PNG that says its size on paper, so that it prints as large as it was drawn.
 *
 * @source PNG specification, 11.3.4.3 pHYs: before the first IDAT, unit 1 is the metre
 */
export function withSize(png: Uint8Array, dotsAnInch: number): Uint8Array<ArrayBuffer> {
  const chunk = sizeChunk(dotsAnInch);
  const sized = new Uint8Array(png.length + chunk.length);
  sized.set(png.subarray(0, AFTER_HEAD), 0);
  sized.set(chunk, AFTER_HEAD);
  sized.set(png.subarray(AFTER_HEAD), AFTER_HEAD + chunk.length);
  return sized;
}
