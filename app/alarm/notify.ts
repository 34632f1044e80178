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
async function notifyAlarm(worker: Registration, notice: AlarmNotice): Promise<boolean> {
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

/** The notices of this phone: one for each alarm, as long as that is due. */
export interface Notices {
  /** Shows some, also again. */
  readonly show: (some: readonly AlarmNotice[]) => void;
  /** Takes back every one but those of these keys, whichever page has shown it. */
  readonly keepOnly: (keys: readonly string[]) => void;
}

/**
 * Shows notices and takes them back, one after the other. A browser may forget one for good that it
 * is asked about while it is still being shown.
 *
 * @param worker - the worker that shows them; nothing where there is none
 */
export function noticesWith(worker: () => Promise<Registration | undefined>): Notices {
  let last: Promise<void> = Promise.resolve();
  const next = (work: (shows: Registration) => Promise<void>) => {
    const doing = async () => {
      const shows = notifyState() === "absent" ? undefined : await worker();
      if (shows !== undefined) await work(shows);
    };
    // A worker that is going shows nothing: the alarm rings on return all the same.
    last = last.then(doing).catch(() => undefined);
  };
  return {
    show: (some) =>
      next(async (shows) => {
        for (const notice of some) await notifyAlarm(shows, notice);
      }),
    keepOnly: (keys) =>
      next(async (shows) => {
        for (const notice of await shows.getNotifications()) {
          if (!keys.includes(notice.tag)) notice.close();
        }
      }),
  };
}
