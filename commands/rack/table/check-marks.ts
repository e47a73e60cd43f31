// Whether the books at hand know every mark and value of a garment: the check of an examination without the examination.
import type {Garment, Problem} from "../../../engine/index.ts";
import {knownMarks, makeResolver, type Resolver} from "../../../engine/infer/resolve.ts";
import {possibleMakers} from "../../../engine/infer/views.ts";
import type {World} from "../../world.ts";

/** Checks any number of garments; marks of the same makers are made ready once. */
export function markChecker({books}: Pick<World, "books">): (garment: Garment) => Problem[] {
  const all = knownMarks(books);
  const resolvers = new Map<string, Resolver>();
  return (garment) => {
    const {makers, problems} = possibleMakers(garment, books);
    const key = makers.join();
    let resolver = resolvers.get(key);
    if (!resolver) resolvers.set(key, (resolver = makeResolver(knownMarks(books.filter(({kind, book}) => kind === "public" || makers.includes(book))), all)));
    return [...problems, ...resolver.resolve(garment).problems];
  };
}
