import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";

// In the tree itself: two trees may share their packages by a link.
const STAMP = ".cache/build-stamp";
const SOURCES = [
  "app",
  "core",
  "service-worker",
  "vite.config.ts",
  "package.json",
  "package-lock.json",
  "tsconfig.base.json",
];

/**
 * @param {string} path
 * @returns {string[]}
 */
const filesUnder = (path) =>
  statSync(path).isDirectory()
    ? readdirSync(path)
        .sort()
        .flatMap((name) => filesUnder(join(path, name)))
    : [path];

/** One figure for everything a build is made from. */
export function sourcesHash() {
  const hash = createHash("sha256");
  for (const path of SOURCES.flatMap(filesUnder)) hash.update(path).update(readFileSync(path));
  return hash.digest("hex");
}

/** What dist was last built from; empty when there is no dist, or its build did not finish. */
export function stampedHash() {
  try {
    statSync("dist/index.html");
    return readFileSync(STAMP, "utf8");
  } catch {
    return "";
  }
}

/**
 * Vite plugin: notes what `dist` was built from, so that a test run need not build it again.
 *
 * @returns {import("vite").Plugin}
 */
export function stampBuild() {
  let hash = "";
  let isDist = false;
  return {
    name: "stamp-build",
    apply: "build",
    configResolved(config) {
      isDist = resolve(config.root, config.build.outDir) === resolve("dist");
    },
    buildStart() {
      if (!isDist) return;
      // Hashed before the sources are read: a change made while building leaves the stamp stale.
      hash = sourcesHash();
      rmSync(STAMP, { force: true });
    },
    closeBundle: {
      order: "post",
      sequential: true,
      handler() {
        if (!isDist) return;
        mkdirSync(dirname(STAMP), { recursive: true });
        writeFileSync(STAMP, hash);
      },
    },
  };
}
