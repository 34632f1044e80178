// A rule nobody saw go red may be no rule at all. A copy of our configuration is set over a small
// sound house, which must pass, and over the same house with one breach of every rule.
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import layers from "../../.dependency-cruiser.cjs";
import biome from "../../biome.json";
import {
  LAYER_BREACHES,
  LINT_BREACHES,
  SOUND_HOUSE,
  TYPE_BREACHES,
} from "../support/tool/breaches-table.ts";

const folder = mkdtempSync(join(tmpdir(), "second-pour-planted-"));
const sound = join(folder, "sound");
const breached = join(folder, "breached");
// On its own: a module that imports the page's packages brings the page's types into core.
const mistyped = join(folder, "mistyped");
const TSCONFIGS = ["tsconfig.base.json", "core/tsconfig.json"];
const PLUGINS = biome.overrides.flatMap((part) => ("plugins" in part ? (part.plugins ?? []) : []));
const CONFIGURATION = [".dependency-cruiser.cjs", "biome.json", ...PLUGINS, ...TSCONFIGS];

const write = (path: string, text: string): void => {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
};

function build(house: string, breaches: readonly (readonly [string, string, string])[]): void {
  for (const [path, text] of Object.entries(SOUND_HOUSE)) write(join(house, path), text);
  for (const [, path, text] of breaches) write(join(house, path), text);
  for (const path of CONFIGURATION) write(join(house, path), readFileSync(path, "utf8"));
  symlinkSync(resolve("node_modules"), join(house, "node_modules"), "dir");
  write(
    join(house, "layers.cjs"),
    `const ours = require("./.dependency-cruiser.cjs");
// The packages are a link here, and must look as if they were not.
module.exports = { ...ours, options: { ...ours.options, preserveSymlinks: true } };`,
  );
}

beforeAll(() => {
  build(sound, []);
  build(breached, [...LAYER_BREACHES, ...LINT_BREACHES]);
  build(mistyped, TYPE_BREACHES);
});
afterAll(() => rmSync(folder, { recursive: true }));

function run(cwd: string, program: string, ...args: readonly string[]): string {
  const { stdout } = spawnSync(resolve("node_modules/.bin", program), args, {
    cwd,
    encoding: "utf8",
    maxBuffer: 64_000_000,
    shell: process.platform === "win32",
  });
  return stdout;
}

const missing = (breaches: readonly (readonly [string, string, string])[], seen: Set<string>) =>
  breaches.map(([rule, path]) => `${rule} ${path}`).filter((breach) => !seen.has(breach));

const unplanted = (
  rules: readonly string[],
  breaches: readonly (readonly [string, ...unknown[]])[],
) => rules.filter((rule) => !breaches.some(([planted]) => planted === rule));

describe("the layers", () => {
  function violations(cwd: string) {
    const args = ["--config", "layers.cjs", "--output-type", "json"];
    const { summary } = JSON.parse(
      run(cwd, "depcruise", ...args, "app", "core", "service-worker", "tests"),
    );
    return {
      cruised: summary.totalCruised,
      seen: summary.violations.map(
        ({ rule, from, to }: { rule: { name: string }; from: string; to: string }) =>
          `${rule.name} ${rule.name === "no-dead-module" ? to : from}`,
      ),
    };
  }

  test("pass a sound house", () => {
    const { cruised, seen } = violations(sound);
    expect(seen).toEqual([]);
    expect(cruised).toBeGreaterThan(15);
  });

  test("see a breach of every rule", () => {
    expect(
      unplanted(layers.forbidden?.map(({ name }) => name ?? "nameless") ?? [], LAYER_BREACHES),
    ).toEqual([]);
    expect(missing(LAYER_BREACHES, new Set(violations(breached).seen))).toEqual([]);
  });
});

describe("the lint", () => {
  interface Diagnostic {
    readonly category: string;
    readonly severity: string;
    readonly location: { readonly path: string };
  }
  function findings(cwd: string): readonly string[] {
    const out = run(cwd, "biome", "lint", "--reporter=json", "--max-diagnostics=none", ".");
    const { diagnostics }: { diagnostics: readonly Diagnostic[] } = JSON.parse(out);
    return diagnostics
      .filter(({ severity }) => severity === "error")
      .map(({ category, location }) => `${category.replace(/.*\//, "")} ${location.path}`);
  }
  // A plugin's finding does not name the plugin: each is planted in files of its own.
  const breaches = LINT_BREACHES.map(
    ([rule, path, text]) => [rule.endsWith(".grit") ? "plugin" : rule, path, text] as const,
  );

  test("passes a sound house", () => {
    expect(findings(sound)).toEqual([]);
  });

  test("sees a breach of every rule and plugin", () => {
    const parts = [biome, ...biome.overrides];
    const rules = parts.flatMap((part) =>
      "linter" in part
        ? Object.values(part.linter.rules).flatMap((group) =>
            typeof group === "string"
              ? []
              : Object.entries(group).flatMap(([rule, level]) => (level === "off" ? [] : [rule])),
          )
        : [],
    );
    const plugins = PLUGINS.map((path) => path.replace(/.*\//, ""));
    expect(unplanted([...rules, ...plugins], LINT_BREACHES)).toEqual([]);
    expect(missing(breaches, new Set(findings(breached)))).toEqual([]);
  });
});

describe("the compiler", () => {
  const errors = (cwd: string) =>
    run(cwd, "tsc", "-p", "core", "--noEmit", "--composite", "false", "--incremental", "false")
      .split("\n")
      .flatMap((line) => {
        const [, path, code] = /^(\S+?)\(\d+,\d+\): error (TS\d+)/.exec(line) ?? [];
        return path && code ? [`${code} ${path}`] : [];
      });

  test("passes a sound core", () => {
    expect(errors(sound)).toEqual([]);
  });

  test("sees what core may not know, and what strictness forbids", () => {
    expect(missing(TYPE_BREACHES, new Set(errors(mistyped)))).toEqual([]);
  });
});
