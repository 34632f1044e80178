import { expect, test } from "vitest";
import { ownVoice } from "../../../app/device/speech.ts";

const voice = (lang: string, localService = true, isDefault = false) => ({
  lang,
  localService,
  default: isDefault,
});

const PICKS: readonly [string, readonly ReturnType<typeof voice>[], readonly string[], number][] = [
  ["the region that the phone prefers", [voice("en-US"), voice("en-AU")], ["en-AU", "en"], 1],
  ["another region of the language", [voice("fr-FR"), voice("en-US")], ["en-AU", "en"], 1],
  ["however the tag is written", [voice("de-DE"), voice("EN_gb")], ["en-GB"], 1],
  [
    "the exact region before the usual voice",
    [voice("en-US", true, true), voice("en-GB")],
    ["en-GB"],
    1,
  ],
  ["the phone's usual one of several", [voice("en-GB"), voice("en-GB", true, true)], ["en-GB"], 1],
  ["no other language", [voice("fr-FR"), voice("de-DE", true, true)], ["en-GB"], -1],
  ["never one of the network", [voice("en-GB", false, true), voice("fr-FR")], ["en-GB"], -1],
  [
    "its own in spite of a better one of the network",
    [voice("en-GB", false, true), voice("en-IN")],
    ["en-GB"],
    1,
  ],
  ["no language that only begins alike", [voice("eng-GB")], ["en-GB"], -1],
  ["nothing where there is no voice", [], ["en-GB"], -1],
];

test.each(PICKS)("%s", (_, voices, wanted, index) => {
  expect(ownVoice(voices, wanted)).toBe(voices[index]);
});

test("a voice that does not say where it lives is taken for one of the network", () => {
  const unsaid: { lang: string; localService: boolean; default: boolean } = JSON.parse(
    '{"lang": "en-GB", "default": true}',
  );
  expect(ownVoice([unsaid], ["en-GB"])).toBeUndefined();
});
