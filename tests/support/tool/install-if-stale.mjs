// Installs the packages of package-lock.json when they are not the ones in node_modules, so that
// `npm start` and `npm test` work on a fresh clone and after a pull. Node built-ins only.
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";

/**
 * @param {string} path
 * @returns {Record<string, { version?: string, optional?: boolean }>}
 */
function packagesIn(path) {
  try {
    return JSON.parse(readFileSync(path, "utf8")).packages;
  } catch {
    return {};
  }
}

const wanted = packagesIn("package-lock.json");
const installed = packagesIn("node_modules/.package-lock.json");
// A package for another kind of machine is in the lock and rightly not installed.
const stale = Object.entries(wanted).filter(
  ([path, { version, optional }]) =>
    path !== "" && !optional && installed[path]?.version !== version,
);

if (stale.length > 0) {
  console.log(`Packages missing or of another version: ${stale.length}. Running npm ci.`);
  const { status } = spawnSync("npm", ["ci", "--include=dev"], {
    stdio: "inherit",
    shell: process.platform === "win32",
  });
  process.exitCode = status ?? 1;
}
