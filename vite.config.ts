import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { defineConfig, type Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { stampBuild } from "./tests/support/tool/build-stamp.mjs";

const SLATE = "#14191d";
const TARGETS = ["es2022", "safari16.4"];

/** The package's version, with the commit where there is one; a test may name its own. */
function appVersion(): string {
  if (process.env.SECOND_POUR_VERSION) return process.env.SECOND_POUR_VERSION;
  const { version } = JSON.parse(readFileSync("package.json", "utf8"));
  try {
    const commit = execFileSync("git", ["rev-parse", "--short", "HEAD"], { stdio: "pipe" });
    return `${version}+${commit.toString().trim()}`;
  } catch {
    return version;
  }
}

/** The dev server injects its own inline scripts and styles, which the built page forbids. */
const relaxPolicyInDev: Plugin = {
  name: "relax-policy-in-dev",
  apply: "serve",
  transformIndexHtml: (html, { server }) =>
    server ? html.replace(/<meta\s+http-equiv="Content-Security-Policy"[^>]*>/, "") : html,
};

/**
 * Which stylesheet a page reads first depends on how its chunks were cut, and the first one read
 * orders the layers: so each says the order itself.
 */
const orderLayers: Plugin = {
  name: "order-layers",
  apply: "build",
  enforce: "post",
  generateBundle: (_, bundle) => {
    for (const file of Object.values(bundle)) {
      if (file.type !== "asset" || !file.fileName.endsWith(".css")) continue;
      file.source = `@layer tokens,base,parts,screens;${file.source}`;
    }
  },
};

const wantedPort = process.env.PORT;

export default defineConfig({
  root: "app",
  base: "./",
  define: { __APP_VERSION__: JSON.stringify(appVersion()) },
  build: {
    outDir: "../dist",
    emptyOutDir: true,
    target: TARGETS,
    // The policy in index.html allows no inline script, and every target knows modulepreload
    // or loads the chunk a moment later.
    // Once the worker has stored them, a link for each file costs a slow phone more than the wait;
    // but the large ones that most screens share are fetched beside a screen, not after it, and the
    // bundler's own few lines stand in a file of theirs, which the first screen's rows need.
    modulePreload: {
      polyfill: false,
      resolveDependencies: (_, files) =>
        files.filter((file) => /\.css$|-runtime-|[/](words|shared)-/.test(file)),
    },
    assetsInlineLimit: 0,
    reportCompressedSize: false,
    rollupOptions: {
      output: {
        codeSplitting: {
          groups: [
            { name: "first", tags: ["$initial"], priority: 2 },
            // What most screens use lies in two files: each file asked for costs a slow phone more
            // than its few hundred bytes, but lists and Kit need not wait for what works sums out.
            {
              name: "words",
              minShareCount: 5,
              test: /[/]app[/](words|parts|device|storage|commands|local-time)|[/]core[/](quantity|spec[/](find-ingredient|ingredient-line)|run[/]keepsakes|board[/]calendar)|date-fns/,
              priority: 0.5,
            },
            // Each of these is a few lines: together they are one file less than six.
            {
              name: "lines",
              minShareCount: 2,
              test: /[/]app[/](since-backup|photos|storage[/](photos|backup[/]since)|device[/](keeping|picture|speech)|parts[/]time-field|demo[/]history[/]asked-for)\./,
              priority: 0.7,
            },
            {
              name: "shared",
              minShareCount: 5,
              test: /[/](app|core|node_modules)[/]/,
              priority: 0,
            },
            {
              name: "bench",
              test: /screens\/bench\/rows|parts\/(column|status-line)|known-status|alarm\/status|core\/run\/second-watch|core\/board\/(bench|glass)|words\/(format|how-late|step-title)\.ts/,
              priority: 1,
            },
          ],
        },
      },
    },
  },
  preview: {
    host: "127.0.0.1",
    port: Number(wantedPort ?? 4173),
    strictPort: wantedPort !== undefined,
  },
  plugins: [
    relaxPolicyInDev,
    stampBuild(),
    orderLayers,
    VitePWA({
      strategies: "injectManifest",
      srcDir: "../service-worker",
      filename: "service-worker.ts",
      injectRegister: false,
      // The png glob below has them already; with both, icons would be stored twice.
      includeManifestIcons: false,
      injectManifest: {
        rollupFormat: "iife",
        target: TARGETS,
        globPatterns: ["**/*.{js,css,html,svg,png,woff2,wav,txt}"],
        globIgnores: ["robots.txt", "service-worker.js"],
      },
      manifest: {
        // Not "./": an id resolves against the origin, and must survive a move to a sub-path.
        id: "second-pour",
        name: "Second Pour",
        short_name: "Second Pour",
        description:
          "Dairy washes and long infusions, from spec to labelled bottle, with no signal and wet hands.",
        lang: "en",
        dir: "ltr",
        start_url: "./",
        scope: "./",
        display: "standalone",
        orientation: "portrait",
        background_color: SLATE,
        theme_color: SLATE,
        categories: ["food", "productivity", "utilities"],
        icons: [
          { src: "icon.svg", sizes: "any", type: "image/svg+xml", purpose: "any" },
          { src: "icon-192.png", sizes: "192x192", type: "image/png", purpose: "any" },
          { src: "icon-512.png", sizes: "512x512", type: "image/png", purpose: "any" },
          { src: "maskable-192.png", sizes: "192x192", type: "image/png", purpose: "maskable" },
          { src: "maskable-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
        ],
      },
    }),
  ],
});
