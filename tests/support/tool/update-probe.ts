// A second script in the page that drives app/update.ts, whatever the screens make of it.
// It listens for `probe-check` and `probe-apply` and writes what it learns on <html>.
import { applyUpdate, watchForUpdate } from "../../../app/update.ts";

const page = document.documentElement.dataset;
const pause = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));

addEventListener("probe-apply", async () => {
  page.outcome = await applyUpdate(pause);
});
page.offlineCopy = await watchForUpdate({
  onWaiting: (version) => {
    page.waiting = version;
  },
  scheduleChecks: (check) => addEventListener("probe-check", check),
});
