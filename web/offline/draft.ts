// Drafts: what was typed and not yet saved, kept on this device through a reload or a crash.
import {database} from "./database.ts";
import type {Draft} from "./kept.ts";

/** Keeps a draft, in place of an earlier one of the same garment. */
export async function keepDraft(draft: Draft): Promise<void> {
  await (await database()).put("draft", draft);
}

/** The draft of a garment, if one is kept. */
export async function draftOf(garment: string): Promise<Draft | null> {
  return (await (await database()).get("draft", garment)) ?? null;
}

/** Lets go of a draft: it was saved, or its owner threw it away. */
export async function dropDraft(garment: string): Promise<void> {
  await (await database()).delete("draft", garment);
}
