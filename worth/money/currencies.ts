// Currencies of ISO 4217 and how many digits their smaller unit has.

/** Codes by digits. Source: ISO 4217 list one, from memory; compared with the digits of the Unicode CLDR in the tests. */
const codes: Readonly<Record<number, string>> = {
  0: "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF",
  2:
    "AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CNY COP CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP " +
    "GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD " +
    "PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD UYU UZS VED VES WST XCD XCG YER ZAR ZMW ZWG",
  3: "BHD IQD JOD KWD LYD OMR TND",
  4: "CLF UYW",
};

const digits = new Map(Object.entries(codes).flatMap(([count, list]) => list.split(" ").map((code) => [code, Number(count)] as const)));

/** Every known code, in order. */
export const currencies: readonly string[] = [...digits.keys()].sort();

/** Digits of the smaller unit: 2 for USD, 0 for JPY; null for a code that is no currency. */
export const digitsOf = (currency: string): number | null => digits.get(currency) ?? null;
