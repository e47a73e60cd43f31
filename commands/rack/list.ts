// All commands on the rack, so that names stay unique and every way in offers the same.
import {addGarment} from "./add-garment.ts";
import {changeGarment} from "./change-garment.ts";
import {editMany} from "./edit-many.ts";
import {examineOnRack} from "./examine-on-rack.ts";
import {garmentHistory, undoGarment} from "./garment-history.ts";
import {getGarment} from "./get-garment.ts";
import type {RackCommand} from "./rack-command.ts";
import {redateGarments} from "./redate.ts";
import {putBackGarment, removeGarment} from "./remove-garment.ts";
import {searchRack} from "./search-rack.ts";

export const rackCommands = [
  examineOnRack, searchRack, addGarment, getGarment, changeGarment, removeGarment, putBackGarment, garmentHistory, undoGarment, editMany, redateGarments,
] as unknown as readonly RackCommand[];
