/**
 * What each unit is in others, and the units that the others lead to. Sizes are exact but for those of eV, month and year (of 365.25
 * days). Sources: SI Brochure, 9th ed. (2019), tables 2, 4, 7, 8 and 2.3.1 for eV; NIST SP 811 (2008), app. B, for the others
 * (memory): torr = 101325/760 Pa, mmHg = 13.5951 × 9.80665 Pa, BTU of the International Table, hp = 550 ft·lbf/s, lbf = 0.45359237 × 9.80665 N.
 */
export const bases = ["kg", "m", "s", "A", "K", "rad"];

/** Size, symbol and word of each prefix. */
export const prefixes: readonly (readonly [size: number, symbol: string, word: string])[] = [
  [1e12, "T", "tera"],
  [1e9, "G", "giga"],
  [1e6, "M", "mega"],
  [1e3, "k", "kilo"],
  [100, "h", "hecto"],
  [10, "da", "deca"],
  [0.1, "d", "deci"],
  [0.01, "c", "centi"],
  [1e-3, "m", "milli"],
  [1e-6, "u", "micro"],
  [1e-9, "n", "nano"],
  [1e-12, "p", "pico"],
];

/** Names, apart by spaces, with a size and its unit. */
type Definitions = Readonly<Record<string, string>>;

/** Before these a prefix may stand as a symbol: kN. */
export const withSymbols: Definitions = {
  m: "1 m",
  g: "0.001 kg",
  s: "1 s",
  A: "1 A",
  K: "1 K",
  degC: "1 K",
  "degF degR": "0.5555555555555556 K",
  rad: "1 rad",
  deg: "0.017453292519943295 rad",
  Hz: "1 s^-1",
  N: "1 kg*m/s^2",
  dyn: "1e-5 N",
  J: "1 N*m",
  Wh: "3600 J",
  eV: "1.602176634e-19 J",
  W: "1 J/s",
  V: "1 W/A",
  VA: "1 W",
  ohm: "1 V/A",
  Pa: "1 N/m^2",
  bar: "100000 Pa",
  torr: "133.3223684210526 Pa",
  "l L": "0.001 m^3",
  t: "1000 kg",
};

/** Before these a prefix may stand as a word: kilonewton. */
export const withWords: Definitions = {
  "meter meters metre metres": "1 m",
  "gram grams": "1 g",
  "second seconds sec secs": "1 s",
  "ampere amperes amp amps": "1 A",
  kelvin: "1 K",
  "radian radians": "1 rad",
  "degree degrees": "1 deg",
  hertz: "1 Hz",
  "newton newtons": "1 N",
  "dyne dynes": "1 dyn",
  "joule joules": "1 J",
  erg: "1e-7 J",
  "electronvolt electronvolts": "1 eV",
  "watt watts": "1 W",
  "volt volts": "1 V",
  "pascal pascals": "1 Pa",
  "liter liters litre litres": "1 l",
  "tonne tonnes": "1 t",
};

/** These take none. */
export const withoutPrefix: Definitions = {
  kg: "1 kg",
  "in inch inches": "0.0254 m",
  "ft foot feet": "0.3048 m",
  "yd yard yards": "0.9144 m",
  "mi mile miles": "1609.344 m",
  "mil thou": "2.54e-5 m",
  uin: "2.54e-8 m",
  "angstrom angstroms": "1e-10 m",
  sqin: "1 in^2",
  "sqft sqfeet": "1 ft^2",
  "acre acres": "4046.8564224 m^2",
  "hectare hectares": "10000 m^2",
  cuin: "1 in^3",
  cuft: "1 ft^3",
  cc: "1e-6 m^3",
  "gal gallon gallons": "0.003785411784 m^3",
  "qt quart quarts": "0.000946352946 m^3",
  "pt pint pints": "0.000473176473 m^3",
  "floz fluidounce fluidounces": "2.95735295625e-5 m^3",
  "lb lbs lbm poundmass": "0.45359237 kg",
  "oz ounce ounces": "0.028349523125 kg",
  "gr grain grains": "6.479891e-5 kg",
  "ton tons": "907.18474 kg",
  "min minute minutes mins": "60 s",
  "h hr hrs hour hours": "3600 s",
  "d day days": "86400 s",
  "week weeks": "604800 s",
  "month months": "2629800 s",
  "year years": "31557600 s",
  rpm: "1 min^-1",
  fpm: "1 ft/min",
  "cycle cycles": "6.283185307179586 rad",
  "arcmin arcminute arcminutes": "0.0002908882086657216 rad",
  "arcsec arcsecond arcseconds": "4.84813681109536e-6 rad",
  celsius: "1 K",
  "fahrenheit rankine": "1 degR",
  "lbf poundforce": "4.4482216152605 N",
  "kip kips": "4448.2216152605 N",
  "kgf kilogramforce": "9.80665 N",
  millibar: "100 Pa",
  psi: "6894.757293168361 Pa",
  ksi: "6894757.293168361 Pa",
  atm: "101325 Pa",
  "mmHg mmhg": "133.322387415 Pa",
  "mmH2O mmh2o": "9.80665 Pa",
  "cmH2O cmh2o": "98.0665 Pa",
  "BTU BTUs": "1055.05585262 J",
  hp: "745.6998715822702 W",
};
