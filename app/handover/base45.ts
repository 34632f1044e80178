// The characters of a QR code's alphanumeric mode, in which two take 11 bits.
const SIGNS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";
const BASE = SIGNS.length;

const signs = (value: number, count: number): string => {
  let rest = value;
  let out = "";
  for (let sign = 0; sign < count; sign += 1) {
    out += SIGNS[rest % BASE] ?? "";
    rest = Math.floor(rest / BASE);
  }
  return out;
};

/** Bytes as text: three signs for two bytes, two for a last one. @source RFC 9285 */
export function base45Of(bytes: Uint8Array): string {
  let out = "";
  for (let at = 0; at < bytes.length; at += 2) {
    const [high = 0, low] = bytes.subarray(at, at + 2);
    out += low === undefined ? signs(high, 2) : signs(high * 256 + low, 3);
  }
  return out;
}

/** Bytes of such a text; nothing where it is none. @source RFC 9285 */
export function bytesOf(text: string): Uint8Array<ArrayBuffer> | undefined {
  const values = [...text].map((sign) => SIGNS.indexOf(sign));
  if (values.some((value) => value < 0) || text.length % 3 === 1) return undefined;
  const out: number[] = [];
  for (let at = 0; at < values.length; at += 3) {
    const [a = 0, b = 0, c] = values.slice(at, at + 3);
    const value = a + b * BASE + (c ?? 0) * BASE * BASE;
    if (value > (c === undefined ? 0xff : 0xffff)) return undefined;
    if (c !== undefined) out.push(value >> 8);
    out.push(value & 0xff);
  }
  return Uint8Array.from(out);
}
