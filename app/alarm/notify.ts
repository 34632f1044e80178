/** Whether this phone lets the page show a notice. */
export type NotifyState = "granted" | "refused" | "unasked" | "absent";

/** What a notice of an alarm says. */
export interface AlarmNotice {
  /** A later notice of the same alarm takes the place of the earlier one. */
  readonly key: string;
  readonly title: string;
  readonly body: string;
  /** Where a tap on it leads: the part of the address after the #. */
  readonly address: string;
}

type Registration = Pick<ServiceWorkerRegistration, "showNotification" | "getNotifications">;

/** Whether a notice could be shown now. */
export function notifyState(): NotifyState {
  if (!("Notification" in window) || !("serviceWorker" in navigator)) return "absent";
  switch (Notification.permission) {
    case "granted":
      return "granted";
    case "denied":
      return "refused";
    case "default":
      return "unasked";
  }
}

/** Asks the person; call inside a tap. */
export async function askToNotify(): Promise<NotifyState> {
  if (notifyState() === "unasked") await Notification.requestPermission();
  return notifyState();
}

/**
 * Shows a notice for an alarm that fell due just after the page was left, if code still runs and
 * the phone allows it. True when the phone took it; nothing says that anyone saw it.
 */
export async function notifyAlarm(worker: Registration, notice: AlarmNotice): Promise<boolean> {
  if (notifyState() !== "granted") return false;
  const { key, title, body, address } = notice;
  const more = { tag: key, renotify: true, requireInteraction: true };
  try {
    await worker.showNotification(title, { ...more, body, data: { address } });
    return true;
  } catch {
    // The worker is going or the permission went: the alarm rings on return all the same.
    return false;
  }
}

/**
 * Takes back the notices of an alarm that was heard. A browser may forget one for good that it is asked
 * about while it is still being shown: never ask before `notifyAlarm` is done.
 *
 * @param key - of the alarm, as in `AlarmNotice`
 */
export async function clearNotices(worker: Registration, key: string): Promise<void> {
  if (notifyState() === "absent") return;
  for (const notice of await worker.getNotifications({ tag: key })) notice.close();
}
