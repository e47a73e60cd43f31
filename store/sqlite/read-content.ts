// Reads a garment's content as it stands in the history: entries that came later than it was saved are filled in.
import type {Content} from "../model.ts";

const cameLater = {sizes: null, state: null, money: null, labels: []} satisfies Partial<Content>;

export const readContent = (text: string): Content => ({...cameLater, ...(JSON.parse(text) as Content)});
