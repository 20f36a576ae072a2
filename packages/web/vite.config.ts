import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { VitePWA } from "vite-plugin-pwa";

const source = (name: string) => fileURLToPath(new URL(`../${name}/src/index.ts`, import.meta.url));

export default defineConfig({
  plugins: [
    react(),
    VitePWA({
      registerType: "prompt",
      injectRegister: false,
      includeAssets: ["mark.svg"],
      manifest: {
        name: "Bitwright",
        short_name: "Bitwright",
        description: "The traveler of a PDC drag bit, from the phone call to its last foot.",
        theme_color: "#1f4069",
        background_color: "#f4f2ee",
        display: "standalone",
        icons: [{ src: "/mark.svg", sizes: "any", type: "image/svg+xml" }],
      },
      workbox: {
        globPatterns: ["**/*.{js,css,html,svg,wasm}"],
        maximumFileSizeToCacheInBytes: 16 * 1024 * 1024,
        navigateFallback: "/index.html",
        navigateFallbackDenylist: [/^\/api\//],
      },
    }),
  ],
  resolve: {
    // The sources themselves, so that one build compiles the page and the engine it runs.
    alias: {
      "@bitwright/engine": source("engine"),
      "@bitwright/traveler": source("traveler"),
      "@bitwright/shop": source("shop"),
    },
  },
  worker: { format: "es" },
  server: { proxy: { "/api": process.env.BITWRIGHT_SERVER ?? "http://localhost:8080" } },
  build: { outDir: "dist/page", target: "es2022", chunkSizeWarningLimit: 2000 },
});
