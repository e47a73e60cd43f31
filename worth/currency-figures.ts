// The currencies of ISO 4217 and how many figures their smallest unit takes: 2 for cents, 0 for yen, 3 for fils.
// Source: ISO 4217, list one, published 2024-06-25. What a runtime knows of it differs: it rounds some currencies to the coins in use.

const byFigures: readonly (readonly [figures: number, codes: string])[] = [
  [0, "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF"],
  [3, "BHD IQD JOD KWD LYD OMR TND"],
  [4, "CLF UYW"],
  [
    2,
    "AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BOV BRL BSD BTN BWP BYN BZD CAD CDF CHE CHF CHW CNY COP COU CRC CUC CUP CVE CZK DKK" +
    " DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA" +
    " MKD MMK MNT MOP MRU MUR MVR MWK MXN MXV MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD" +
    " SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD USN UYU UZS VED VES WST XCD YER ZAR ZMW ZWG",
  ],
];

const figures: ReadonlyMap<string, number> = new Map(byFigures.flatMap(([count, codes]) => codes.split(" ").map((code) => [code, count] as const)));

/** Whether three letters name a currency; what is counted in no coins, such as gold, is none. */
export const isCurrency = (code: string): boolean => figures.has(code);

/**
 * Figures behind the point; two for letters that name no currency.
 * @example
 * figuresOf("KWD") // -> 3
 */
export const figuresOf = (code: string): number => figures.get(code) ?? 2;

/** All codes, in their alphabetical order. */
export const currencies: readonly string[] = [...figures.keys()].sort();
