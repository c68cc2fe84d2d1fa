// Written by `npm run sync` from the specs in src/core; edits here are lost.

import {
  sleeveTorque as TORQUE_,
  washerTorque as WASHERTORQUE_,
  frictionHeat as HEAT_,
  runTemperature as RUNTEMP_,
  heatPv as HEATPV_,
  deratedPv as DERATEDPV_,
  boreTemperature as BORETEMP_,
  peakRise as PEAKRISE_,
} from "../core";

import { answer } from "../edge/sheet";

/**
 * Friction torque of a sleeve bush. Answers N·m (lbf·in)
 * @customfunction TORQUE
 * @param load Radial load; N (lbf), 0 N or more
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param friction Coefficient of friction; 0 or more
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 * @returns N·m (lbf·in)
 */
export function TORQUE(load: any[][], bore: any[][], friction: any[][], units?: any[][]): any[][] {
  return answer(TORQUE_, [load, bore, friction, units]);
}

/**
 * Friction torque of a thrust washer. Answers N·m (lbf·in)
 * @customfunction WASHERTORQUE
 * @param load Axial load; N (lbf), 0 N or more
 * @param inner Inner diameter of the bearing face; mm (in), 0 mm or more
 * @param outer Outer diameter of the bearing face; mm (in), above 0 mm
 * @param friction Coefficient of friction; 0 or more
 * @param [wearstate] "new": pressure uniform over the face, the greater torque; "worn": wear uniform over the face, after running in; "new" or "worn", default "new"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 * @returns N·m (lbf·in)
 */
export function WASHERTORQUE(
  load: any[][],
  inner: any[][],
  outer: any[][],
  friction: any[][],
  wearstate?: any[][],
  units?: any[][],
): any[][] {
  return answer(WASHERTORQUE_, [load, inner, outer, friction, wearstate, units]);
}

/**
 * Friction heat of a sliding contact. Answers W
 * @customfunction HEAT
 * @param load Load on the contact; N (lbf), 0 N or more
 * @param speed Mean sliding speed; m/s (ft/min), 0 m/s or more
 * @param friction Coefficient of friction; 0 or more
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 * @returns W
 */
export function HEAT(load: any[][], speed: any[][], friction: any[][], units?: any[][]): any[][] {
  return answer(HEAT_, [load, speed, friction, units]);
}

/**
 * Running temperature by friction heat, a preliminary estimate: steady state, housing at ambient, no air film between bush and housing, half of the bore in contact. Answers °C (°F)
 * @customfunction RUNTEMP
 * @param load Radial load; N (lbf), 0 N or more
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param length Length of the bush; mm (in), above 0 mm
 * @param wall Wall thickness of the bush; mm (in), above 0 mm
 * @param speed Mean sliding speed; m/s (ft/min), 0 m/s or more
 * @param friction Coefficient of friction; 0 or more
 * @param ambient Temperature of the air and the housing; °C (°F), -273.15 °C or more
 * @param bushconductivity Thermal conductivity of the bush; W/(m·K) (BTU·in/(h·ft²·°F)), above 0 W/(m·K)
 * @param shaftconductivity Thermal conductivity of the shaft; W/(m·K) (BTU·in/(h·ft²·°F)), above 0 W/(m·K)
 * @param [ends] How many ends of the shaft stand far out into the air; from 0 to 2, default 1
 * @param [film] Heat transfer coefficient from shaft to air; the default is still air, where 2 to 25 W/(m²·K) are usual; W/(m²·K) (BTU/(h·ft²·°F)), above 0 W/(m²·K), default 10 W/(m²·K)
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 * @returns °C (°F)
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
  ends?: any[][],
  film?: any[][],
  units?: any[][],
): any[][] {
  return answer(RUNTEMP_, [
    load,
    bore,
    length,
    wall,
    speed,
    friction,
    ambient,
    bushconductivity,
    shaftconductivity,
    ends,
    film,
    units,
  ]);
}

/**
 * PV whose friction heat the bush wall and the shaft carry away at a given rise above ambient; the model and its limits are those of RUNTEMP. Answers MPa·m/s (psi·ft/min)
 * @customfunction HEATPV
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param length Length of the bush; mm (in), above 0 mm
 * @param wall Wall thickness of the bush; mm (in), above 0 mm
 * @param rise Rise allowed above ambient; K (°F), above 0 K
 * @param friction Coefficient of friction; above 0
 * @param bushconductivity Thermal conductivity of the bush; W/(m·K) (BTU·in/(h·ft²·°F)), above 0 W/(m·K)
 * @param shaftconductivity Thermal conductivity of the shaft; W/(m·K) (BTU·in/(h·ft²·°F)), above 0 W/(m·K)
 * @param [ends] How many ends of the shaft stand far out into the air; from 0 to 2, default 1
 * @param [film] Heat transfer coefficient from shaft to air; the default is still air, where 2 to 25 W/(m²·K) are usual; W/(m²·K) (BTU/(h·ft²·°F)), above 0 W/(m²·K), default 10 W/(m²·K)
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 * @returns MPa·m/s (psi·ft/min)
 */
