import type { AlarmStatus } from "../alarm/status.ts";
import { say } from "../words/say.ts";
import "./status-line.css";

/** Whether it will ring, in one sentence made of facts only. */
export function StatusLine({ status }: { readonly status: AlarmStatus | undefined }) {
  if (status === undefined) return null;
  return (
    <p class="status-line" data-layer={status.layer}>
      {say.alarm.status[status.code]}
    </p>
  );
}
