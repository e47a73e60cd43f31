// For the build: writes the list of files into the service worker, so that it can fetch all of them before they are needed.
import type {Plugin} from "vite";

/** Files of web/public that a page without a server needs. */
const still = ["/manifest.webmanifest", "/icon.svg", "/icon-192.png", "/icon-512.png", "/icon-mask.png"];

/** @param worker  name of the built service worker */
export function precache(worker: string): Plugin {
  return {
    name: "ticking-precache",
    apply: "build",
    enforce: "post",
    generateBundle: {
      order: "post",
      handler(_, bundle) {
        const chunk = bundle[worker];
        if (chunk?.type !== "chunk") throw new Error(`the build has no ${worker}`);
        const built = Object.values(bundle).filter(({fileName}) => fileName !== worker && !fileName.endsWith(".map"));
        const files = ["/", ...still, ...built.map(({fileName}) => `/${fileName}`).filter((name) => name !== "/index.html" && !/\.woff$/.test(name))].sort();
        const page = bundle["index.html"];
        const text = files.join() + chunk.code + (page?.type === "asset" ? String(page.source) : "");
        chunk.code = chunk.code.replaceAll("__SCREEN_FILES__", JSON.stringify(files)).replaceAll("__SCREEN_VERSION__", JSON.stringify(fingerprint(text)));
      },
    },
  };
}

// FNV-1a, 32 bit (Fowler, Noll and Vo; draft-eastlake-fnv): names of built files carry proper hashes already.
function fingerprint(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(36);
}
