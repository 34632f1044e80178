/** A key of the number pad. */
export type NumberKey =
  | "0"
  | "1"
  | "2"
  | "3"
  | "4"
  | "5"
  | "6"
  | "7"
  | "8"
  | "9"
  | "mark"
  | "erase";

export type DecimalMark = "." | ",";

/** The figures people measure behind a bar have no more digits than this. */
const MOST_DIGITS = 7;

const digitsIn = (text: string): number => text.replace(/\D/g, "").length;

/** What stands in the field after one key; a key that makes no sense there changes nothing. */
export function enterKey(text: string, key: NumberKey, mark: DecimalMark): string {
  if (key === "erase") return text.slice(0, -1);
  if (key === "mark") return text.includes(mark) ? text : `${text === "" ? "0" : text}${mark}`;
  if (text === "0") return key;
  return digitsIn(text) >= MOST_DIGITS ? text : text + key;
}

/** The pad key a keyboard key stands for: either decimal mark is the one this place uses. */
export function keyFromKeyboard(key: string): NumberKey | null {
  switch (key) {
    case "0":
    case "1":
    case "2":
    case "3":
    case "4":
    case "5":
    case "6":
    case "7":
    case "8":
    case "9":
      return key;
    case ".":
    case ",":
      return "mark";
    case "Backspace":
    case "Delete":
      return "erase";
    default:
      return null;
  }
}
