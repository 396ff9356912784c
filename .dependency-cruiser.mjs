/**
 * Which folder may import which. A folder not named here may not exist under src/core, src/io or src.
 * Folders import one another only through `index.ts`; type imports count.
 * @type {Readonly<Record<string, readonly string[]>>}
 */
export const importTable = {
  "core/units": [],
  words: ["core/units"],
  "core/procedure": ["core/units", "words"],
  "core/changes": ["core/procedure", "core/units", "words"],
  "core/order": ["core/procedure", "core/units", "words"],
  "core/place": ["core/procedure", "core/order", "core/units", "words"],
  "core/custody": ["core/procedure", "core/order", "core/units", "words"],
  "core/light": ["core/units", "words"],
  "core/supply": ["core/units", "words"],
  "core/window": ["core/light", "core/procedure", "core/units", "words"],
  "core/course": [
    "core/order",
    "core/place",
    "core/custody",
    "core/window",
    "core/procedure",
    "core/units",
    "words",
  ],
  "core/plan": [
    "core/course",
    "core/order",
    "core/place",
    "core/window",
    "core/light",
    "core/procedure",
    "core/units",
    "words",
  ],
  "core/workbook": ["core/course", "core/plan", "core/procedure", "core/units", "words"],
  "core/check": [
    "core/changes",
    "core/units",
    "core/procedure",
    "core/order",
    "core/place",
    "core/custody",
    "core/window",
    "core/light",
    "core/course",
    "core/plan",
    "core/supply",
    "words",
  ],
  "core/effect": [
    "core/changes",
    "core/check",
    "core/course",
    "core/plan",
    "core/procedure",
    "core/units",
    "core/walk",
    "words",
  ],
  "core/log": ["core/procedure", "core/units", "words"],
  "core/seal": ["core/log", "core/units", "words"],
  "core/link": ["core/log", "core/units", "words"],
  "core/walk": [
    "core/changes",
    "core/course",
    "core/window",
    "core/plan",
    "core/log",
    "core/custody",
    "core/supply",
    "core/procedure",
    "core/order",
    "core/place",
    "core/units",
    "words",
  ],
  "core/split": [
    "core/changes",
    "core/check",
    "core/course",
    "core/custody",
    "core/order",
    "core/place",
    "core/plan",
    "core/procedure",
    "core/units",
    "core/window",
    "words",
  ],
  "core/fit": [
    "core/changes",
    "core/check",
    "core/course",
    "core/plan",
    "core/walk",
    "core/procedure",
    "core/units",
    "words",
  ],
  "core/review": [
    "core/changes",
    "core/course",
    "core/plan",
    "core/log",
    "core/walk",
    "core/procedure",
    "core/order",
    "core/units",
    "words",
    "core/supply",
    "core/workbook",
  ],
  "core/briefing": ["core/course", "core/worksite", "core/procedure", "core/units", "words"],
  "core/worksite": [
    "core/course",
    "core/custody",
    "core/place",
    "core/plan",
    "core/procedure",
    "core/units",
    "words",
  ],
  io: ["core", "words"],
  hub: ["core/link", "core/log", "core/units", "words"],
  cli: ["core", "io/files", "words"],
  app: ["core", "io", "words"],
};

const escaped = (folder) => folder.replaceAll("/", "\\/");

/** For every folder of the table: it reaches itself, what its row names, packages, and nothing else in src. */
const tableRules = Object.entries(importTable).map(([folder, allowed]) => ({
  name: `table-${folder.replace("/", "-")}`,
  comment: `src/${folder} may import: ${allowed.length > 0 ? allowed.join(", ") : "nothing"}`,
  severity: "error",
  from: { path: `(^|/)src/${escaped(folder)}/` },
  to: {
    path: "(^|/)src/",
    // Packages may have a folder of that name too; which of them are allowed is another rule's matter.
    pathNot: [...[folder, ...allowed].map((target) => `(^|/)src/${escaped(target)}/`), "(^|/)node_modules/"],
  },
}));

const impurePackages =
  "node_modules/(react|react-dom|react-router|react-router-dom|@ionic|ionicons|dexie|dexie-react-hooks|@xstate/react|@capacitor|workbox-|commander)";

const config = {
  forbidden: [
    ...tableRules,
    {
      name: "outside-the-table",
      comment: "Every source folder has a row in the import table.",
      severity: "error",
      from: {
        path: "(^|/)src/[^/]+/",
        pathNot: Object.keys(importTable).map((folder) => `(^|/)src/${escaped(folder)}/`),
      },
      to: {},
    },
    {
      name: "only-through-index",
      comment: "Another folder is imported through its index.ts; a lazily loaded file is its own entry.",
      severity: "error",
      from: { path: "(^|/)src/(.+)/[^/]+$" },
      to: {
        path: "(^|/)src/.+/[^/]+\\.(ts|tsx)$",
        pathNot: ["(^|/)src/$2/[^/]+$", "/index\\.ts$"],
        dependencyTypesNot: ["dynamic-import"],
      },
    },
    {
      name: "no-circle",
      comment: "No file reaches itself again through what it imports, types included.",
      severity: "error",
      from: {},
      to: { circular: true },
    },
    {
      name: "resolvable",
      comment: "Every import leads somewhere.",
      severity: "error",
      from: {},
      to: { couldNotResolve: true, pathNot: "^virtual:" },
    },
    {
      name: "declared",
      comment: "A package that is used is named in package.json.",
      severity: "error",
      from: { path: "(^|/)src/" },
      to: { dependencyTypes: ["npm-no-pkg", "npm-unknown"] },
    },
    {
      name: "not-from-development",
      comment: "What ships rests on dependencies, not on development tools.",
      severity: "error",
      from: { path: "(^|/)src/" },
      to: { dependencyTypes: ["npm-dev"], dependencyTypesNot: ["type-only"] },
    },
    {
      name: "core-is-pure",
      comment: "The core knows no screen, no store, no network and no machine.",
      severity: "error",
      from: { path: "(^|/)src/core/" },
      to: { path: impurePackages },
    },
    {
      name: "core-has-no-machine",
      comment: "The core runs in a browser and in Node alike.",
      severity: "error",
      from: { path: "(^|/)src/(core|app)/" },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "no-screen-without-app",
      comment: "Only the app draws.",
      severity: "error",
      from: { path: "(^|/)src/(io|hub|cli)/" },
      to: {
        path: "node_modules/(react|react-dom|react-router|react-router-dom|@ionic|ionicons|@xstate/react)/",
      },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    detectProcessBuiltinModuleCalls: true,
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "browser", "node", "default", "types"],
      mainFields: ["module", "main", "types"],
    },
  },
};

// dependency-cruiser reads the default export.
export default config;
