// Finds the Chromium that the browser tests drive; on Debian, as root, installs it. Node built-ins
// only. `CHROMIUM_PATH` names one to use instead.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { pathToFileURL } from "node:url";

const NAMES = [
  "chromium",
  "chromium-browser",
  "google-chrome",
  "google-chrome-stable",
  "chrome",
  "microsoft-edge",
];

/** @type {Partial<Record<string, readonly string[]>>} */
const USUAL_PLACES = {
  darwin: ["Google Chrome", "Chromium", "Microsoft Edge"].flatMap((name) => [
    `/Applications/${name}.app/Contents/MacOS/${name}`,
    join(process.env.HOME ?? "", `Applications/${name}.app/Contents/MacOS/${name}`),
  ]),
  win32: ["PROGRAMFILES", "PROGRAMFILES(X86)", "LOCALAPPDATA"]
    .map((name) => process.env[name])
    .filter((folder) => folder !== undefined)
    .flatMap((folder) => [
      join(folder, "Google", "Chrome", "Application", "chrome.exe"),
      join(folder, "Chromium", "Application", "chrome.exe"),
      join(folder, "Microsoft", "Edge", "Application", "msedge.exe"),
    ]),
};

const onPath = () =>
  (process.env.PATH ?? "")
    .split(delimiter)
    .flatMap((folder) => NAMES.map((name) => join(folder, name)));

/**
 * The browser's program, or undefined when none is found.
 *
 * @returns {string | undefined}
 */
export function findBrowser() {
  const named = process.env.CHROMIUM_PATH;
  if (named) return existsSync(named) ? named : undefined;
  return [...(USUAL_PLACES[process.platform] ?? []), ...onPath()].find((path) => existsSync(path));
}

function installOnDebian() {
  if (process.getuid?.() !== 0 || !existsSync("/etc/debian_version")) return;
  console.log("No Chromium found: installing Debian's.");
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  for (const order of [["update"], ["install", "-y", "--no-install-recommends", "chromium"]]) {
    if (spawnSync("apt-get", order, { stdio: "inherit", env }).status !== 0) return;
  }
}

function runAsCommand() {
  if (!findBrowser() && !process.env.CHROMIUM_PATH) installOnDebian();
  const browser = findBrowser();
  if (browser) {
    console.log(`Browser for the tests: ${browser}`);
    return;
  }
  console.error(
    process.env.CHROMIUM_PATH
      ? `CHROMIUM_PATH names ${process.env.CHROMIUM_PATH}, and there is no such file.`
      : "The browser tests need Chromium, Chrome or Edge: install one, or set CHROMIUM_PATH to it.",
  );
  process.exitCode = 1;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) runAsCommand();
