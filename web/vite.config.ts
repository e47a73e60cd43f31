// How the screens are built: one page, one worker for the engine and one for the reader of photos, one service worker for the time without a server.
import react from "@vitejs/plugin-react";
import {defineConfig} from "vite";
import {precache} from "./offline/precache.ts";
import {externArithmetic} from "./reader/extern-arithmetic.ts";

const serviceWorker = "sw.js";

export default defineConfig({
  root: import.meta.dirname,
  plugins: [react(), precache(serviceWorker)],
  build: {
    outDir: "../dist-web",
    emptyOutDir: true,
    target: ["chrome123", "safari17.5", "firefox121"],
    // Fonts and pictures stay files of their own: the content policy allows no data in their place.
    assetsInlineLimit: 0,
    rollupOptions: {
      input: {main: "index.html", sw: "offline/service-worker.ts"},
      output: {entryFileNames: ({name}) => (name === "sw" ? serviceWorker : "assets/[name]-[hash].js")},
    },
  },
  worker: {format: "es", plugins: () => [externArithmetic()]},
  server: {proxy: {"^/(api|reader)/": {target: "http://127.0.0.1:4848", changeOrigin: false}}},
});
