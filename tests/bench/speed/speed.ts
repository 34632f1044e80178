// How fast the built app is, against a bare page of the same make: npm run speed
// Only some of it: npm run speed -- sizes start input shift awake lighthouse
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setup } from "../../support/tool/build.ts";
import { serveApp } from "../../support/tool/server.ts";
import { buildBare } from "../bare/build-bare.ts";
import { awake } from "./awake.ts";
import { closeReport } from "./figures.ts";
import { input } from "./input.ts";
import { lighthouse } from "./lighthouse.ts";
import { shift } from "./shift.ts";
import { sizes } from "./sizes.ts";
import { starts } from "./start.ts";

const asked = process.argv.slice(2);
const wants = (part: string) => asked.length === 0 || asked.includes(part);

setup();
const folder = mkdtempSync(join(tmpdir(), "second-pour-bare-"));
try {
  await buildBare(folder);
  const app = await serveApp({ gzip: true });
  const bare = await serveApp({ folder, gzip: true });
  if (wants("sizes")) sizes("dist", folder);
  if (wants("start")) await starts(app, bare);
  if (wants("input")) await input(app);
  if (wants("awake")) await awake(app, bare);
  if (wants("shift")) await shift(app, bare);
  if (wants("lighthouse")) await lighthouse(app);
  closeReport();
  await app.stop();
  await bare.stop();
} finally {
  rmSync(folder, { recursive: true, force: true });
}
