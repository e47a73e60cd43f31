// The part of the rack that is shown.
import type {RackPage} from "../../store/model.ts";
import {writeQuestion, type RackView} from "./address.ts";
import {usePages, type Pages} from "./use-pages.ts";

export const useRack = (query: RackView["query"]): Pages<RackPage> => usePages<RackPage>((offset, limit) => `/api/rack?${writeQuestion(query, offset, limit)}`);
