// The house's one-way streets: between packages, and between the engine's rooms.
const rooms = [
  "quantity",
  "geometry",
  "ground",
  "fluid",
  "cutter",
  "bit",
  "cutting",
  "string",
  "flow",
  "power",
  "life",
  "bench",
  "ledger",
  "advice",
];
// Rooms that stand side by side and may not see each other.
const besideEachOther = [
  ["ground", "fluid", "cutter"],
  ["string", "flow"],
  ["bench", "ledger"],
];

const roomRules = rooms.map((room, at) => {
  const beside = besideEachOther.find((group) => group.includes(room)) ?? [room];
  const forbidden = [...new Set([...rooms.slice(at + 1), ...beside])].filter((other) => other !== room);
  return {
    name: `engine-${room}-looks-left-only`,
    severity: "error",
    from: { path: `^packages/engine/src/${room}/` },
    to: { path: `^packages/engine/src/(${forbidden.join("|") || "none"})/` },
  };
});

const packageOrder = {
  engine: [],
  traveler: ["engine"],
  shop: ["engine", "traveler"],
  store: ["traveler"],
  server: ["engine", "traveler", "shop", "store"],
  cli: ["engine", "traveler", "shop", "store", "server"],
  web: ["engine", "traveler", "shop"],
};
const packageRules = Object.entries(packageOrder).map(([name, allowed]) => ({
  name: `${name}-imports-one-way`,
  severity: "error",
  from: { path: `^packages/${name}/src/` },
  to: { path: `^packages/(?!(${[name, ...allowed].join("|")})/)` },
}));

module.exports = {
  forbidden: [
    { name: "no-cycles", severity: "error", from: {}, to: { circular: true } },
    { name: "nothing-unresolved", severity: "error", from: {}, to: { couldNotResolve: true } },
    {
      name: "engine-is-pure",
      severity: "error",
      from: { path: "^packages/engine/src/", pathNot: "\\.test\\.ts$" },
      to: { dependencyTypes: ["core", "npm", "npm-dev", "npm-no-pkg", "npm-unknown"] },
    },
    {
      name: "traveler-touches-no-machine",
      severity: "error",
      from: { path: "^packages/(traveler|shop)/src/", pathNot: "\\.test\\.ts$|^packages/shop/src/print/" },
      to: { dependencyTypes: ["core"] },
    },
    {
      // The typesetter is a program of the machine: what runs in a page must not come to load it.
      name: "shop-prints-by-its-own-door",
      severity: "error",
      from: { path: "^packages/shop/src/", pathNot: "\\.test\\.ts$|^packages/shop/src/print/" },
      to: { path: "^packages/shop/src/print/" },
    },
    ...roomRules,
    ...packageRules,
  ],
  options: {
    tsConfig: { fileName: "tsconfig.tests.json" },
    tsPreCompilationDeps: true,
    doNotFollow: { path: "(^|/)(node_modules|dist)/" },
    exclude: { path: "\\.test\\.ts$" },
    enhancedResolveOptions: { exportsFields: ["exports"], conditionNames: ["types", "import", "default"] },
  },
};
