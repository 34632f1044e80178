import fc from "fast-check";
import { expect, test } from "vitest";
import { base45Of, bytesOf } from "../../../app/handover/base45.ts";

const bytes = (text: string) => new TextEncoder().encode(text);

// The examples of RFC 9285, sections 4.3 and 4.4.
test.each([
  ["AB", "BB8"],
  ["Hello!!", "%69 VD92EX0"],
  ["base-45", "UJCLQE7W581"],
  ["ietf!", "QED8WEX0"],
])("%s is %s", (plain, text) => {
  expect(base45Of(bytes(plain))).toBe(text);
  expect(bytesOf(text)).toEqual(bytes(plain));
});

// RFC 9285, section 6: values that no bytes have, and a length that cannot be.
test.each(["GGW", "::", "A", "AB8C", "bb8", "BÄ8"])("%s is no such text", (text) => {
  expect(bytesOf(text)).toBeUndefined();
});

test("any bytes come back", () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 400 }), (some) => {
      expect(bytesOf(base45Of(some))).toEqual(Uint8Array.from(some));
    }),
  );
});
