import { later } from "../../later.tsx";

/** The invented history's offer, fetched where it is shown: its story is nothing to load beforehand. */
export const DemoHistory = later(async () => (await import("./offer.tsx")).DemoHistory);
