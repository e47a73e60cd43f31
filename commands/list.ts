// All commands, so that names stay unique and other ways in can offer every one of them.
import {askNext} from "./ask.ts";
import {briefGarment} from "./brief.ts";
import {chartOfBook} from "./chart-book.ts";
import type {Command} from "./command.ts";
import {compareEditions} from "./compare-books.ts";
import {examineGarment} from "./examine.ts";
import {listBooks} from "./list-books.ts";
import {showBook} from "./show-book.ts";
import {showSchema} from "./show-schema.ts";
import {fitGarment} from "./state/fit-garment.ts";
import {gradeGarment} from "./state/grade-garment.ts";
import {measureGarment} from "./state/measure-garment.ts";

export const commands = [examineGarment, briefGarment, askNext, listBooks, showBook, compareEditions, chartOfBook, showSchema, measureGarment, gradeGarment, fitGarment] as unknown as readonly Command[];
