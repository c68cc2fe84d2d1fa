import { isoDeviations } from "../../../src/core/fit/zones/iso286";
import { ToleranceClass } from "../../../src/core/fit/zones/zone";

/**
 * Machine Drawing (Narayana, Kannaiah, Reddy), as printed: shafts of Table 15.2 up to 180 mm, and holes of Table 15.3 above,
 * grades above 7, with the sign changed; µm, s to zc. A dash in the book is a dash here.
 */
const printed = `
  3   14 -  18  -  20  -   26  32  40   60
  6   19 -  23  -  28  -   35  42  50   80
  10  23 -  28  -  34  -   42  52  67   97
  14  28 -  33  -  40  -   50  64  90   130
  18  28 -  33  39 45  -   60  77  108  150
  24  35 -  41  47 54  63  73  98  136  188
  30  35 41 48  55 64  75  88  118 160  218
  40  43 48 60  68 80  94  112 148 200  274
  50  43 54 70  81 97  114 136 180 242  325
  65  53 66 87  102 122 144 172 226 300 405
  80  59 75 102 120 146 174 210 274 360 480
  100 71 91 124 146 178 214 258 335 445 585
  120 79 104 144 172 210 254 310 400 525 690
  140 92 122 170 202 248 300 365 470 620 800
  160 100 134 190 228 280 340 415 535 700 900
  180 108 146 210 252 310 380 465 600 780 1000
  200 122 166 236 284 350 425 520 670 880 1150
  225 130 180 256 310 385 470 575 740 960 1250
  250 140 196 284 340 425 520 640 820 1050 1350
  280 158 218 315 385 475 580 710 920 1200 1550
  315 170 240 350 425 525 650 790 1000 1300 1700
  355 190 268 390 475 590 730 900 1150 1500 1900
  400 208 294 435 530 650 820 1000 1300 1650 2100
  450 232 330 490 595 740 920 1100 1450 1850 2400
  500 252 360 540 660 820 1000 1250 1600 2100 2600`;

/**
 * Errata of Table 15.3, against the book's own formulas: it prints U above 200 up to 225 mm as −256, IT7 + D = 46 + √(200·225)
 * = 258.1 (the compiled rows have 258 too), and X above 355 up to 400 mm as −650, IT7 + 1.6·D = 57 + 1.6·√(355·400) = 659.9.
 */
const misprints: Record<string, string> = { "225 u": "258", "400 x": "660" };

const letters = ["s", "t", "u", "v", "x", "y", "z", "za", "zb", "zc"];

/** How many cells of the printed table the shaft and its mirrored hole both agree with; the first that does not is thrown. */
export function agreeingCells(): number {
  let agreeing = 0;
  for (const line of printed.trim().split("\n")) {
    const [size, ...values] = line.trim().split(/\s+/);
    values.forEach((asPrinted, i) => {
      const letter = letters[i]!;
      const value = misprints[`${size} ${letter}`] ?? asPrinted;
      const shaft = isoDeviations(new ToleranceClass(letter, 8), Number(size))?.lower;
      const hole = isoDeviations(new ToleranceClass(letter.toUpperCase(), 8), Number(size))?.upper;
      const found = [shaft, hole && -hole].map((mm) => (mm === undefined ? "-" : String(Math.round(mm * 1000))));
      if (found.some((text) => text !== value))
        throw new Error(`${letter} up to ${size} mm: printed ${value}, got ${found.join(" and ")}`);
      agreeing++;
    });
  }
  return agreeing;
}
