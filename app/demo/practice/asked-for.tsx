import { later } from "../../later.tsx";

/** The practice's offer, fetched where it is shown. */
export const Practise = later(async () => (await import("./offer.tsx")).Practise);
