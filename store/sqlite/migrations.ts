// The shapes of the database, one step after another. Steps are only ever added: an old file is brought forward, never back.
import {rack} from "./migration/0001-rack.ts";
import {contentInSteps} from "./migration/0002-content-in-steps.ts";
import {sales} from "./migration/0003-sales.ts";

export const migrations: readonly string[] = [rack, contentInSteps, sales];
