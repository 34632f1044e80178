// Programs that know nothing of this project and read what it prints: Debian's poppler-utils (PDF)
// and zbar-tools (codes). On Debian, as root, they are installed where they are missing.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { type Paper, placeOf, places } from "../../../core/label/paper.ts";

const PROGRAMS = ["pdfinfo", "pdftoppm", "pdftotext", "zbarimg"] as const;
type Program = (typeof PROGRAMS)[number];

const there = (program: Program): boolean =>
  spawnSync(program, [program === "zbarimg" ? "--version" : "-v"], { stdio: "pipe" }).status === 0;

/** Sees to it that the programs are there; throws where they are not and cannot be installed. */
export function needPaperTools(): void {
  if (PROGRAMS.every(there)) return;
  if (process.getuid?.() === 0 && existsSync("/etc/debian_version")) {
    const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
    const install = ["install", "-y", "--no-install-recommends", "poppler-utils", "zbar-tools"];
    for (const order of [["update"], install]) spawnSync("apt-get", order, { env });
  }
  const missing = PROGRAMS.filter((program) => !there(program));
  if (missing.length > 0) {
    throw new Error(`install poppler-utils and zbar-tools: there is no ${missing.join(", ")}`);
  }
}

function run(program: Program, args: readonly string[]): string {
  const { status, stdout, stderr } = spawnSync(program, args, { encoding: "utf8" });
  // zbarimg ends with 4 where it sees no code.
  if (status !== 0 && !(program === "zbarimg" && status === 4)) {
    throw new Error(`${program} ${args.join(" ")}: ${stderr}`);
  }
  return stdout;
}

const MM = 25.4 / 72;

/** How many pages a PDF has, and how large each is, mm. */
export function pagesIn(
  file: string,
): readonly { readonly width: number; readonly height: number }[] {
  const told = run("pdfinfo", ["-f", "1", "-l", "1000", file]);
  return [...told.matchAll(/^Page +\d+ size: +([\d.]+) x ([\d.]+) pts/gmu)].map((found) => ({
    width: Number(found[1]) * MM,
    height: Number(found[2]) * MM,
  }));
}

/** A piece of a page, mm from its top left. */
export interface Piece {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Draws a piece of a page of a PDF, from 1, at 300 dots an inch; the picture's path. */
export function drawPiece(file: string, page: number, piece: Piece): string {
  const dots = (mm: number): string => String(Math.round((mm * 300) / 25.4));
  const { x, y, width, height } = piece;
  const into = `${file}-${page}-${dots(x)}-${dots(y)}`;
  const cut = ["-x", dots(x), "-y", dots(y), "-W", dots(width), "-H", dots(height)];
  const only = ["-f", String(page), "-l", String(page), "-singlefile"];
  run("pdftoppm", ["-r", "300", "-png", ...only, ...cut, file, into]);
  return `${into}.png`;
}

/** What the codes in a picture say, in no certain order. */
export const codesIn = (picture: string): readonly string[] =>
  run("zbarimg", ["-q", "--raw", "-Sdisable", "-Sqrcode.enable", picture])
    .split("\n")
    .filter((line) => line !== "");

/** A word of a PDF with its place, mm from the top left of its page. */
export interface PrintedWord {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
}

const ENTITIES: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  apos: "'",
};

/** The words of the first page of a PDF, where a reader finds them. */
export function wordsIn(file: string): readonly PrintedWord[] {
  const told = run("pdftotext", ["-bbox", "-l", "1", file, "-"]);
  const word =
    /<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">(.*)<\/word>/gu;
  return [...told.matchAll(word)].map(([, left, top, right, foot, text = ""]) => ({
    text: text.replace(/&(\w+);/gu, (whole, name) => ENTITIES[name] ?? whole),
    left: Number(left) * MM,
    right: Number(right) * MM,
    top: Number(top) * MM,
    foot: Number(foot) * MM,
  }));
}

/** What the codes of so many labels say, each looked at by itself, the first at a place from 0. */
export const codesOn = (
  file: string,
  paper: Paper,
  count: number,
  first = 0,
): readonly string[][] =>
  places(paper, count, first).map(({ page, at }) => {
    const piece = { ...placeOf(paper, at), width: paper.width, height: paper.height };
    return [...codesIn(drawPiece(file, page + 1, piece))];
  });
