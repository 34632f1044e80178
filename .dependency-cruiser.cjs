/**
 * @typedef {import("dependency-cruiser").IRegularForbiddenRuleType} Direct
 * @typedef {import("dependency-cruiser").IReachabilityForbiddenRuleType} Reach
 * @param {string} name
 * @param {string} comment
 * @param {Direct["from"] & Reach["from"]} from
 * @param {Direct["to"] & Partial<Reach["to"]>} to
 * @returns {Direct}
 */
const rule = (name, comment, from, to) => ({ name, comment, severity: "error", from, to });

/**
 * Each core floor, with the folders it may use: itself and what lies below.
 *
 * @type {readonly (readonly [floor: string, uses: string])[]}
 */
const FLOORS = [
  ["quantity", "quantity"],
  ["liquid", "quantity|liquid"],
  ["acid", "quantity|acid"],
  ["spec", "quantity|liquid|acid|spec"],
  ["method", "quantity|liquid|acid|spec|method"],
  ["run", "quantity|liquid|acid|spec|method|run"],
  ["board", "quantity|liquid|acid|spec|method|run|board"],
  ["logbook", "quantity|liquid|acid|spec|method|run|logbook"],
  ["label", "quantity|liquid|acid|spec|method|run|label"],
];

/** @type {import("dependency-cruiser").IConfiguration} */
module.exports = {
  forbidden: [
    rule("no-cycles", "Two modules in a cycle are one module.", {}, { circular: true }),
    rule("no-missing", "Every import must resolve.", {}, { couldNotResolve: true }),
    rule(
      "core-stands-alone",
      "core imports core, zod and date-fns: no app, no other package.",
      { path: "^core/" },
      { pathNot: "^core/|^node_modules/(zod|date-fns)/" },
    ),
    ...FLOORS.map(([floor, uses]) =>
      rule(
        `floor-${floor}`,
        `${floor} uses only ${uses.replaceAll("|", ", ")}.`,
        { path: `^core/${floor}/` },
        { path: "^core/", pathNot: `^core/(${uses})/` },
      ),
    ),
    rule(
      "one-door-to-the-database",
      "only app/storage/database.ts opens IndexedDB.",
      { path: "^(app|core|service-worker)/", pathNot: "^app/storage/database[.]ts$" },
      { path: "node_modules/idb/", dependencyTypesNot: ["type-only"] },
    ),
    rule(
      "one-clock",
      "only the wiring reads the clock; everyone else is handed a time.",
      { path: "^app/", pathNot: "^app/(main[.]tsx|clock[.]ts|commands[.]ts|state[.]ts)$" },
      { path: "^app/clock[.]ts$", dependencyTypesNot: ["type-only"] },
    ),
    rule(
      "screens-are-thin",
      "a screen draws and sends commands.",
      { path: "^app/(screens|parts)/" },
      { path: "^app/(storage|alarm)/", dependencyTypesNot: ["type-only"] },
    ),
    rule(
      "no-screen-to-screen",
      "screens meet in app.tsx; what they share is a part.",
      { path: "^app/screens/([^/.]+)" },
      { path: "^app/screens/", pathNot: "^app/screens/$1[./]" },
    ),
    rule(
      "parts-below-screens",
      "a part knows no screen and no state.",
      { path: "^app/parts/" },
      { path: "^app/(screens/|state|commands)" },
    ),
    rule(
      "storage-knows-no-screen",
      "storage and alarm are below the page.",
      { path: "^app/(storage|alarm|device)/" },
      { path: "^app/(screens|parts|state|commands)" },
    ),
    rule(
      "worker-sees-core-only",
      "the worker never bundles the page.",
      { path: "^service-worker/" },
      { path: "^app/" },
    ),
    rule(
      "page-takes-types-from-worker",
      "the page shares message types, never code.",
      { path: "^app/" },
      { path: "^service-worker/", dependencyTypesNot: ["type-only"] },
    ),
    rule(
      "nothing-ships-tests",
      "production never imports tests.",
      { path: "^(app|core|service-worker)/" },
      { path: "^tests/" },
    ),
    rule(
      "no-test-to-test",
      "tests share tests/support and tests/published.",
      { path: "^tests/.+[.]test[.]tsx?$" },
      { path: "[.]test[.]tsx?$" },
    ),
    rule(
      "no-dev-package-shipped",
      "ship only dependencies.",
      { path: "^(app|core|service-worker)/" },
      { dependencyTypes: ["npm-dev"], dependencyTypesNot: ["type-only"] },
    ),
    rule(
      "no-dead-module",
      "no entry reaches it: delete it.",
      { path: "^(app/main[.]tsx|service-worker/service-worker[.]ts)$" },
      {
        path: "^(app|core|service-worker)/",
        pathNot: "[.]d[.]ts$|^app/main[.]tsx$|^service-worker/service-worker[.]ts$",
        reachable: false,
      },
    ),
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.base.json" },
    exclude: { path: "[.]css$|[.]json$" },
    enhancedResolveOptions: { exportsFields: ["exports"], conditionNames: ["import", "types"] },
  },
};
