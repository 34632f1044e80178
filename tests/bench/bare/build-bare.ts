import { resolve } from "node:path";
import { build } from "vite";
import { VitePWA } from "vite-plugin-pwa";

const TARGETS = ["es2022", "safari16.4"];

/** Builds the bare page, the floor of what is measured, into a folder; it is never shipped. */
export async function buildBare(into: string): Promise<void> {
  const before = process.env.NODE_ENV;
  // What runs the benches sets it for itself, and the page would be built for a developer.
  process.env.NODE_ENV = "production";
  try {
    await build({
      configFile: false,
      root: resolve("tests/bench/bare"),
      base: "./",
      logLevel: "error",
      build: {
        outDir: resolve(into),
        emptyOutDir: true,
        target: TARGETS,
        modulePreload: { polyfill: false },
        reportCompressedSize: false,
      },
      plugins: [
        VitePWA({
          strategies: "injectManifest",
          srcDir: ".",
          filename: "service-worker.ts",
          injectRegister: false,
          injectManifest: {
            rollupFormat: "iife",
            target: TARGETS,
            globPatterns: ["**/*.{js,css,html}"],
            globIgnores: ["service-worker.js"],
          },
          manifest: { name: "A bare page", short_name: "Bare", start_url: "./", icons: [] },
        }),
      ],
    });
  } finally {
    if (before === undefined) Reflect.deleteProperty(process.env, "NODE_ENV");
    else process.env.NODE_ENV = before;
  }
}
