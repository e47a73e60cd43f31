// One example of every problem that can be reported, so that the reference shows them as people meet them. The compiler misses none.
import * as batch from "../../commands/batch/problems.ts";
import * as input from "../../commands/problems.ts";
import * as rack from "../../commands/rack/problems.ts";
import * as terminal from "../../cli/problems.ts";
import type {Problem} from "../../engine/index.ts";
import * as garment from "../../engine/infer/problems.ts";
import * as file from "../../rulebooks/file-problems.ts";
import * as book from "../../rulebooks/problems.ts";
import * as server from "../../server/problems.ts";
import * as archive from "../../store/archive/problems.ts";
import * as store from "../../store/problems.ts";

type Wordings<M> = {readonly [K in keyof M as M[K] extends (...given: never) => Problem ? K : never]: M[K] extends (...given: infer G) => Problem ? readonly G[] : never};
type Sampled<M> = {readonly title: string; readonly problems: readonly Problem[]; readonly of?: M};

function sampled<M extends object>(title: string, module: M, samples: Wordings<M>): Sampled<M> {
  const problems = Object.entries(samples).flatMap(([name, given]) =>
    (given as readonly (readonly unknown[])[]).map((one) => (module[name as keyof M] as unknown as (...words: readonly unknown[]) => Problem)(...one)),
  );
  return {title, problems};
}

const here = "my-book.yaml:12";

