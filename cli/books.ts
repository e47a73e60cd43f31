// ticking books: list, check, show, compare and chart rule books; print the schemas.
import {Argument, type Command} from "commander";
import {chartOfBook} from "../commands/chart-book.ts";
import {compareEditions} from "../commands/compare-books.ts";
import {listBooks} from "../commands/list-books.ts";
import {showBook} from "../commands/show-book.ts";
import {showSchema} from "../commands/show-schema.ts";
import {checkBooks} from "./books/check.ts";
import {compareTwo} from "./books/compare.ts";
import {drawChart} from "./books/chart.ts";
import {printList} from "./books/list.ts";
import {printShow} from "./books/show.ts";
import {printSchema} from "./books/schema.ts";
import {examples} from "./help.ts";
import {collected, helpOf, verb, withWorld} from "./shared.ts";

const asJson = ["--json", "answer as JSON"] as const;

export function booksVerb(): Command {
  const books = verb("books", "list, check, show, compare and chart rule books");
  books.addCommand(withWorld(verb("list", listBooks.summary).option(...asJson)).action(printList));
  books.addCommand(
    verb("check", "say everything that has to be mended in rule books")
      .argument("<file-or-folder...>", "book files, folders with a book.yaml, or folders of books")
      .addHelpText("after", examples("ticking books check rulebooks/makers/marrowfield.yaml", "ticking books check rulebooks/public rulebooks/makers"))
      .action(checkBooks),
  );
  books.addCommand(
    withWorld(verb("show", showBook.summary).argument("[book]", `${helpOf(showBook.input, "book")}; all are listed when left out`).argument("[mark]", helpOf(showBook.input, "mark")).option(...asJson))
      .addHelpText("after", examples("ticking books show marrowfield", "ticking books show marrowfield label", "ticking books show public us.care.label.instructions"))
      .action(printShow),
  );
  books.addCommand(
    verb("compare", compareEditions.summary)
      .argument("<old>", helpOf(compareEditions.input, "before"))
      .argument("<new>", helpOf(compareEditions.input, "after"))
      .option(...asJson)
      .addHelpText("after", examples("ticking books compare rulebooks/makers/marrowfield.yaml rulebooks/makers/marrowfield.yaml"))
      .action(compareTwo),
  );
  const {input} = chartOfBook;
  books.addCommand(
    withWorld(verb("chart", chartOfBook.summary).argument("<book>", helpOf(input, "book")))
      .option("-o, --out <file.svg>", "write to a file; stdout when left out")
      .option("--from <month>", helpOf(input, "from"))
      .option("--until <month>", helpOf(input, "until"))
      .option("--width <pixels>", helpOf(input, "width"), Number)
      .option("--only <rules>", `${helpOf(input, "only")} (repeatable)`, collected)
      .addHelpText("after", examples("ticking books chart marrowfield -o marrowfield.svg", "ticking books chart marrowfield --only labels --from 1950-01 --until 1989-12"))
      .action(drawChart),
  );
  books.addCommand(
    verb("schema", showSchema.summary)
      .addArgument(new Argument("[of]", helpOf(showSchema.input, "of")).choices(["book", "subject", "garment", "finding"]).default("book"))
      .addHelpText("after", examples("ticking books schema garment"))
      .action(printSchema),
  );
  return books.addHelpText("after", examples("ticking books list", "ticking books show marrowfield label", "ticking books check rulebooks/makers/marrowfield.yaml"));
}
