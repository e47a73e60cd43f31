// A program that saves garments and photos until it is killed, or so many times, and tells of each save only when it was answered.
import {writeSync} from "node:fs";
import sharp from "sharp";
import {openStore, partsOf} from "../../store/open.ts";
import {photoFiles} from "../../store/photo/photo-files.ts";
import {at, content, dated} from "./body.ts";

const [folder, name, times] = process.argv.slice(2);
const store = await openStore(folder!);
const photos = photoFiles(partsOf(folder!).photos);
const told = (...words: readonly (string | number)[]) => writeSync(1, `${words.join(" ")}\n`);

for (let i = 0; i < Number(times); i++) {
  const {saved} = await store.save({id: null, base: 0, content: content(`${name} ${i}`, {dating: dated([0.5, 0.5]), tags: [name]}), who: name!, what: "added", at});
  told("saved", saved!.id, 1);
  const all = await store.saveAll([{id: saved!.id, base: 1, content: content(`${name} ${i}`, {place: "attic"}), who: name!, what: "changed", at}, {id: null, base: 0, content: content(`${name} ${i} b`), who: name!, what: "added", at}]);
  told("saved", all[0]!.saved!.id, 2);
  told("saved", all[1]!.saved!.id, 1);
  if (i % 5 > 0) continue;
  const bytes = await sharp({create: {width: 60, height: 40, channels: 3, background: {r: i % 256, g: (i >> 8) % 256, b: process.pid % 256}}}).jpeg().toBuffer();
  const {photo} = await photos.add(bytes, "a.jpg", at);
  await store.addPhoto(photo!);
  told("photo", photo!.photo);
}
await store.close();
