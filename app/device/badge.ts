/** A badge that the phone will not set says nothing that the page does not. */
const quietly = (promise: Promise<void>) => promise.catch(() => undefined);

/** Shows on the app's icon how many steps are overdue, where the phone has badges. */
export function showBadge(overdue: number): void {
  if (!("setAppBadge" in navigator)) return;
  void quietly(overdue > 0 ? navigator.setAppBadge(overdue) : navigator.clearAppBadge());
}
