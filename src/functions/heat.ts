// Written by `npm run sync` from the specs in src/core; edits here are lost.
/* oxlint-disable typescript/no-explicit-any -- a cell of any kind, as Excel's generator wants it */

import { functions } from "../core";
import { answer } from "../edge/sheet";

/**
 * Friction torque of a sleeve bush. Answers N·m (lbf·in)
 * @customfunction TORQUE
 * @param load Radial load; N (lbf), 0 N or more
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param friction Coefficient of friction; from 0 to 2
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function TORQUE(load: any[][], bore: any[][], friction: any[][], units?: any[][]): any[][] {
  return answer(functions.TORQUE, [load, bore, friction, units]);
}
/**
 * Friction torque of a thrust washer. Answers N·m (lbf·in)
 * @customfunction WASHERTORQUE
 * @param load Axial load; N (lbf), 0 N or more
 * @param inner Inner diameter of the bearing face; mm (in), 0 mm or more
 * @param outer Outer diameter of the bearing face; mm (in), above 0 mm
 * @param friction Coefficient of friction; from 0 to 2
 * @param [wearstate] "new": pressure uniform over the face, the greater torque; "worn": wear uniform over the face, after running in; "new" or "worn", default "new"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function WASHERTORQUE(
  load: any[][],
  inner: any[][],
  outer: any[][],
  friction: any[][],
  wearstate?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.WASHERTORQUE, [load, inner, outer, friction, wearstate, units]);
}
/**
 * Friction heat of a sliding contact. Answers W
 * @customfunction HEAT
 * @param load Load on the contact; N (lbf), 0 N or more
 * @param speed Mean sliding speed; m/s (ft/min), 0 m/s or more
 * @param friction Coefficient of friction; from 0 to 2
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function HEAT(load: any[][], speed: any[][], friction: any[][], units?: any[][]): any[][] {
  return answer(functions.HEAT, [load, speed, friction, units]);
}
/**
 * Running temperature of the bore by friction heat, a preliminary estimate at steady state, least and greatest: equal when the housing's path is given (mean of the bore, within 0.5 % of the rise; its hottest point up to 5 % above), else housing at ambient, often far too cool, and a housing that takes no heat. Answers least and greatest running temperature; the greatest is #N/A where no path is left
 * @customfunction RUNTEMP
 * @param load Radial load; N (lbf), 0 N or more
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param length Length of the bush; mm (in), above 0 mm
 * @param wall Wall thickness of the bush; mm (in), above 0 mm
 * @param speed Mean sliding speed; m/s (ft/min), 0 m/s or more
 * @param friction Coefficient of friction; from 0 to 2
 * @param ambient Temperature of the surroundings; °C (°F), -273.15 °C or more
 * @param bushconductivity Thermal conductivity of the bush; W/(m·K) (BTU·in/(h·ft²·°F)), above 0 W/(m·K)
 * @param shaftconductivity Thermal conductivity of the shaft; W/(m·K) (BTU·in/(h·ft²·°F)), above 0 W/(m·K)
 * @param endlength Length of each shaft end in the air; up to half way to the next bush, 0 where none stands out; mm (in), 0 mm or more
 * @param [ends] Number of shaft ends in the air; from 0 to 2, default 1
 * @param [housingpath] Conductance from the bush's seat to the surroundings; exposed area times film, or HOUSINGPATH. Without it both ends are told, housing at ambient and no way out through it; W/K, above 0 W/K
 * @param [film] Heat transfer coefficient from shaft to air; the default is still air, where 2 to 25 W/(m²·K) are usual; W/(m²·K) (BTU/(h·ft²·°F)), above 0 W/(m²·K), default 10 W/(m²·K)
 * @param [contact] Share of the bore that passes heat on; half is common practice, with a clearance C it is about 1/√(1 + λb·C/(0.027·w)); above 0 and at most 1, default 0.5
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function RUNTEMP(
  load: any[][],
  bore: any[][],
  length: any[][],
  wall: any[][],
  speed: any[][],
  friction: any[][],
  ambient: any[][],
  bushconductivity: any[][],
  shaftconductivity: any[][],
  endlength: any[][],
  ends?: any[][],
  housingpath?: any[][],
  film?: any[][],
  contact?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.RUNTEMP, [
    load,
    bore,
    length,
    wall,
    speed,
    friction,
    ambient,
    bushconductivity,
    shaftconductivity,
    endlength,
    ends,
    housingpath,
    film,
    contact,
    units,
  ]);
}
/**
 * PV whose friction heat the paths carry away at a given rise above ambient, least and greatest: equal when the housing's path is given, else a housing that takes no heat, the safe side, and one at ambient, often far too much; within 0.5 % for the mean of the bore, up to 5 % high for its hottest point. Answers least and greatest PV; the least is 0 where no path is left
 * @customfunction HEATPV
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param length Length of the bush; mm (in), above 0 mm
 * @param wall Wall thickness of the bush; mm (in), above 0 mm
 * @param rise Rise allowed above ambient; K (°F), above 0 K
 * @param friction Coefficient of friction; above 0 and at most 2
 * @param bushconductivity Thermal conductivity of the bush; W/(m·K) (BTU·in/(h·ft²·°F)), above 0 W/(m·K)
 * @param shaftconductivity Thermal conductivity of the shaft; W/(m·K) (BTU·in/(h·ft²·°F)), above 0 W/(m·K)
 * @param endlength Length of each shaft end in the air; up to half way to the next bush, 0 where none stands out; mm (in), 0 mm or more
 * @param [ends] Number of shaft ends in the air; from 0 to 2, default 1
 * @param [housingpath] Conductance from the bush's seat to the surroundings; exposed area times film, or HOUSINGPATH. Without it both ends are told, housing at ambient and no way out through it; W/K, above 0 W/K
 * @param [film] Heat transfer coefficient from shaft to air; the default is still air, where 2 to 25 W/(m²·K) are usual; W/(m²·K) (BTU/(h·ft²·°F)), above 0 W/(m²·K), default 10 W/(m²·K)
 * @param [contact] Share of the bore that passes heat on; half is common practice, with a clearance C it is about 1/√(1 + λb·C/(0.027·w)); above 0 and at most 1, default 0.5
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function HEATPV(
  bore: any[][],
  length: any[][],
  wall: any[][],
  rise: any[][],
  friction: any[][],
  bushconductivity: any[][],
  shaftconductivity: any[][],
  endlength: any[][],
  ends?: any[][],
  housingpath?: any[][],
  film?: any[][],
  contact?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.HEATPV, [
    bore,
    length,
    wall,
    rise,
    friction,
    bushconductivity,
    shaftconductivity,
    endlength,
    ends,
    housingpath,
    film,
    contact,
    units,
  ]);
}
/**
 * Thermal conductance of a wide plate round the bush, from its seat to the air on both faces; up to 4 % too high where the plate ends two lengths √(λ·t/2h) beyond the seat, a quarter too high at one. Answers W/K
 * @customfunction HOUSINGPATH
 * @param outside Outside diameter of the bush; mm (in), above 0 mm
 * @param thickness Thickness of the plate; mm (in), above 0 mm
 * @param conductivity Thermal conductivity of the plate; W/(m·K) (BTU·in/(h·ft²·°F)), above 0 W/(m·K)
 * @param [film] Heat transfer coefficient from plate to air; the default is still air; W/(m²·K) (BTU/(h·ft²·°F)), above 0 W/(m²·K), default 10 W/(m²·K)
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function HOUSINGPATH(
  outside: any[][],
  thickness: any[][],
  conductivity: any[][],
  film?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.HOUSINGPATH, [outside, thickness, conductivity, film, units]);
}
/**
 * Share of the bore that passes heat on to the wall, from the air gap of the clearance; 1.2 % too high against one solution in two dimensions. For thin walls
 * @customfunction CONTACTSHARE
 * @param clearance Diametral clearance; mm (in), 0 mm or more
 * @param wall Wall thickness of the bush; mm (in), above 0 mm
 * @param conductivity Thermal conductivity of the bush; W/(m·K) (BTU·in/(h·ft²·°F)), above 0 W/(m·K)
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function CONTACTSHARE(clearance: any[][], wall: any[][], conductivity: any[][], units?: any[][]): any[][] {
  return answer(functions.CONTACTSHARE, [clearance, wall, conductivity, units]);
}
/**
 * PV limit at a temperature of the surroundings: it falls with the rise that is left to the highest temperature and is 0 from there on; a few per cent high in still air, more where the bush cools worse than in the test that set the limit. Answers MPa·m/s (psi·ft/min)
 * @customfunction DERATEDPV
 * @param pvlimit PV limit at the reference temperature; MPa·m/s (psi·ft/min), above 0 MPa·m/s
 * @param highest Highest temperature of the bush; °C (°F), -273.15 °C or more
 * @param ambient Temperature of the surroundings, without the bush's own heat; °C (°F), -273.15 °C or more
 * @param [reference] Temperature of the surroundings at which the PV limit holds; °C (°F), -273.15 °C or more, default 23 °C
 * @param [exponent] How the cooling grows with the rise: 1 in proportion, 1.25 still air alone; from 1 to 2, default 1
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function DERATEDPV(
  pvlimit: any[][],
  highest: any[][],
  ambient: any[][],
  reference?: any[][],
  exponent?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.DERATEDPV, [pvlimit, highest, ambient, reference, exponent, units]);
}
/**
 * Temperature of the bore that a PV implies, as the PV limit brings the bush to its highest temperature; low below that limit where friction falls with heat: by up to 4.5 K for a highest temperature of 90 °C, 13.5 K for 150 °C, 30.5 K for 250 °C. Answers °C (°F)
 * @customfunction BORETEMP
 * @param pv PV of the duty; MPa·m/s (psi·ft/min), 0 MPa·m/s or more
 * @param pvlimit PV limit at the reference temperature; MPa·m/s (psi·ft/min), above 0 MPa·m/s
 * @param highest Highest temperature of the bush; °C (°F), -273.15 °C or more
 * @param ambient Temperature of the surroundings, without the bush's own heat; °C (°F), -273.15 °C or more
 * @param [reference] Temperature of the surroundings at which the PV limit holds; °C (°F), -273.15 °C or more, default 23 °C
 * @param [exponent] How the cooling grows with the rise: 1 in proportion, 1.25 still air alone; from 1 to 2, default 1
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function BORETEMP(
  pv: any[][],
  pvlimit: any[][],
  highest: any[][],
  ambient: any[][],
  reference?: any[][],
  exponent?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.BORETEMP, [pv, pvlimit, highest, ambient, reference, exponent, units]);
}
/**
 * Greatest rise of a cycle that repeats, to the first order; safe with the heat capacity of the bush and of only the shaft inside it, up to 2.5 times too low with the whole shaft's (1.6 times at a rod's heated end, measured). Answers K (°F)
 * @customfunction PEAKRISE
 * @param rises Rise that each step would reach if it lasted, one range; 0 at rest; K (°F), 0 K or more
 * @param times Duration of each step, one range, all in one unit; h, 0 h or more
 * @param timeconstant Time constant; heat capacity over conductance, in the unit of the times; h, above 0 h
 */
export function PEAKRISE(rises: any[][], times: any[][], timeconstant: any[][]): any[][] {
  return answer(functions.PEAKRISE, [rises, times, timeconstant]);
}
