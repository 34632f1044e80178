import { spawnSync } from "node:child_process";
import { build } from "vite";
import { sourcesHash, stampedHash } from "./build-stamp.mjs";

/** Builds the page into a folder; `version` stands in for the real one, to make two that differ. */
export function buildApp({ into, version }: { into?: string; version?: string } = {}): void {
  // The test runner's NODE_ENV would give a development build.
  const { NODE_ENV: _, ...env } = process.env;
  const args = ["node_modules/vite/bin/vite.js", "build", "--logLevel", "warn"];
  const { status, stderr, stdout } = spawnSync(
    process.execPath,
    into ? [...args, "--outDir", into] : args,
    { env: version ? { ...env, SECOND_POUR_VERSION: version } : env, encoding: "utf8" },
  );
  if (status !== 0) throw new Error(`the build failed\n${stdout}\n${stderr}`);
}

/** Puts tests/support/tool/update-probe.ts beside a build made with the same version. */
export async function buildProbe({ into, version }: { into: string; version: string }) {
  await build({
    configFile: false,
    publicDir: false,
    logLevel: "warn",
    define: {
      __APP_VERSION__: JSON.stringify(version),
      "process.env.NODE_ENV": JSON.stringify("production"),
    },
    build: {
      outDir: into,
      emptyOutDir: false,
      lib: { entry: "tests/support/tool/update-probe.ts", formats: ["es"], fileName: "probe" },
    },
  });
}

/** Vitest's global set-up for the projects that look at the built app. */
export function setup(): void {
  if (stampedHash() !== sourcesHash()) buildApp();
}
