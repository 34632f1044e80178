import { answers } from "../words/answers.ts";
import { sayLater } from "../words/say-later.ts";
import { Opened } from "./opened.tsx";

interface AnswerProps {
  readonly of: keyof typeof answers;
  readonly onClose: () => void;
}

/** The answer to a question, and where it comes from. */
export function Answer({ of, onClose }: AnswerProps) {
  const { says, source } = answers[of];
  return (
    <Opened title={sayLater.why[of]} onClose={onClose}>
      {says.map((line) => (
        <p key={line} class="why-says">
          {line}
        </p>
      ))}
      <p class="why-source">{source}</p>
    </Opened>
  );
}
