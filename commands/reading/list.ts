// Commands that join readings of photos with the rack and its books.
import {refitReadingMap} from "./refit-reading-map.ts";
import {wordsOnLabel} from "./words-on-label.ts";

export const readingCommands = [wordsOnLabel, refitReadingMap];
