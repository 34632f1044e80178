import { expect, test } from "vitest";
import { errandAddress, errandOf } from "../../app/errand.ts";

test.each(["lemon verbena", "Gin 43 %", "a/b", "tilde ~ here", "crème de mûre", "50%25", "#?&"])(
  "an errand for %j comes back out of its address",
  (name) => {
    const errand = { ingredientId: "id-1", specKey: "new", name };
    const address = errandAddress(errand);
    expect(address).toMatch(/^#\/ingredient\/[^/#?]+$/u);
    expect(errandOf(decodeURIComponent(address.replace("#/ingredient/", "")))).toEqual(errand);
  },
);

test("an ingredient's own id is no errand", () => {
  expect(["new", "lemon-juice", "", "new~", "new~a"].map(errandOf)).toEqual([
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
});
