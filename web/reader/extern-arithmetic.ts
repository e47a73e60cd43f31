// For the build: the arithmetic of the reader is shipped once, beside its models, and not a second time among the scripts.
import type {Plugin} from "vite";

/** Where the package looks for its own copy; the reader is handed the bytes instead. */
const ownCopy = 'new URL("ort-wasm-simd-threaded.wasm",import.meta.url).href';

export function externArithmetic(): Plugin {
  return {
    name: "ticking-extern-arithmetic",
    apply: "build",
    enforce: "pre",
    transform: {
      filter: {id: /onnxruntime-web.*ort\.wasm\.bundle\.min\.mjs$/},
      handler(code) {
        if (!code.includes(ownCopy)) throw new Error(`onnxruntime-web no longer says ${ownCopy}: see web/reader/extern-arithmetic.ts`);
        return {code: code.replaceAll(ownCopy, '""'), map: null};
      },
    },
  };
}
