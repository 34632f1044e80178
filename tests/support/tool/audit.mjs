// Asks the registry for known advisories on what is shipped. Red on a high or critical one; where
// the registry does not answer, it says so and is not red: a bad line is no fault of the code.
import { spawnSync } from "node:child_process";
import { pathToFileURL } from "node:url";

/** The longest the registry is waited for, ms. */
const PATIENCE = 60_000;
const GRAVE = ["high", "critical"];

/**
 * What `npm audit --json` says of packages with a high or critical advisory; nothing where what it
 * wrote is no report.
 *
 * @param {string} text
 * @returns {readonly string[] | undefined}
 */
export function graveIn(text) {
  try {
    const { auditReportVersion, vulnerabilities } = JSON.parse(text);
    if (typeof auditReportVersion !== "number" || typeof vulnerabilities !== "object") return;
    return Object.entries(vulnerabilities)
      .filter(([, { severity }]) => GRAVE.includes(severity))
      .map(([name, { severity }]) => `${name}: ${severity}`);
  } catch {
    return;
  }
}

function runAsCommand() {
  const { stdout } = spawnSync("npm", ["audit", "--omit=dev", "--json", "--fetch-retries=1"], {
    encoding: "utf8",
    timeout: PATIENCE,
    shell: process.platform === "win32",
  });
  const grave = graveIn(stdout ?? "");
  if (grave === undefined) {
    console.log("Advisories: not checked, the registry gave no report.");
    return;
  }
  console.log(`Advisories, high or critical, on what is shipped: ${grave.length}.`);
  for (const one of grave) console.error(one);
  if (grave.length > 0) process.exitCode = 1;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) runAsCommand();
