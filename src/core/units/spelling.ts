import { present } from "../present";

/** Spellings that people type, exact match on the whole unit. */
const spellings = new Map(
  Object.entries({
    '"': "in",
    "''": "in",
    "'": "ft",
    "°": "deg",
    "in.": "in",
    MPA: "MPa",
    Mpa: "MPa",
    PSI: "psi",
    KSI: "ksi",
    RPM: "rpm",
    FPM: "fpm",
    sfpm: "fpm",
    IN: "in",
    MM: "mm",
    LBF: "lbf",
  }),
);

/** "celsius", "Degrees Fahrenheit", "° Rankine", "KELVIN". */
const temperatureWords = /(?:(?:°|\bdeg(?:rees?)?\.?)\s*)?\b(celsius|kelvin|fahrenheit|rankine)\b/gi;
const temperatureSigns: Record<string, string> = { celsius: "degC", kelvin: "K", fahrenheit: "degF", rankine: "degR" };

/** The form that the unit algebra reads: "lbf/in²" and "N/mm2" with powers, "·" as a product, "µ" as a prefix. */
export function algebraic(unit: string): string {
  const text = unit.trim().replace(/[º˚]/g, "°");
  const known = spellings.get(text);
  if (known) return known;
  return text
    .replace(/″|”/g, "in")
    .replace(/′|’/g, "ft")
    .replace(/[·×⋅•]/g, "*")
    .replace(/[µμ]/g, "u")
    .replace(/[⁻⁰¹²³⁴-⁹]+/g, (digits) => `^${[...digits].map((d) => "-0123456789"["⁻⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(d)]).join("")}`)
    .replace(/\bNm\b/g, "(N*m)")
    .replace(/([A-Za-z])([23])(?![0-9A-Za-z])/g, "$1^$2")
    .replace(temperatureWords, (_, word: string) => present(temperatureSigns[word.toLowerCase()]))
    .replace(/(?:°|\bdeg(?:rees?)?\.?)\s?([CFR])\b/gi, (_, letter: string) => `deg${letter.toUpperCase()}`)
    .replace(/^(rev|revs|r|cycles?|strokes?|swings?|1)\s*\//, "/");
}

/** Units that exist and that nobody means here: a slip of the shift key, and a thousand million off. */
const slips: readonly (readonly [slip: RegExp, meant: string])[] = [
  [/\bmPa\b/, "MPa"],
  [/\bMm\b/, "mm"],
];
export function meantBy(unit: string): string | undefined {
  const found = slips.find(([slip]) => slip.test(unit));
  return found && unit.replace(...found);
}
export const askedFor = (meant: string | undefined): string => (meant ? ` (did you mean ${meant}?)` : "");

/** "10⁻⁶/K", "1e-6/K" and "×10^-6 mm³/(N·m)": columns of small numbers carry a power of ten before their unit. */
export function splitPower(unit: string): { power: number; unit: string } {
  const [whole, power] = /^[*x]?\s*(?:1e|10\s*\^)\s*([-+\u2212]?\d+)\s*\*?\s*(?:1(?=\/))?/i.exec(unit) ?? [];
  if (whole === undefined || power === undefined) return { power: 1, unit };
  return { power: Number(`1e${power.replace("\u2212", "-")}`), unit: unit.slice(whole.length) };
}
