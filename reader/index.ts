// The whole public face of reading labels; it runs in a browser and in Node alike. What only Node has is in node.ts.
export * from "./model.ts";
export {NoReader, type FoundLine, type LabelReader, type LineOptions, type OpenRow, type Pixels} from "./reader.ts";
export {readLabel, scaledReading, type LabelAnswer, type LabelOptions, type ReadLabel} from "./read-label.ts";
export {openReader, type Models, type ReaderFiles} from "./onnx/open.ts";
export {defaultMap, mapRow, noMap, unmapRow} from "./map.ts";
export {rowSeen, type RowSide, type SeenReadings, type SeenText} from "./row-seen.ts";
export {settle} from "./settle.ts";
export {binsOf, errorOf, fitMap, judgeMap, type KnownRow, type MapJudged, type ReliabilityBin} from "./fit-map.ts";
