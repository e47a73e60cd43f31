// All commands on sales and prices.
import {exportSales} from "./export-sales.ts";
import {findSales, getSale, saleHistory} from "./find-sales.ts";
import {importSales} from "./import-sales.ts";
import {worthOfGarment} from "./price-garment.ts";
import {worthOfLot} from "./price-lot.ts";
import {addSale, changeSale, putBackSale, removeSale} from "./save-sale.ts";
import {sellGarment} from "./sell-garment.ts";
import {shopBooks} from "./shop-books.ts";

/** Those whose paths are whole words stand before those that take an id. */
export const worthCommands = [findSales, exportSales, importSales, addSale, getSale, changeSale, removeSale, putBackSale, saleHistory, worthOfGarment, worthOfLot, shopBooks, sellGarment] as const;
