// Runs a TypeScript program of the tests: node tests/support/tool/run.mjs <file.ts> [arguments].
// Node 20 reads no TypeScript, and vite, which is here anyway, does.
import { resolve } from "node:path";
import { runnerImport } from "vite";

const [, , file] = process.argv;
if (!file) throw new RangeError("run.mjs expected a TypeScript file to run");
process.argv.splice(1, 1);
await runnerImport(resolve(file), { configFile: false, logLevel: "error" });
