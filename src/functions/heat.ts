// Written by `npm run sync` from the specs in src/core; edits here are lost.

import {
  sleeveTorque as TORQUE_,
  washerTorque as WASHERTORQUE_,
  frictionHeat as HEAT_,
  runTemperature as RUNTEMP_,
  heatPv as HEATPV_,
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
