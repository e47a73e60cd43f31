// Every picture of the guide by its file name. Answers come from the engine and the books that are shipped; nothing is drawn by eye.
import {makeExaminer, parseMonth, windowOf, type Book, type Finding, type Garment} from "../../engine/index.ts";
import {sharesOf} from "../../engine/mark/choice.ts";
import {loadGarment, shippedBooks} from "../../rulebooks/index.ts";
import {labelSlip} from "./label-slip.ts";
import {monthSets} from "./month-sets.ts";
import {ribbon} from "./ribbon.ts";
import {shareBands} from "./share-bands.ts";
import {twoReadings} from "./two-readings.ts";
import {windowShape} from "./window-shape.ts";

/** The month that pictures and printed answers of the docs are made for, so that they stay the same. */
export const docsToday = "2026-11";

/** All pictures: file name to SVG. */
export function pictures(): Record<string, string> {
  const loaded = shippedBooks();
  if (loaded.problems) throw new Error("the books that are shipped do not load");
  const {books} = loaded;
  const examiner = makeExaminer(books, {today: parseMonth(docsToday)!});
  const find = (garment: Garment): Finding => {
    const {finding, problems} = examiner.examine(garment);
    if (problems) throw new Error(`a garment of the pictures does not examine: ${problems[0]!.what}`);
    return finding;
  };
  const demo = (id: string) => find(loadGarment(`rulebooks/demo/garments/${id}.yaml`).garment!);
  const marrowfield = books.find(({book}) => book === "marrowfield")!;
  const open = books.find(({book}) => book === "public")!;
  const worn = demo("0147");

  return {
    "ribbon.svg": ribbon(worn, {
      title: "When was it made?",
      how: "Demo garment 0147. Years along, months down, the darker the likelier. Below, in stitches, when each thing seen was in use.",
      years: [1960, 1981],
      marks: [
        {name: "green-on-white satin label", window: windowOf(marrowfield.labels!.kinds["green-satin"]!.window)},
        {name: "month and year figure", window: windowOf(marrowfield.schemes["month-and-year-figure"]!.window)},
        {name: "plant 21, Eastgate", window: windowOf(marrowfield.plants!.codes["21"]!.window)},
        {name: "union label, blue and red", window: windowOf(unionValue(open).window)},
      ],
    }),
    "label.svg": labelSlip(worn, {
      title: "The label as read",
      how: "Demo garment 0147. Under the brackets: what each stretch most likely says. Ochre: a doubtful figure.",
      notes: ["lot 412, cloth 0318\nwhat was sewn, and of what", "March 1968, plant 21\nwhen and where; the worn 8 may be a 3 or a 6", "sizes\nno date in them"],
    }),
    "button.svg": twoReadings(
      [undefined, "12", "38"].map((stamp) => ({
        heading: stamp ? `button stamped ${stamp}` : "the label alone",
        finding: find({garment: "evenly spaced", maker: "marrowfield", saw: {label: ["white-cotton", "green-satin"], rows: ["412-0318", "1 2 3 8"], ...(stamp ? {"button-stamp": stamp} : {})}}),
      })),
      1,
      {title: "Two readings of one row, and the look that settles it", how: "A faded label, white or green, and four figures with even gaps: plant 12 in March 1968, or January 1972 at plant 38?"},
    ),
    "window.svg": windowShape(windowOf(unionValue(open).window), {
      title: "A window with soft ends",
      how: "The union label in blue and red: four months say when it came in and when it went out.",
      years: [1960, 1978],
    }),
    "shares.svg": shareBands(
      sharesOf(marrowfield.labels!.kinds, marrowfield.labels!.other, axis, {}),
      axis,
      ["white-cotton", "green-satin", "plain-white", "blue-nylon", "grey-taffeta"].map((id) => ({id, name: marrowfield.labels!.kinds[id]!.name.replace(/,.*| label| on-white/g, "")})),
      {title: "Windows that overlap share out", how: "Marrowfield's labels: which part of the garments of a month carried which one.", years: [1964, 1987]},
    ),
    "sets.svg": monthSets(demo("0187"), {
      title: "What the numbers of an answer mean",
      how: "Demo garment 0187, its label cut out: hardware and sewing alone. Each bar is a month.",
      years: [1972, 1976],
    }),
  };
}

const axis = {from: parseMonth("1951-01")!, until: parseMonth("2009-12")!};

function unionValue(book: Book) {
  const mark = book.marks["union.us.label.union"];
  const value = mark?.kind === "choice" ? mark.values["ilgwu-scalloped"] : undefined;
  if (!value) throw new Error("the public book no longer lists the union label that the pictures show");
  return value;
}
