// Written by `npm run sync` from the specs in src/core; edits here are lost.
/* oxlint-disable typescript/no-explicit-any -- a cell of any kind, as Excel's generator wants it */

import { functions } from "../core";
import { answer } from "../edge/sheet";

/**
 * Wear rate of a duty: the rate of the tests times correction factors of your choice, each 1 unless given; figures named with them are recalled, not read. Too low where a factor that applies is left at 1; the rate of another processing was up to 11 times too low. Not for metals with solid lubricant. Answers mm³/(N·m) (in³·min/(ft·lbf·h))
 * @customfunction WEARRATE
 * @param base Specific wear rate of the tests; mm³/(N·m) (in³·min/(ft·lbf·h)), 0 mm³/(N·m) or more
 * @param [geometry] Factor of the motion; load that turns with the shaft 0.5, fixed load 1, oscillation 2; above 0, default 1
 * @param [heat] Factor of the cooling; thin metal housing or intermittent 0.5, metal and continuous 1, non-metal and continuous 2; leave 1 where the rate is of the bore's own temperature; above 0, default 1
 * @param [temperature] Factor of the temperature; at 20, 100, 200 °C with PTFE 1, 2, 5, with carbon or thermosets 1, 3, 6; leave 1 where the rate is of the bore's own temperature; above 0, default 1
 * @param [counterface] Factor of the shaft's material; stainless or chromed 0.5, steel 1, soft non-ferrous metal 2 to 5; above 0, default 1
 * @param [finish] Factor of the shaft's roughness; Ra 0.1 to 0.2 µm 1, to 0.4 µm 2 to 3, to 0.8 µm 4 to 10; above 0, default 1
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function WEARRATE(
  base: any[][],
  geometry?: any[][],
  heat?: any[][],
  temperature?: any[][],
  counterface?: any[][],
  finish?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.WEARRATE, [base, geometry, heat, temperature, counterface, finish, units]);
}
/**
 * Wear depth after a sliding distance, load fixed to the bush and the shaft moving; a rate from flat tests needs from and clearance, without them the depth is at least 21 % too small. One rate for other pressures and speeds was up to 2.6 times too low. Answers mm (in)
 * @customfunction WEAR
 * @param wearrate Specific wear rate; with your own factors from WEARRATE where you have them; mm³/(N·m) (in³·min/(ft·lbf·h)), 0 mm³/(N·m) or more
 * @param pressure Mean pressure on the projected area; MPa (psi), 0 MPa or more
 * @param distance Sliding distance; km (mi), 0 km or more
 * @param [from] Tests that gave the wear rate; bushes on their projected area, or flats and pins, whose rate knows nothing of how a load gathers at the bottom of a bore; "bush" or "flat", default "bush"
 * @param [clearance] Diametral clearance when new; needed with "flat", 0 is a shaft that fits its bore; mm (in), 0 mm or more
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function WEAR(
  wearrate: any[][],
  pressure: any[][],
  distance: any[][],
  from?: any[][],
  clearance?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.WEAR, [wearrate, pressure, distance, from, clearance, units]);
}
/**
 * Wear depth after a sliding distance, running in included; WEAR leaves it out, the unsafe side of a small allowance. Answers mm (in)
 * @customfunction RUNNINGIN
 * @param wearrate Specific wear rate once run in; mm³/(N·m) (in³·min/(ft·lbf·h)), 0 mm³/(N·m) or more
 * @param pressure Mean pressure on the projected area; MPa (psi), 0 MPa or more
 * @param distance Sliding distance; km (mi), 0 km or more
 * @param depth Depth that running in takes in all; mm (in), 0 mm or more
 * @param [over] Distance in which the pace of running in falls to 37 %; without it the whole depth counts, the safe side; km (mi), above 0 km
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function RUNNINGIN(
  wearrate: any[][],
  pressure: any[][],
  distance: any[][],
  depth: any[][],
  over?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.RUNNINGIN, [wearrate, pressure, distance, depth, over, units]);
}
/**
 * Peak pressure in a bore that the shaft has worn, and the half angle of contact; the peak of the new bore, PEAKPRESSURE, where that is lower. Answers peak pressure, half angle of contact in degrees
 * @customfunction WORNPEAK
 * @param pressure Mean pressure on the projected area; MPa (psi), 0 MPa or more
 * @param sinking Depth by which the shaft has sunk in, from WEAR; mm (in), above 0 mm
 * @param clearance Diametral clearance when new; mm (in), above 0 mm
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function WORNPEAK(pressure: any[][], sinking: any[][], clearance: any[][], units?: any[][]): any[][] {
  return answer(functions.WORNPEAK, [pressure, sinking, clearance, units]);
}
/**
 * How far a tilted shaft has bedded in after a sliding distance: the distance after which all of it bears, pressure on the part that bears, its length. For a flat face; an estimate in a bore. Answers distance after which the whole length bears, pressure on the bedded part, its length
 * @customfunction BEDDING
 * @param wearrate Specific wear rate; mm³/(N·m) (in³·min/(ft·lbf·h)), above 0 mm³/(N·m)
 * @param pressure Mean pressure on the projected area; MPa (psi), above 0 MPa
 * @param length Length of the bush; mm (in), above 0 mm
 * @param tilt Slope of the shaft in the bush; °, above 0° and at most 45°
 * @param distance Sliding distance; km (mi), above 0 km
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function BEDDING(
  wearrate: any[][],
  pressure: any[][],
  length: any[][],
  tilt: any[][],
  distance: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.BEDDING, [wearrate, pressure, length, tilt, distance, units]);
}
/**
 * Running hours until the wear allowance is used up; times 60 and the cycles per minute it gives cycles; a rate from flat tests needs from and clearance, without them the life is at least 27 % too long. Answers h
 * @customfunction LIFE
 * @param wearrate Specific wear rate; with your own factors from WEARRATE where you have them; mm³/(N·m) (in³·min/(ft·lbf·h)), above 0 mm³/(N·m)
 * @param pressure Mean pressure; without any there is no wear and no finite life; MPa (psi), above 0 MPa
 * @param speed Mean sliding speed; at rest there is no wear and no finite life; m/s (ft/min), above 0 m/s
 * @param allowance Wear depth that may be used up; mm (in), above 0 mm
 * @param [from] Tests that gave the wear rate; bushes on their projected area, or flats and pins, whose rate knows nothing of how a load gathers at the bottom of a bore; "bush" or "flat", default "bush"
 * @param [clearance] Diametral clearance when new; needed with "flat", 0 is a shaft that fits its bore; mm (in), 0 mm or more
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function LIFE(
  wearrate: any[][],
  pressure: any[][],
  speed: any[][],
  allowance: any[][],
  from?: any[][],
  clearance?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.LIFE, [wearrate, pressure, speed, allowance, from, clearance, units]);
}
/**
 * Shortest and longest life of a grade by its greatest and least wear rate, in hours, then in sliding distance; #N/A where pressure, speed or PV are beyond its limits at 23 °C. Answers one row: shortest and longest life, and the sliding distance of each
 * @customfunction LIFEBAND
 * @param grade Name of a grade in grades or in the library
 * @param pressure Mean pressure; without any there is no wear and no finite life; MPa (psi), above 0 MPa
 * @param speed Mean sliding speed; at rest there is no wear and no finite life; m/s (ft/min), above 0 m/s
 * @param allowance Wear depth that may be used up; mm (in), above 0 mm
 * @param [clearance] Diametral clearance when new; needed unless the grade's wear rates are known to come from bush tests, and else not used; mm (in), 0 mm or more
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function LIFEBAND(
  grade: any[][],
  pressure: any[][],
  speed: any[][],
  allowance: any[][],
  clearance?: any[][],
  grades?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.LIFEBAND, [grade, pressure, speed, allowance, clearance, grades, units]);
}
/**
 * Landed cost of one piece: price with duty, freight shared by the lot, tooling shared by the planned volume; all amounts in one currency
 * @customfunction LANDED
 * @param price Unit price; above 0
 * @param quantity Pieces in the lot ordered; a whole number and above 0
 * @param [tooling] Tooling cost, paid once; 0 or more, default 0
 * @param [volume] Pieces planned over the life of the tooling; needed where tooling is given; a whole number and 0 or more
 * @param [freight] Freight of the whole lot; 0 or more, default 0
 * @param [duty] Import duty on the unit price: 0.04 or "4 %"; from 0 % to 100 %, default 0
 */
