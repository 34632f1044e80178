import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

const NOT_OURS = new Set(["node_modules", "dist", ".git", ".cache", "shots"]);
const BINARY = /\.(?:png|woff2|wav|y4m|mjpeg|log)$/;

const filesIn = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true })
    .filter(({ name }) => !NOT_OURS.has(name))
    .flatMap((entry) => {
      const path = join(folder, entry.name);
      return entry.isDirectory() ? filesIn(path) : [path];
    });

const texts = filesIn(".")
  .filter((path) => !BINARY.test(path))
  .map((path) => ({ path, text: readFileSync(path, "utf8") }));

const found = (pattern: RegExp): string[] =>
  texts.flatMap(({ path, text }) =>
    [...text.matchAll(pattern)].map(([hit]) => `${path}: ${hit.trim()}`),
  );

// Written in pieces, so that this file does not find itself.
const FOLDERS = ["home", "Users", "work", "root", "tmp", "mnt", "private", "workspace"].join("|");

test("the search saw the project", () => {
  const paths = texts.map(({ path }) => path);
  expect(paths).toEqual(
    expect.arrayContaining(["package-lock.json", "vite.config.ts", join("app", "index.html")]),
  );
});

test("no file names a folder of someone's machine", () => {
  const unix = new RegExp(`(?<![\\w.:/<-])/(?:${FOLDERS})/[\\w.]+`, "g");
  expect("see /tmp".concat("/x.ts").match(unix)).toHaveLength(1);
  expect(found(unix)).toEqual([]);
  expect(found(/\b[A-Z]:\\+Users\\+\w+/g)).toEqual([]);
  expect(found(/file:\/\/\/\w+/g)).toEqual([]);
});

test("no file names a package registry", () => {
  const registry = /\bregistry[.][\w.-]+|\bnpm[.]pkg[.]\w+|https?:\/\/[\w.:-]+\/[\w./-]+\.tgz/g;
  expect(`https://${"registry"}.example.org`.match(registry)).toHaveLength(1);
  expect(found(registry)).toEqual([]);
});

test("the lock file keeps no download address", () => {
  const lock = texts.find(({ path }) => path === "package-lock.json")?.text ?? "";
  expect(lock).toContain('"integrity"');
  expect(lock).not.toContain('"resolved"');
});
