import { checkDomain } from "../domain";
import type { Bounds } from "../domain";
import { BushError, checkLength, clash, mustBe, show } from "../errors";
import { splitNumber } from "../numbers";

/** An amount, and its currency where one is named. */
export interface Money {
  readonly amount: number;
  /** A code of ISO 4217. */
  readonly currency?: string;
}

/** ISO 4217, the currencies in use (memory). */
const codes: ReadonlySet<string> = new Set(
  (
    "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BGN BHD BIF BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CLP CNY COP " +
    "CRC CUP CVE CZK DJF DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GNF GTQ GYD HKD HNL HTG HUF IDR ILS INR IQD " +
    "IRR ISK JMD JOD JPY KES KGS KHR KMF KPW KRW KWD KYD KZT LAK LBP LKR LRD LSL LYD MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR " +
    "MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD OMR PAB PEN PGK PHP PKR PLN PYG QAR RON RSD RUB RWF SAR SBD SCR SDG SEK SGD SHP " +
    "SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TND TOP TRY TTD TWD TZS UAH UGX USD UYU UZS VES VND VUV WST XAF XCD XOF XPF " +
    "YER ZAR ZMW"
  ).split(" "),
);
const signs: Readonly<Record<string, string>> = {
  ...{ "€": "EUR", EURO: "EUR", EUROS: "EUR", "£": "GBP", RMB: "CNY" },
  ...{
    US$: "USD",
    $US: "USD",
    A$: "AUD",
    AU$: "AUD",
    C$: "CAD",
    CA$: "CAD",
    NZ$: "NZD",
    HK$: "HKD",
    S$: "SGD",
    NT$: "TWD",
  },
};
/** Signs that several currencies share, and which. */
const shared: Readonly<Record<string, { readonly by: readonly string[]; readonly question: string }>> = {
  $: {
    by: ["USD", "CAD", "AUD", "NZD", "SGD", "HKD", "TWD", "MXN", "BRL", "CLP", "COP", "ARS"],
    question: "which dollar? Type USD, CAD, AUD",
  },
  "¥": { by: ["JPY", "CNY"], question: "which one? Type JPY or CNY" },
};

/** The currency of a word or sign; a sign that several share is the heading's, where that names one of them, else it is asked for. */
export function currencyOf(name: string, label: string, heading?: string): string {
  const word = label.trim().toUpperCase();
  if (codes.has(word)) return word;
  const known = signs[word];
  if (known) return known;
  const sharing = shared[word];
  if (!sharing) throw mustBe(name, "a currency by its ISO 4217 code, such as EUR", label);
  if (heading !== undefined && sharing.by.includes(heading)) return heading;
  throw clash(name, `${name} ${show(label)}: ${sharing.question} in its place`);
}

/** What a price may say behind it without changing it. */
const apiece = /\s*(?:(?:\/|\bper\b)\s*(?:pcs?|pieces?)|\beach|\bea)\.?$/i;
const before = /^([^\d\s.,+\-\u2212]{1,5})\s*(?=[\d.,+\-\u2212])/u;

/** "EUR 1,250.50", "3,20 €", "2.40 USD each" or a plain number; `heading` is the currency that the heading names. */
export function readMoney(name: string, bounds: Bounds, cell: number | string, heading?: string): Money {
  const money = typeof cell === "number" ? { amount: cell } : parse(name, cell, heading);
  checkDomain(name, bounds, money.amount, "metric", cell);
  return heading === undefined ? money : { currency: heading, ...money };
}

function parse(name: string, cell: string, heading: string | undefined): Money {
  checkLength(name, cell);
  const found = splitMoney(cell);
  if (!found) throw mustBe(name, 'an amount like "EUR 2.40"', cell);
  const { amount, label } = found;
  if (label === "") return { amount };
  try {
    return { amount, currency: currencyOf(name, label, heading) };
  } catch (error) {
    // what is asked of a sign is told as it is
    throw error instanceof BushError && shared[label] ? error : mustBe(name, 'an amount like "EUR 2.40"', cell);
  }
}

/** An amount as it reads away from its heading, whose currency one without any gets, and a sign that several share, if it may be that. */
export function inCurrency(cell: string, heading: string): string {
  const { label } = splitMoney(cell) ?? {};
  if (label === "") return `${cell.trim().replace(apiece, "")} ${heading}`;
  return label !== undefined && shared[label]?.by.includes(heading)
    ? `${cell.replace(label, "").trim()} ${heading}`
    : cell;
}

/** An amount and what stands before or behind it, not on both sides. */
function splitMoney(cell: string): { amount: number; label: string } | undefined {
  const text = cell.trim().replace(apiece, "");
  const leading = before.exec(text);
  const found = splitNumber(leading ? text.slice(leading[0].length) : text);
  if (!found || found.isFraction || (leading && found.rest !== "")) return undefined;
  return { amount: found.value, label: leading?.[1] ?? found.rest };
}

/** Amounts that are added up have one currency; plain numbers go with any. */
export function checkOneCurrency(name: string, cells: readonly unknown[]): void {
  let first: string | undefined;
  for (const cell of cells) {
    if (typeof cell !== "string" || cell.trim() === "") continue;
    const { currency } = parse(name, cell, undefined);
    if (currency === undefined) continue;
    first ??= currency;
    if (currency !== first) throw clash(name, `${name}: amounts in ${first} and in ${currency} are never added up`);
  }
}
