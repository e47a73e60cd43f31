// Garments by their numbers on the rack, or from a file that an export wrote.
import {existsSync, readFileSync} from "node:fs";
import {z} from "zod";
import {noMeasuredInFile} from "../../commands/state/problems.ts";
import {measuredSubject, subjectOfContent, type MeasuredSubject} from "../../commands/state/subject.ts";
import {makeWorld} from "../../commands/world.ts";
import {printPath} from "../../rulebooks/place.ts";
import {checkShape} from "../../rulebooks/shape.ts";
import {contentSchema, recordSchema, type GarmentRecord} from "../../store/model.ts";
import {thisMonth} from "../clock.ts";
import {NeedsMending} from "../ending.ts";
import {garmentNamed, withStore, type RackFlags} from "../rack/with-rack.ts";

export interface Named {
  readonly subject: MeasuredSubject;
  /** Null for one from a file. */
  readonly record: GarmentRecord | null;
}

/** Measures and grades ask nothing of rule books. */
export const noBooks = () => makeWorld([], thisMonth());

/** A name that is a file is read as one; every other is a number or an id on the rack. */
export async function named(names: readonly string[], flags: RackFlags): Promise<Named[]> {
  const files = names.map((name) => (existsSync(name) ? fromFile(name) : null));
  if (files.every((file) => file !== null)) return files.flat();
  return withStore(flags, false, async (open) => {
    const found: Named[] = [];
    for (const [i, name] of names.entries()) {
      const record = files[i] ? null : await garmentNamed(name, open);
      found.push(...(record ? [{record, subject: subjectOfContent(record.content)}] : files[i]!));
    }
    return found;
  });
}

function fromFile(path: string): Named[] {
  const whole = parsed(readFileSync(path, "utf8"), path);
  return [whole].flat().map((one, i) => {
    const at = (steps: readonly (string | number)[]) => `${path} garment ${i + 1} ${printPath(steps)}`.trimEnd();
    const isGroup = typeof one === "object" && one !== null;
    const shape: z.ZodType = isGroup && "content" in one ? recordSchema : isGroup && "garment" in one ? contentSchema : measuredSubject;
    const {fits, problems} = checkShape(shape, one, at);
    if (problems) throw new NeedsMending(problems);
    const subject = shape === recordSchema ? subjectOfContent((fits as GarmentRecord).content) : shape === contentSchema ? subjectOfContent(fits as GarmentRecord["content"]) : (fits as MeasuredSubject);
    return {record: null, subject};
  });
}

function parsed(text: string, path: string): unknown {
  try {
    return JSON.parse(text);
  } catch (whole) {
    try {
      return text.split("\n").filter((line) => line.trim() !== "").map((line) => JSON.parse(line) as unknown);
    } catch {
      throw new NeedsMending([noMeasuredInFile(path, (whole as Error).message)]);
    }
  }
}
