import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const source = (name: string, room = "") =>
  fileURLToPath(new URL(`./packages/${name}/src/${room}index.ts`, import.meta.url));

export default defineConfig({
  resolve: {
    alias: {
      "@bitwright/engine": source("engine"),
      "@bitwright/traveler": source("traveler"),
      "@bitwright/shop/print": source("shop", "print/"),
      "@bitwright/shop": source("shop"),
      "@bitwright/store": source("store"),
      "@bitwright/server": source("server"),
    },
  },
  test: {
    coverage: { include: ["packages/*/src/**/*.ts"] },
    projects: [
      {
        extends: true,
        test: {
          name: "code",
          include: ["packages/*/src/**/*.test.ts", "tests/**/*.test.ts"],
          exclude: ["tests/web/**", "**/node_modules/**"],
          setupFiles: ["tests/support/property-seed.ts"],
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: "page",
          include: ["tests/web/*.test.ts"],
          globalSetup: ["tests/web/build-and-browser.ts"],
          testTimeout: 30_000,
          hookTimeout: 30_000,
        },
      },
    ],
  },
});
