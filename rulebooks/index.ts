// The whole public face of the rule books on one screen.
export {chartBook, type ChartOptions} from "./chart.ts";
export {compareBooks, printChanges, type Change} from "./compare.ts";
export {datedRules, type DatedRule} from "./dated-rules.ts";
export {bookJsonSchema, garmentJsonSchema, subjectJsonSchema} from "./json-schema.ts";
export {loadBook, loadBooks, loadGarment, shippedBooks} from "./load.ts";
export {checkSpecimens, type Reading} from "./specimens.ts";
export {validateBook, validateGarment, type CheckedBook, type CheckedGarment} from "./validate.ts";
