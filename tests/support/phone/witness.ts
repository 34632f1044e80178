/**
 * Runs in the page: tells the console what the status line says when an alarm first shows. Looking
 * at the page from a test counts as a touch of it, and lets it sound.
 */
export function tellStatusAtAlarm(): void {
  new MutationObserver((_, watching) => {
    const status = document.querySelector(".status-line");
    if (status === null || document.querySelector(".alarm-sheet") === null) return;
    watching.disconnect();
    console.info(`at the alarm: ${status.textContent}`);
  }).observe(document, { childList: true, subtree: true });
}
