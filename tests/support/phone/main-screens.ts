import { routes } from "../../../app/routes.ts";

/** The screens that jobs are done on, as they stand over an invented afternoon. */
export const MAIN_SCREENS: readonly string[] = [
  routes.bench,
  routes.run("run-pear"),
  routes.run("run-rest"),
  routes.days,
  routes.specs,
  routes.spec("demo-pear-beacon"),
  routes.plan("demo-pear-beacon"),
  routes.cupboard,
  routes.shelf,
  routes.label("demo-history-21"),
  routes.logbook,
  routes.batch("demo-history-12"),
  routes.compare(["demo-history-12", "demo-history-21"]),
  routes.learnt,
  routes.kit,
];
