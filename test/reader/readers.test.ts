// The one suite over both readers: the one that is shipped, and a general one that shows that another can stand in.
import {openPackagedReader} from "../../reader/node.ts";
import {openGeneralReader} from "../photo/general-reader.ts";
import {readerContract} from "./contract.ts";

readerContract("the packaged reader", openPackagedReader);
readerContract("a general text library", openGeneralReader);
