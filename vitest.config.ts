import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const source = (name: string) => fileURLToPath(new URL(`./packages/${name}/src/index.ts`, import.meta.url));

export default defineConfig({
  resolve: {
    alias: {
      "@bitwright/engine": source("engine"),
      "@bitwright/traveler": source("traveler"),
      "@bitwright/shop": source("shop"),
      "@bitwright/store": source("store"),
      "@bitwright/server": source("server"),
    },
  },
  test: {
    include: ["packages/*/src/**/*.test.ts", "tests/**/*.test.ts"],
    setupFiles: ["tests/support/property-seed.ts"],
    testTimeout: 60_000,
    coverage: { include: ["packages/*/src/**/*.ts"] },
  },
});
