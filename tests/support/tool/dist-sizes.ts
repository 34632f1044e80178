import { readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { brotliCompressSync, gzipSync } from "node:zlib";

export interface FileSize {
  /** Inside dist, with forward slashes. */
  readonly path: string;
  readonly raw: number;
  readonly gzip: number;
  readonly brotli: number;
}

/** Bytes of every built file, as is and compressed. */
export function distSizes(folder = "dist"): readonly FileSize[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => {
      const path = join(entry.parentPath, entry.name);
      const data = readFileSync(path);
      return {
        path: relative(folder, path).split(sep).join("/"),
        raw: data.length,
        gzip: gzipSync(data, { level: 9 }).length,
        brotli: brotliCompressSync(data).length,
      };
    });
}

const inFolder = (folder: string, name: string) => readFileSync(join(folder, name), "utf8");

/** What the page runs before it can draw: the entry, and the chunks vite lists as its imports. */
export function initialScripts(folder = "dist"): readonly string[] {
  const tags = inFolder(folder, "index.html").matchAll(
    /<(?:script|link)\b[^>]*(?:type="module"|rel="modulepreload")[^>]*>/g,
  );
  return [...tags].map(([tag]) => tag.replace(/^.*(?:src|href)="\.\/([^"]+)".*$/, "$1"));
}

/** What the worker stores on the phone when it is installed. */
export function storedFiles(folder = "dist"): readonly string[] {
  const entries = inFolder(folder, "service-worker.js").matchAll(
    /[{,]"?url"?:["'`]([^"'`]+)["'`]/g,
  );
  return [...entries].map(([, url]) => url ?? "");
}

export const kilobytes = (bytes: number): string => (bytes / 1000).toFixed(1);
