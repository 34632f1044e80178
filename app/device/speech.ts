/** Whether this phone can say something by itself. */
export type SpeechState = "ready" | "no-voice" | "absent";

/** What choosing needs to know of a voice. */
type VoiceFacts = Pick<SpeechSynthesisVoice, "lang" | "localService" | "default">;

const tagOf = (language: string): string => language.toLowerCase().replaceAll("_", "-");
const tongueOf = (language: string): string => tagOf(language).split("-")[0] ?? "";

/**
 * The phone's own voice for the first language that it has one for: never one of the network, which
 * would be silent without a signal and would send away what is said.
 *
 * @param wanted - language tags, the dearest first; another region of the language will do
 */
export function ownVoice<Voice extends VoiceFacts>(
  voices: readonly Voice[],
  wanted: readonly string[],
): Voice | undefined {
  const own = voices.filter(({ localService }) => localService === true);
  const usual = [...own].sort((a, b) => Number(b.default) - Number(a.default));
  for (const same of [tagOf, tongueOf]) {
    for (const language of wanted) {
      const found = usual.find(({ lang }) => same(lang) === same(language));
      if (found !== undefined) return found;
    }
  }
  return undefined;
}

const speaker = (): SpeechSynthesis | undefined =>
  "speechSynthesis" in window ? window.speechSynthesis : undefined;

/** The page's words are in one language; the phone may prefer one of its regions. */
function languages(): readonly string[] {
  const { lang } = document.documentElement;
  const phone = navigator.languages.filter((one) => tongueOf(one) === tongueOf(lang));
  return [...phone, lang];
}

const voiceNow = (from: SpeechSynthesis) => ownVoice(from.getVoices(), languages());

/** What can be said of it now; voices may be found a moment after the page began. */
export function speechState(): SpeechState {
  const from = speaker();
  if (from === undefined) return "absent";
  return voiceNow(from) === undefined ? "no-voice" : "ready";
}

/** Hears of voices that are found later; returns how to stop hearing. */
export function onVoices(hear: () => void): () => void {
  const from = speaker();
  from?.addEventListener?.("voiceschanged", hear);
  return () => from?.removeEventListener?.("voiceschanged", hear);
}

function say(text: string, volume: number): boolean {
  const from = speaker();
  const voice = from && voiceNow(from);
  if (!from || voice === undefined) return false;
  const words = new SpeechSynthesisUtterance(text);
  words.voice = voice;
  words.lang = voice.lang;
  words.volume = volume;
  from.speak(words);
  return true;
}

/** Says something in the phone's own voice, or nothing. Nobody knows whether it was heard. */
export const sayAloud = (text: string): boolean => !speaker()?.speaking && say(text, 1);

/** Call inside a tap: some phones speak later only after they spoke, here nothing, inside one. */
export const primeSpeech = (): boolean => say(" ", 0);

export function hushSpeech(): void {
  speaker()?.cancel();
}
