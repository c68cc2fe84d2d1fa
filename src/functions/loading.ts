// Written by `npm run sync` from the specs in src/core; edits here are lost.
/* oxlint-disable typescript/no-explicit-any -- a cell of any kind, as Excel's generator wants it */

import { functions } from "../core";
import { answer } from "../edge/sheet";

/**
 * Mean pressure on the projected area of a sleeve bush. Answers MPa (psi)
 * @customfunction PRESSURE
 * @param load Radial load; N (lbf), 0 N or more
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param length Length of the bush; mm (in), above 0 mm
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function PRESSURE(load: any[][], bore: any[][], length: any[][], units?: any[][]): any[][] {
  return answer(functions.PRESSURE, [load, bore, length, units]);
}
/**
 * Mean pressure on the face of a thrust washer. Answers MPa (psi)
 * @customfunction WASHERPRESSURE
 * @param load Axial load; N (lbf), 0 N or more
 * @param inner Inner diameter of the bearing face; mm (in), 0 mm or more
 * @param outer Outer diameter of the bearing face; mm (in), above 0 mm
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function WASHERPRESSURE(load: any[][], inner: any[][], outer: any[][], units?: any[][]): any[][] {
  return answer(functions.WASHERPRESSURE, [load, inner, outer, units]);
}
/**
 * Sliding speed of a turning shaft. Answers m/s (ft/min)
 * @customfunction SPEED
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param rpm Shaft speed; 1/min, 0 1/min or more
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function SPEED(bore: any[][], rpm: any[][], units?: any[][]): any[][] {
  return answer(functions.SPEED, [bore, rpm, units]);
}
/**
 * Mean sliding speed of a swinging shaft. Answers m/s (ft/min)
 * @customfunction SWINGSPEED
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param swing Angle from one end of the swing to the other; °, 0° or more
 * @param cycles Cycles per minute, each there and back; 1/min, 0 1/min or more
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function SWINGSPEED(bore: any[][], swing: any[][], cycles: any[][], units?: any[][]): any[][] {
  return answer(functions.SWINGSPEED, [bore, swing, cycles, units]);
}
/**
 * Mean sliding speed of a linear motion. Answers m/s (ft/min)
 * @customfunction STROKESPEED
 * @param stroke Travel from one end to the other; mm (in), 0 mm or more
 * @param cycles Cycles per minute, each there and back; 1/min, 0 1/min or more
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function STROKESPEED(stroke: any[][], cycles: any[][], units?: any[][]): any[][] {
  return answer(functions.STROKESPEED, [stroke, cycles, units]);
}
/**
 * Sliding speed of a thrust washer at its mean diameter. Answers m/s (ft/min)
 * @customfunction WASHERSPEED
 * @param inner Inner diameter of the bearing face; mm (in), 0 mm or more
 * @param outer Outer diameter of the bearing face; mm (in), above 0 mm
 * @param rpm Shaft speed; 1/min, 0 1/min or more
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function WASHERSPEED(inner: any[][], outer: any[][], rpm: any[][], units?: any[][]): any[][] {
  return answer(functions.WASHERSPEED, [inner, outer, rpm, units]);
}
/**
 * PV: mean pressure times sliding speed. Answers MPa·m/s (psi·ft/min)
 * @customfunction PVVALUE
 * @param pressure Mean pressure; MPa (psi), 0 MPa or more
 * @param speed Sliding speed; m/s (ft/min), 0 m/s or more
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function PVVALUE(pressure: any[][], speed: any[][], units?: any[][]): any[][] {
  return answer(functions.PVVALUE, [pressure, speed, units]);
}
/**
 * PV of a load spectrum that repeats: time-weighted mean (rest is a step of speed 0), greatest step, and the PV to compare with a limit: the greatest step, or with a time constant the peak of the rise, to the first order. Check each step's pressure and speed too. Answers mean PV, greatest PV of a step, PV to compare with a limit
 * @customfunction DUTYPV
 * @param pressures Mean pressure of each step, one range; MPa (psi), 0 MPa or more
 * @param speeds Sliding speed of each step, one range; m/s (ft/min), 0 m/s or more
 * @param times Duration of each step, one range, all in one unit; h, 0 h or more
 * @param [timeconstant] Time constant of the bush; in the unit of the times, as in PEAKRISE; h, above 0 h
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function DUTYPV(
  pressures: any[][],
  speeds: any[][],
  times: any[][],
  timeconstant?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.DUTYPV, [pressures, speeds, times, timeconstant, units]);
}
/**
 * Flanged bush under radial and axial load, turning shaft: pressure and PV of sleeve and flange, the PV to compare with the limit, which puts all heat on the sleeve and so is safe, friction torque (new flange, the greater) and heat. Answers sleeve pressure, face pressure, sleeve PV, face PV, PV to compare, torque, heat
 * @customfunction FLANGEDBUSH
 * @param radial Radial load on the sleeve; N (lbf), 0 N or more
 * @param axial Axial load on the flange; N (lbf), 0 N or more
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param length Length of the bearing surface of the sleeve; mm (in), above 0 mm
 * @param inner Inner diameter of the flange's bearing face; bore and corner chamfer; mm (in), above 0 mm
 * @param outer Outer diameter of the flange's bearing face; mm (in), above 0 mm
 * @param rpm Speed of the shaft; 1/min, 0 1/min or more
 * @param friction Coefficient of friction of both surfaces; from 0 to 2
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function FLANGEDBUSH(
  radial: any[][],
  axial: any[][],
  bore: any[][],
  length: any[][],
  inner: any[][],
  outer: any[][],
  rpm: any[][],
  friction: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.FLANGEDBUSH, [radial, axial, bore, length, inner, outer, rpm, friction, units]);
}
/**
 * Slope of a bent shaft at the nearer and the farther of its two bushes, taken as knife edges: high, the safe side, since a bush resists; add misalignment. Above 5° no answer: the theory is one of small slopes. Answers slope at the nearer and the farther bush, degrees
 * @customfunction SHAFTSLOPE
 * @param loadcase Where the load stands; half way, spread over the span, at a position between the bushes, or beyond the nearer one; "central", "uniform", "offset" or "overhung"
 * @param load Load on the shaft, the whole of it; N (lbf), 0 N or more
 * @param span Distance between the middles of the bushes; mm (in), above 0 mm
 * @param diameter Diameter of the shaft; mm (in), above 0 mm
 * @param modulus Modulus of the shaft; MPa (psi), above 0 MPa
 * @param [position] Distance of the load from the nearer bush; needed with "offset" and "overhung", blank with the others; mm (in), above 0 mm
 * @param [inner] Inner diameter of a hollow shaft; mm (in), 0 mm or more, default 0 mm
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function SHAFTSLOPE(
  loadcase: any[][],
  load: any[][],
  span: any[][],
  diameter: any[][],
  modulus: any[][],
  position?: any[][],
  inner?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.SHAFTSLOPE, [loadcase, load, span, diameter, modulus, position, inner, units]);
}
/**
 * Peak pressure in a bore with clearance and the half angle of contact, before wear: within −5 to +8 % for ν up to 0.4 and a wall up to a fifth of the radius, up to 25 % high at 0.45; the angle to 20 %. The ends, being softer, add 3 to 18 % at mid-length. Answers peak pressure, half angle of contact in degrees
 * @customfunction PEAKPRESSURE
 * @param load Radial load; N (lbf), 0 N or more
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param length Length of the bush; mm (in), above 0 mm
 * @param wall Wall thickness of the bush; mm (in), above 0 mm
 * @param clearance Diametral running clearance; below bore; mm (in), 0 mm or more
 * @param modulus Compressive modulus of the bush; MPa (psi), above 0 MPa
 * @param poisson Poisson's ratio of the bush; 0 or more and below 0.5
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function PEAKPRESSURE(
  load: any[][],
  bore: any[][],
  length: any[][],
  wall: any[][],
  clearance: any[][],
  modulus: any[][],
  poisson: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.PEAKPRESSURE, [load, bore, length, wall, clearance, modulus, poisson, units]);
}
/**
 * Pressure at the edge of a bush under a tilted shaft, before wear beds it in: compare with the compressive strength. The upper figure is safe, 7 to 110 % above where partly lifted and the more the higher Poisson's ratio; the lower is within −14 to +21 %. Answers lower and upper edge pressure, length in contact (upper), "full length", "partly lifted" or "both ends touch", where the model ends: #N/A
 * @customfunction EDGEPRESSURE
 * @param load Radial load; N (lbf), 0 N or more
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param length Length of the bush; mm (in), above 0 mm
 * @param wall Wall thickness of the bush; mm (in), above 0 mm
 * @param clearance Diametral running clearance; below bore; mm (in), 0 mm or more
 * @param modulus Compressive modulus of the bush; MPa (psi), above 0 MPa
 * @param poisson Poisson's ratio of the bush; 0 or more and below 0.5
 * @param tilt Slope of the shaft in the bush; degrees, as from SHAFTSLOPE; °, from 0° to 45°
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function EDGEPRESSURE(
  load: any[][],
  bore: any[][],
  length: any[][],
  wall: any[][],
  clearance: any[][],
  modulus: any[][],
  poisson: any[][],
  tilt: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.EDGEPRESSURE, [load, bore, length, wall, clearance, modulus, poisson, tilt, units]);
}
/**
 * Tilt of the shaft at which the upper edge pressure reaches a pressure, such as the compressive strength; 0 where a true shaft already exceeds it. Low, the safe side: that figure is 7 to 110 % high once the shaft has partly lifted. #N/A where the shaft touches both ends first. Answers °
 * @customfunction MAXTILT
 * @param load Radial load; N (lbf), above 0 N
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param length Length of the bush; mm (in), above 0 mm
 * @param wall Wall thickness of the bush; mm (in), above 0 mm
 * @param clearance Diametral running clearance; below bore; mm (in), 0 mm or more
 * @param modulus Compressive modulus of the bush; MPa (psi), above 0 MPa
 * @param poisson Poisson's ratio of the bush; 0 or more and below 0.5
 * @param pressure Edge pressure allowed; MPa (psi), above 0 MPa
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function MAXTILT(
  load: any[][],
  bore: any[][],
  length: any[][],
  wall: any[][],
  clearance: any[][],
  modulus: any[][],
  poisson: any[][],
  pressure: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.MAXTILT, [load, bore, length, wall, clearance, modulus, poisson, pressure, units]);
}
