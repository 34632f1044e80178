/**
 * Letters that no decomposition takes apart, as they are typed without them.
 *
 * @source judgement: what names of drinks and people in Europe need
 */
const SPELLED: Readonly<Record<string, string>> = {
  ø: "o",
  œ: "oe",
  æ: "ae",
  ß: "ss",
  ł: "l",
  đ: "d",
  ð: "d",
  þ: "th",
  ı: "i",
};

/**
 * A text as names are compared: small letters without their marks. Spaces and signs stay.
 *
 * @param text - as typed
 * @example
 * plainLetters("Crème  BRÛLÉE").indexOf("brulee") // => 7
 */
export const plainLetters = (text: string): string =>
  text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[øœæßłđðþı]/gu, (letter) => SPELLED[letter] ?? letter);
