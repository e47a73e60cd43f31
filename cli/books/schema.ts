// ticking books schema.
import {perform} from "../../commands/command.ts";
import {showSchema} from "../../commands/show-schema.ts";
import {makeWorld} from "../../commands/world.ts";
import {thisMonth} from "../clock.ts";
import {orMend} from "../ending.ts";
import {printJson} from "../words/print.ts";

export function printSchema(of: string): void {
  printJson(showSchema.json(orMend(perform(showSchema, {of}, makeWorld([], thisMonth())))));
}
