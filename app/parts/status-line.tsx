import type { AlarmStatus } from "../alarm/status.ts";
import { routes } from "../routes.ts";
import { say } from "../words/say.ts";
import "./status-line.css";

/** Nobody has heard this phone in this shift; of one that has no sound there is nothing to hear. */
const wantsSoundCheck = ({ missing }: AlarmStatus): boolean =>
  missing.includes("sound-unheard") || missing.includes("sound-check-old");

/** Whether it will ring, in one sentence made of facts only; and the way to what only a person knows. */
export function StatusLine({ status }: { readonly status: AlarmStatus }) {
  return (
    <>
      <p class="status-line" data-layer={status.layer}>
        {say.alarm.status[status.code]}
      </p>
      {wantsSoundCheck(status) && (
        <a class="status-line-check" href={routes.kit}>
          {say.alarm.checkSound}
        </a>
      )}
    </>
  );
}
