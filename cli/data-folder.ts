// Where the rack is kept when nobody says otherwise.
import {homedir} from "node:os";
import {join, resolve} from "node:path";

/** What --data says, else TICKING_DATA, else ticking-rack in the owner's home. */
export const dataFolder = (given: string | undefined): string => resolve(given ?? process.env.TICKING_DATA ?? join(homedir(), "ticking-rack"));

export const dataHelp = "the folder of the rack; TICKING_DATA, or ticking-rack in your home, when left out";
