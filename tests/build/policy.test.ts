import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

const page = readFileSync("dist/index.html", "utf8");

/** Fetch directives fall back on `default-src`; the others allow everything where they are missing. */
const FETCHES = [
  ...["child-src", "connect-src", "font-src", "frame-src", "img-src", "manifest-src"],
  ...["media-src", "object-src", "script-src", "script-src-attr", "script-src-elem"],
  ...["style-src", "style-src-attr", "style-src-elem", "worker-src"],
] as const;

const tags = [...page.matchAll(/<meta\b[^>]*http-equiv="Content-Security-Policy"[^>]*>/gi)];
const policy = /\bcontent="([^"]*)"/.exec(tags[0]?.[0] ?? "")?.[1] ?? "";
const directives = new Map(
  policy.split(";").map((part) => {
    const [name = "", ...sources] = part.trim().split(/\s+/);
    return [name, sources];
  }),
);
const allowed = (name: string): readonly string[] | undefined =>
  directives.get(name) ??
  directives.get(name.replace(/-(?:attr|elem)$/, "")) ??
  directives.get("default-src");

test("the built page has one policy, before anything that it has to rule", () => {
  expect(tags).toHaveLength(1);
  const at = page.indexOf(tags[0]?.[0] ?? "");
  expect(at).toBeGreaterThan(0);
  // What stands above a policy in a page is not under it.
  expect(page.slice(0, at)).not.toMatch(/<(?:script|link|style|img|base)\b/i);
});

test("nothing is allowed but our own files, and what the page made itself", () => {
  const all = [...directives.values()].flat();
  expect(new Set(all)).toEqual(new Set(["'none'", "'self'", "data:", "blob:"]));
  expect(allowed("default-src")).toEqual(["'none'"]);
  for (const name of ["script-src", "script-src-elem", "script-src-attr", "worker-src"]) {
    expect([name, allowed(name)]).toEqual([name, ["'self'"]]);
  }
  for (const name of ["style-src", "connect-src", "font-src", "manifest-src"]) {
    expect([name, allowed(name)]).toEqual([name, ["'self'"]]);
  }
  for (const name of ["object-src", "frame-src", "child-src", "base-uri", "form-action"]) {
    expect([name, allowed(name)]).toEqual([name, ["'none'"]]);
  }
  // Those that do not fall back must be written down.
  expect(directives.has("base-uri") && directives.has("form-action")).toBe(true);
});

test("no directive is misspelt, for a browser passes over what it does not know", () => {
  const known = [...FETCHES, "default-src", "base-uri", "form-action", "require-trusted-types-for"];
  expect([...directives.keys()].filter((name) => !known.includes(name))).toEqual([]);
});

test("the page needs nothing that its policy forbids, and no path but its own", () => {
  expect(page).not.toMatch(/<style\b|\sstyle=|\son[a-z]+=|javascript:/i);
  for (const [, attributes = "", text = ""] of page.matchAll(/<script\b([^>]*)>([^<]*)/gi)) {
    expect(attributes).toMatch(/\bsrc="\.\//);
    expect(text).toBe("");
  }
  const addresses = [...page.matchAll(/\b(?:src|href)="([^"]*)"/g)].map(([, one]) => one ?? "");
  expect(addresses.length).toBeGreaterThan(3);
  // Relative, so that it works on any host and below any path.
  expect(addresses.filter((one) => !/^(?:\.\/)?[\w-]/.test(one) || one.includes(":"))).toEqual([]);
});

test("no built script makes code out of text", () => {
  const folder = join("dist", "assets");
  const scripts = readdirSync(folder).filter((name) => name.endsWith(".js"));
  expect(scripts.length).toBeGreaterThan(10);
  const makes = /\beval\(|\bnew Function\b|\bimportScripts\(|\.write(?:ln)?\(["'`]</;
  const found = [...scripts.map((name) => join(folder, name)), join("dist", "service-worker.js")]
    .map((path) => ({ path, text: readFileSync(path, "utf8") }))
    .filter(({ text }) => makes.test(text));
  expect(found.map(({ path, text }) => `${path}: ${makes.exec(text)?.[0]}`)).toEqual([]);
});

const sources = import.meta.glob<string>("../../{app,core,service-worker}/**/*.{ts,tsx}", {
  query: "?raw",
  import: "default",
  eager: true,
});

test("our own code never turns text into markup or code", () => {
  expect(Object.keys(sources).length).toBeGreaterThan(300);
  const turns =
    /dangerouslySetInnerHTML|\b(?:innerHTML|outerHTML|srcdoc)\b|insertAdjacentHTML|createContextualFragment|\bDOMParser\b|document\.write|\beval\(|new Function\b|setTimeout\(\s*["'`]|javascript:/;
  // Reading what the page itself has drawn turns nothing into anything.
  const reads = /\.(?:inner|outer)HTML(?=[;,)]|\.replace\()/g;
  const found = Object.entries(sources).flatMap(([path, text]) => {
    const [turned] = turns.exec(text.replace(reads, "")) ?? [];
    return turned === undefined ? [] : [`${path}: ${turned}`];
  });
  expect(found).toEqual([]);
});