/** All problems, family by family. */
export const problemFamilies: readonly Sampled<unknown>[] = [
  sampled("What was seen on a garment", garment, {
    unknownMark: [["saw.lable", "lable", "label"]],
    otherMakersMark: [["saw.button-stamp", "button-stamp"]],
    unknownValue: [["saw.label", "green-sattin", ["white-cotton", "green-satin"], "green-satin"]],
    notPresence: [["saw.selvedge", "perhaps"]],
    notNumber: [["saw.us.numbers.registered-numbers.rn-number", "worn away"]],
    rowSlip: [["saw.rows[1]", "(3/ is not a choice like (3/8) or (8:80/3:20)"]],
    emptyText: [["saw.zip-date"]],
    noWeight: [["saw.label"]],
    unknownMaker: [["maker", "marowfield", ["marrowfield"], "marrowfield"]],
    notPossible: [["maker"]],
  }),
  sampled("What a rule book says", book, {
    unknownKey: [[here, "windw", ["name", "window", "weight"]]],
    missingKey: [[here, "window", "the time a mark was in use, with soft ends", []]],
    wrongType: [[here, "many", ["a number"], "how common beside the other values"]],
    notOneOf: [[here, "sometimes", ["read", "part", "memory", "inferred"]]],
    badForm: [[here, "1968-3", "a month, written like 1968-03"]],
    badName: [[here, "Green Satin", "lower-case letters, digits, dashes and dots, like green-satin"]],
    outOfRange: [[here, "1.5 stands here", "at most 1"]],
    windowReversed: [[here, "begins", "1968-09", "1968-03"]],
    windowShut: [[here, "1977-09", "1968-03"]],
    memoryHardEnd: [[here, "ends", 3, 12]],
    memoryShut: [[here]],
    coversReversed: [[here, "1980-01", "1960-12"]],
    unlistedSource: [[here, "leger", ["ledger", "rack"]]],
    unknownName: (["place", "piece", "scheme", "mark", "market", "plant", "lot", "label kind"] as const).map((kind) => [here, kind, "somthing", ["something"]] as [string, string, string, string[]]),
    reservedName: [[here, "other", "value", "anything the book does not list"]],
    inTwoGroups: [[here, "zip-kind", "hardware"]],
    rangeReversed: [[here, "figures", 4, 2]],
    sharesAllZero: [[here]],
    nothingListed: [[here, "values"]],
    knotsNotAscending: [[here, "number", "48000", "13000"]],
    lagReversed: [[here, 24, 6]],
    half: [[here, "usual", "longest"]],
    noDatePart: [[here]],
    tableOutOfRange: [[here, "M", 13, 1, 12]],
    badSpan: [[here, "March 68"]],
    specimenUnread: [[here, "13 8", "1968-03"]],
    specimenAstray: [[here, "3 8", "1958-03", ["1968-03", "1978-03"]]],
    specimenReads: [[here, "12 8", ["1968-12", "1978-12"]]],
    writtenInTwoFiles: [["us/care/label.yaml:5", "source", "care-rule", "us/wool/content.yaml:4"]],
    badFileName: [["us/Care Label.yaml"]],
    noHead: [["my-books"]],
    twoBooks: [["other.yaml", "marrowfield", "rulebooks/makers/marrowfield.yaml"]],
  }),
  sampled("Files", file, {
    notFound: [["my-garment.yml"]],
    notReadable: [["my-garment.yaml", "EACCES"]],
    tooLarge: [["photo.yaml", 9_000_000, 4_000_000]],
    notUtf8: [["my-garment.yaml"]],
    nothingInside: [["my-garment.yaml"]],
    tooManyEntries: [["my-book.yaml", 200_000]],
    tooDeep: [[here, 40]],
    severalDocuments: [[here]],
    aliasUsed: [[here, "window"]],
    tagUsed: [[here]],
    keyNotText: [[here]],
    keyReserved: [[here, "__proto__"]],
    duplicateKey: [[here, "window", 7]],
    tooManyProblems: [["my-book.yaml", 31]],
    notYaml: [[here, "BAD_INDENT", ""]],
  }),
  sampled("Words on the command line", input, {
    notPair: [["--saw", "label green-satin"]],
    notMonth: [["--today", "2026"]],
    monthsReversed: [["--since", "2027-01", "2026-11"]],
    unknownBook: [["book", "marowfield", ["public", "marrowfield"], "marrowfield"]],
    unknownMark: [["mark", "lable", "marrowfield", "label"]],
    badChart: [["chart", "a chart is 480 to 6000 pixels wide, not 100"]],
  }),
  sampled("The terminal", terminal, {
    notFound: [["rack.csv"]],
    notOpened: [["rack.csv", "EACCES"]],
    notWritten: [["dated.csv", "ENOSPC"]],
    sameFile: [["rack.csv"]],
    nothingToExamine: [[]],
    noBooksInFolder: [["my-books"]],
    notWorkers: [["--workers", "many"]],
    portTaken: [[4848]],
    notAddress: [["203.0.113.7", "EADDRNOTAVAIL"]],
    notPort: [["http"]],
    passphraseNeeded: [["0.0.0.0"]],
    passphraseShort: [["pass.txt", 15]],
  }),
  sampled("Tables and lists", batch, {
    empty: [["rack.csv"]],
    jsonList: [["rack.json"]],
    notText: [["rack.csv", "the file is not UTF-8 text"]],
    headerQuotes: [["rack.csv:1"]],
    nameless: [["rack.csv:1", 4]],
    twice: [["rack.csv:1", ["label"]]],
    unknownColumn: [["rack.csv:1", "lable", "label"]],
    cellCount: [["rack.csv:17", 5, 6]],
    openQuote: [["rack.csv:17"]],
    tooLong: [["rack.csv:17", 1_000_000]],
    notJson: [["rack.jsonl:17", "Unexpected token"]],
  }),
  sampled("The rack", rack, {
    noGarment: [["k3v9x0p2m4aa"]],
    savedBetween: [["0147", "Ana", "2026-11-05T14:20:00.000Z"]],
    noStep: [[9]],
    noPhoto: [["content.photos #1", "9f86d081884c7d659a2feaa0c55ad015"]],
    changesNothing: [[]],
    busyGarments: [[]],
    tooManyTags: [["0147", 40]],
    noEdition: [["marrowfield", 9]],
    editionTaken: [["marrowfield"]],
    numberTaken: [["line 17", "0147"]],
    numberTwice: [["line 17", "0147", "line 5"]],
    noNumber: [["line 17"]],
    noNumberColumn: [[]],
    mappedTwice: [["title", ["name", "title"]]],
    noSuchColumn: [["shelf"]],
    noSuchTarget: [["shelf", "cupboard"]],
    badMoney: [["line 17 asked", "about 90"]],
    nothingToImport: [["text"]],
    notJson: [["line 17", "Unexpected token"]],
    tooManyLines: [[50_000]],
  }),
  sampled("The server", server, {
    notJson: [["Unexpected end of input"]],
    wrongMedia: [["text/plain", ["application/json"]]],
    tooLarge: [[1_000_000]],
    nothingHere: [["/api/garment"]],
    wrongMethod: [["/api/rack", ["GET"]]],
    strangeHost: [["shop.example"]],
    strangeOrigin: [[]],
    notSignedIn: [[]],
    wrongPassphrase: [[]],
    noPassphrase: [[]],
    tooManyTries: [[8]],
    ourFault: [[]],
    noScreens: [[]],
  }),
  sampled("What is kept", store, {
    newerData: [["shop", 9, 2]],
    folderClosed: [["shop", "permission denied"]],
    diskFull: [["shop"]],
    diskFailing: [["shop"]],
    photoHeic: [["front.heic"]],
    photoUnknown: [["front.svg"]],
    photoBroken: [["front.jpg"]],
    photoTooLarge: [["front.jpg", 75, 60]],
    photoTooManyPixels: [["front.jpg", 225, 200]],
  }),
  sampled("Archives", archive, {
    unreadable: [["shop.zip", "end of central directory record signature not found"]],
    notOurs: [["shop.zip", "it has no ticking.json"]],
    newer: [["shop.zip", 2, 1]],
    strangeEntry: [["shop.zip", "../../evil"]],
    entryTwice: [["shop.zip", "history.jsonl"]],
    entryMissing: [["shop.zip", "history.jsonl"]],
    entryChanged: [["shop.zip", "history.jsonl"]],
    unpacksTooLarge: [["shop.zip", "history.jsonl"]],
    noRoom: [["shop.zip", 900, 120]],
    badLine: [["shop.zip", "history.jsonl", 17, "Invalid input"]],
    contradiction: [["shop.zip"]],
    rackNotEmpty: [["shop"]],
    otherBook: [["mine", 2]],
  }),
];
