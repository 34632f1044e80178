import { readFileSync } from "node:fs";
import { build } from "vite";
import { expect, test } from "vitest";
import { graveIn } from "../support/tool/audit.mjs";

interface Locked {
  readonly version?: string;
  readonly integrity?: string;
  readonly resolved?: string;
  readonly link?: boolean;
}
interface Manifest {
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
}

const manifest: Manifest = JSON.parse(readFileSync("package.json", "utf8"));
const lock: { packages: Readonly<Record<string, Locked>> } = JSON.parse(
  readFileSync("package-lock.json", "utf8"),
);
const locked = Object.entries(lock.packages).filter(([path]) => path !== "");
const shipped = Object.keys(manifest.dependencies);
const direct = [...shipped, ...Object.keys(manifest.devDependencies)];

/** The names in the first column of the contributor guide's list; `-core` goes on from the name before. */
function listed(guide: string): readonly string[] {
  const [, part = ""] = guide.split(/^## Dependencies, and why$/m);
  const rows = (part.split(/^## /m)[0] ?? "").matchAll(/^\| (?!package|-)([^|]+) \|/gm);
  return [...rows].flatMap(([, cell = ""]) => {
    const names = cell.replace(/\([^)]*\)|`/g, "").split(",");
    const stem = names[0]?.trim().split("-")[0] ?? "";
    return names.map((one) => {
      const [name = ""] = one.trim().split(" ");
      return name.startsWith("-") ? stem + name : name;
    });
  });
}
const guide = listed(readFileSync("DEVELOPERS.md", "utf8"));

/** The packages of which something is in what is built from an entry. */
async function packagesIn(config: Parameters<typeof build>[0]): Promise<ReadonlySet<string>> {
  const found = new Set<string>();
  await build({
    ...config,
    logLevel: "silent",
    plugins: [
      {
        name: "note-packages",
        moduleParsed: ({ id }) => {
          const name = /.*\/node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(
            id.replaceAll("\\", "/"),
          )?.[1];
          if (name !== undefined) found.add(name);
        },
      },
    ],
  });
  return found;
}

const BARE = { configFile: false, mode: "production" } as const;
const DEFINE = { __APP_VERSION__: '"0.0.0-test"' };

test("the list was read: every package that is asked for by name has its reason there", () => {
  expect(guide).toEqual(
    expect.arrayContaining(["preact", "workbox-precaching", "playwright-core"]),
  );
  expect(direct.filter((name) => !guide.includes(name))).toEqual([]);
});

test("what is listed is asked for, or comes with what is", () => {
  const had = new Set(locked.map(([path]) => path.replace(/^.*node_modules\//, "")));
  expect(guide.filter((name) => !had.has(name))).toEqual([]);
});

test("every version is exact", () => {
  const all = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies });
  expect(all.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  const other = all.filter(
    ([name, version]) => lock.packages[`node_modules/${name}`]?.version !== version,
  );
  expect(other).toEqual([]);
});

test("every package is locked by its hash, and none by an address", () => {
  expect(locked.length).toBeGreaterThan(100);
  const hash = /^sha512-[A-Za-z0-9+/]{86}==$/;
  expect(
    locked.filter(([, { integrity = "" }]) => !hash.test(integrity)).map(([at]) => at),
  ).toEqual([]);
  expect(locked.filter(([, { resolved, link }]) => resolved !== undefined || link)).toEqual([]);
});

test("nothing reaches the phone but the packages on the list that are meant to", async () => {
  const page = await packagesIn({
    ...BARE,
    root: "app",
    define: DEFINE,
    build: { write: false, modulePreload: { polyfill: false } },
  });
  const worker = await packagesIn({
    ...BARE,
    publicDir: false,
    define: DEFINE,
    build: {
      write: false,
      lib: { entry: "service-worker/service-worker.ts", formats: ["iife"], name: "worker" },
    },
  });
  expect(page).toContain("preact");
  expect(worker).toContain("workbox-precaching");
  const all = [...new Set([...page, ...worker])].sort();
  expect(all.filter((name) => !guide.includes(name))).toEqual([]);
  // What is only for building and testing stays off the phone.
  const tools = new Set(Object.keys(manifest.devDependencies));
  expect(all.filter((name) => tools.has(name))).toEqual([]);
  // And what is said to be shipped is.
  expect(shipped.filter((name) => !all.includes(name))).toEqual([]);
});

test("a high or critical advisory is found in npm's report, and no report is no finding", () => {
  const report = (severity: string) =>
    JSON.stringify({ auditReportVersion: 2, vulnerabilities: { sieve: { severity } } });
  expect(graveIn(report("high"))).toEqual(["sieve: high"]);
  expect(graveIn(report("critical"))).toEqual(["sieve: critical"]);
  expect(graveIn(report("moderate"))).toEqual([]);
  expect(graveIn('{"message":"405 Method Not Allowed","error":{}}')).toBeUndefined();
  expect(graveIn("")).toBeUndefined();
});
