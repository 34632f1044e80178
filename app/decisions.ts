// What an act needs and a first look does not: fetched after the first screen stands.
export { decide } from "../core/run/decide.ts";
export { stampDrafts } from "../core/run/stamp.ts";
export { rebuildRecords, storedRecord } from "./storage/rebuild.ts";
