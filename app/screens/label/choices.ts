import { useRef, useState } from "preact/hooks";
import { saveSettings } from "../../commands.ts";
import { settings } from "../../state.ts";
import type { Settings } from "../../storage/settings.ts";

/** Paper, number and first place, as they were chosen last. */
export type Choices = Pick<Settings, "labelPaper" | "labelCopies" | "labelFrom">;

export type Choose = (change: Partial<Choices>) => void;

/**
 * What is printed on what. Shown at once and saved behind it: a stepper is tapped faster than a
 * phone writes, and a tap that read what is stored would be lost.
 */
export function useChoices(): readonly [Choices, Choose] {
  const { labelPaper, labelCopies, labelFrom } = settings.value;
  const [chosen, setChosen] = useState<Choices>({ labelPaper, labelCopies, labelFrom });
  const latest = useRef(chosen);
  const choose: Choose = (change) => {
    latest.current = { ...latest.current, ...change };
    setChosen(latest.current);
    void saveSettings(latest.current);
  };
  return [chosen, choose];
}
