import { Chips } from "../../parts/chips.tsx";
import { settings } from "../../state.ts";
import { CHOICES, type LanguageChoice } from "../../words/language.ts";
import { sayLater } from "../../words/say-later.ts";
import { Fault, useChoice } from "./choices.tsx";

/** Each in itself: whoever looks for it may not read the one that is spoken now. */
const NAMES: Readonly<Record<Exclude<LanguageChoice, "auto">, string>> = {
  en: "English",
  es: "Español",
  fr: "Français",
};

/** What the app speaks; its numbers and dates follow. */
export function Languages() {
  const { fault, choose } = useChoice();
  const words = sayLater.kit.language;
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <Chips
        label={words.label}
        options={CHOICES.map((value) => ({
          value,
          label: value === "auto" ? words.auto : NAMES[value],
        }))}
        value={settings.value.language}
        onChange={(language) => void choose({ language })}
      />
      <p class="soft">{words.note}</p>
      <Fault fault={fault} />
    </section>
  );
}
