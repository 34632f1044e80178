// What the built app weighs, in kB: npm run size
import { setup } from "../support/tool/build.ts";
import { distSizes, initialScripts, kilobytes, storedFiles } from "../support/tool/dist-sizes.ts";

setup();
const sizes = distSizes();
const stored = storedFiles();
const initial = initialScripts();
const groups = [
  ...sizes.map((size) => ({ name: size.path, files: [size] })),
  { name: "= initial scripts", files: sizes.filter(({ path }) => initial.includes(path)) },
  { name: "= stored on the phone", files: sizes.filter(({ path }) => stored.includes(path)) },
];
console.table(
  groups.map(({ name, files }) => {
    const sum = (of: "raw" | "gzip" | "brotli") =>
      kilobytes(files.reduce((total, file) => total + file[of], 0));
    return { name, raw: sum("raw"), gzip: sum("gzip"), brotli: sum("brotli") };
  }),
);
