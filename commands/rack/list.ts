// All commands on the rack, so that names stay unique and every way in offers the same.
import {addGarment} from "./add-garment.ts";
import {compareBookEditions, getBookEdition, listBookEditions} from "./book-editions.ts";
import {changeGarment} from "./change-garment.ts";
import {editMany} from "./edit-many.ts";
import {examineOnRack} from "./examine-on-rack.ts";
import {exportGarments} from "./export-garments.ts";
import {findDuplicates} from "./find-duplicates.ts";
import {garmentHistory, undoGarment} from "./garment-history.ts";
import {getGarment} from "./get-garment.ts";
import {importGarments} from "./import-garments.ts";
import type {RackCommand} from "./rack-command.ts";
import {redateGarments} from "./redate.ts";
import {putBackGarment, removeGarment} from "./remove-garment.ts";
import {checkBookText, saveBook} from "./save-book.ts";
import {readingCommands} from "../reading/list.ts";
import {worthCommands} from "../worth/list.ts";
import {searchRack} from "./search-rack.ts";
import {getSetting, saveSetting} from "./setting-by-name.ts";
import {gradeRack} from "../state/grade-rack.ts";

export const rackCommands = [
  examineOnRack, searchRack, exportGarments, findDuplicates, importGarments, editMany, redateGarments,
  addGarment, getGarment, changeGarment, removeGarment, putBackGarment, garmentHistory, undoGarment,
  listBookEditions, checkBookText, saveBook, getBookEdition, compareBookEditions,
  getSetting, saveSetting, gradeRack,
  ...worthCommands, ...readingCommands,
] as unknown as readonly RackCommand[];
