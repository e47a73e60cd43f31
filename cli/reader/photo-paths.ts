// The photos that paths name: files as they are, folders by what lies in them, in the order of names.
import {readdirSync, statSync} from "node:fs";
import {join} from "node:path";
import type {Problem} from "../../engine/index.ts";
import {notFound} from "../problems.ts";

const isPhoto = (name: string) => /\.(?:jpe?g|png|webp|avif)$/i.test(name);

/** @returns photos, and a problem for each path that is not there */
export function photoPaths(paths: readonly string[]): {photos: string[]; problems: Problem[]; folder: boolean} {
  const problems: Problem[] = [];
  let folder = false;
  const photos = paths.flatMap((path) => {
    const stat = statSync(path, {throwIfNoEntry: false});
    if (!stat) {
      problems.push(notFound(path));
      return [];
    }
    if (!stat.isDirectory()) return [path];
    folder = true;
    return readdirSync(path, {recursive: true}).map(String).filter(isPhoto).sort().map((name) => join(path, name));
  });
  return {photos, problems, folder};
}