export function HEATPV(
  bore: any[][],
  length: any[][],
  wall: any[][],
  rise: any[][],
  friction: any[][],
  bushconductivity: any[][],
  shaftconductivity: any[][],
  ends?: any[][],
  film?: any[][],
  units?: any[][],
): any[][] {
  return answer(HEATPV_, [bore, length, wall, rise, friction, bushconductivity, shaftconductivity, ends, film, units]);
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
 * @returns MPa·m/s (psi·ft/min)
 */
export function DERATEDPV(
  pvlimit: any[][],
  highest: any[][],
  ambient: any[][],
  reference?: any[][],
  exponent?: any[][],
  units?: any[][],
): any[][] {
  return answer(DERATEDPV_, [pvlimit, highest, ambient, reference, exponent, units]);
}

/**
 * Temperature of the bore that a PV implies, as the PV limit brings the bush to its highest temperature; low below that limit where friction falls with heat: by up to 4 K for a highest temperature of 90 °C, by a fifth of the rise for 250 °C. Answers °C (°F)
 * @customfunction BORETEMP
 * @param pv PV of the duty; MPa·m/s (psi·ft/min), 0 MPa·m/s or more
 * @param pvlimit PV limit at the reference temperature; MPa·m/s (psi·ft/min), above 0 MPa·m/s
 * @param highest Highest temperature of the bush; °C (°F), -273.15 °C or more
 * @param ambient Temperature of the surroundings, without the bush's own heat; °C (°F), -273.15 °C or more
 * @param [reference] Temperature of the surroundings at which the PV limit holds; °C (°F), -273.15 °C or more, default 23 °C
 * @param [exponent] How the cooling grows with the rise: 1 in proportion, 1.25 still air alone; from 1 to 2, default 1
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 * @returns °C (°F)
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
  return answer(BORETEMP_, [pv, pvlimit, highest, ambient, reference, exponent, units]);
}

/**
 * Greatest rise of a cycle that repeats, to the first order; safe with the heat capacity of the bush and of only the shaft inside it, up to 2.5 times too low with the whole shaft's. Answers K (°F)
 * @customfunction PEAKRISE
 * @param rises Rise that each step would reach if it lasted, one range; 0 at rest; K (°F), 0 K or more
 * @param times Duration of each step, one range, all in one unit; h, 0 h or more
 * @param timeconstant Time constant, in the unit of the times: heat capacity over conductance; h, above 0 h
 * @returns K (°F)
 */
export function PEAKRISE(rises: any[][], times: any[][], timeconstant: any[][]): any[][] {
  return answer(PEAKRISE_, [rises, times, timeconstant]);
}