export function LANDED(
  price: any[][],
  quantity: any[][],
  tooling?: any[][],
  volume?: any[][],
  freight?: any[][],
  duty?: any[][],
): any[][] {
  return answer(functions.LANDED, [price, quantity, tooling, volume, freight, duty]);
}
/**
 * Unit price for an order quantity, from a table of price breaks in one currency
 * @customfunction PRICEAT
 * @param quantity Pieces ordered; a whole number and above 0
 * @param breaks Price breaks; two columns: quantity from which a price holds (or "100-499"), price; or three: from, to, price; in any order, with or without a heading row
 */
export function PRICEAT(quantity: any[][], breaks: any[][]): any[][] {
  return answer(functions.PRICEAT, [quantity, breaks]);
}
/**
 * Cost per 1000 running hours: part, labour and downtime of each replacement; all amounts in one currency
 * @customfunction RUNCOST
 * @param landed Landed cost of one part; above 0
 * @param life Running hours until it is replaced; h, above 0 h
 * @param [labour] Labour of one replacement; 0 or more, default 0
 * @param [downtime] Cost of standing still for one replacement; 0 or more, default 0
 */
export function RUNCOST(landed: any[][], life: any[][], labour?: any[][], downtime?: any[][]): any[][] {
  return answer(functions.RUNCOST, [landed, life, labour, downtime]);
}
/**
 * Offers, each with its own sizes judged by all criteria on a duty and costed: ranked fits, care, no data, fails, inside each by the cost of 1000 running hours with labour and downtime of each change; beside each what it would take, or what to ask. Answers one row per offer, then notes on the whole table
 * @customfunction QUOTES
 * @param quotes Offers; a heading row (part, supplier, grade, bore, length, wall, price, order quantity, least order, customs duty, lead time …; units in brackets: "bore [in]", "price [EUR]"; price breaks as "price from 100" or in rows) and one row per offer
 * @param duties Duties; a heading row (duty, load, bore, length, rpm, temperature …, units in brackets: "load [lbf]") and one row per duty, or a card with its headings down the first of two columns
 * @param [duty] Name of the duty, or its number in the table, steps counted once; not needed where there is one
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [rates] Exchange rates: what one unit of each currency is worth. Without them amounts in another currency are not ranked; a heading row (currency, rate, date) and one row per currency; "rate [EUR]" says what the rates are in
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function QUOTES(
  quotes: any[][],
  duties: any[][],
  duty?: any[][],
  grades?: any[][],
  rates?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.QUOTES, [quotes, duties, duty, grades, rates, units]);
}
/**
 * Which offer to buy and why, the runner-up and what it costs more, what would turn the order round, and what to ask each supplier, line by line. Answers one line per statement
 * @customfunction DECISION
 * @param quotes Offers; a heading row (part, supplier, grade, bore, length, wall, price, order quantity, least order, customs duty, lead time …; units in brackets: "bore [in]", "price [EUR]"; price breaks as "price from 100" or in rows) and one row per offer
 * @param duties Duties; a heading row (duty, load, bore, length, rpm, temperature …, units in brackets: "load [lbf]") and one row per duty, or a card with its headings down the first of two columns
 * @param [duty] Name of the duty, or its number in the table, steps counted once; not needed where there is one
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [rates] Exchange rates: what one unit of each currency is worth. Without them amounts in another currency are not ranked; a heading row (currency, rate, date) and one row per currency; "rate [EUR]" says what the rates are in
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function DECISION(
  quotes: any[][],
  duties: any[][],
  duty?: any[][],
  grades?: any[][],
  rates?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.DECISION, [quotes, duties, duty, grades, rates, units]);
}
