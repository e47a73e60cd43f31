// What two notes of one sale agree in, whoever wrote them down.
import type {Sale} from "../../worth/model.ts";

export const sameSale = ({soldOn, price, kind}: Sale) => `${soldOn} ${price.cents} ${price.currency} ${kind.trim().toLowerCase()}`;
