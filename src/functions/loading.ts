// Written by `npm run sync` from the specs in src/core; edits here are lost.

import {
  sleevePressure as PRESSURE_,
  washerPressure as WASHERPRESSURE_,
  turningSpeed as SPEED_,
  swingSpeed as SWINGSPEED_,
  strokeSpeed as STROKESPEED_,
  washerSpeed as WASHERSPEED_,
  pressureSpeed as PV_,
  dutyPv as DUTYPV_,
} from "../core";

import { answer } from "../edge/sheet";

/**
 * Mean pressure on the projected area of a sleeve bush. Answers MPa (psi)
 * @customfunction PRESSURE
 * @param load Radial load; N (lbf), 0 N or more
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param length Length of the bush; mm (in), above 0 mm
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 * @returns MPa (psi)
 */
export function PRESSURE(load: any[][], bore: any[][], length: any[][], units?: any[][]): any[][] {
  return answer(PRESSURE_, [load, bore, length, units]);
}

/**
 * Mean pressure on the face of a thrust washer. Answers MPa (psi)
 * @customfunction WASHERPRESSURE
 * @param load Axial load; N (lbf), 0 N or more
 * @param inner Inner diameter of the bearing face; mm (in), 0 mm or more
 * @param outer Outer diameter of the bearing face; mm (in), above 0 mm
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 * @returns MPa (psi)
 */
export function WASHERPRESSURE(load: any[][], inner: any[][], outer: any[][], units?: any[][]): any[][] {
  return answer(WASHERPRESSURE_, [load, inner, outer, units]);
}

/**
 * Sliding speed of a turning shaft. Answers m/s (ft/min)
 * @customfunction SPEED
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param rpm Shaft speed; 1/min, 0 1/min or more
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 * @returns m/s (ft/min)
 */
export function SPEED(bore: any[][], rpm: any[][], units?: any[][]): any[][] {
  return answer(SPEED_, [bore, rpm, units]);
}

/**
 * Mean sliding speed of a swinging shaft. Answers m/s (ft/min)
 * @customfunction SWINGSPEED
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param swing Angle from one end of the swing to the other; °, 0° or more
 * @param cycles Cycles per minute, each there and back; 1/min, 0 1/min or more
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 * @returns m/s (ft/min)
 */
export function SWINGSPEED(bore: any[][], swing: any[][], cycles: any[][], units?: any[][]): any[][] {
  return answer(SWINGSPEED_, [bore, swing, cycles, units]);
}

/**
 * Mean sliding speed of a linear motion. Answers m/s (ft/min)
 * @customfunction STROKESPEED
 * @param stroke Travel from one end to the other; mm (in), 0 mm or more
 * @param cycles Cycles per minute, each there and back; 1/min, 0 1/min or more
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 * @returns m/s (ft/min)
 */
export function STROKESPEED(stroke: any[][], cycles: any[][], units?: any[][]): any[][] {
  return answer(STROKESPEED_, [stroke, cycles, units]);
}

/**
 * Sliding speed of a thrust washer at its mean diameter. Answers m/s (ft/min)
 * @customfunction WASHERSPEED
 * @param inner Inner diameter of the bearing face; mm (in), 0 mm or more
 * @param outer Outer diameter of the bearing face; mm (in), above 0 mm
 * @param rpm Shaft speed; 1/min, 0 1/min or more
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 * @returns m/s (ft/min)
 */
export function WASHERSPEED(inner: any[][], outer: any[][], rpm: any[][], units?: any[][]): any[][] {
  return answer(WASHERSPEED_, [inner, outer, rpm, units]);
}

/**
 * PV: mean pressure times sliding speed. Answers MPa·m/s (psi·ft/min)
 * @customfunction PV
 * @param pressure Mean pressure; MPa (psi), 0 MPa or more
 * @param speed Sliding speed; m/s (ft/min), 0 m/s or more
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 * @returns MPa·m/s (psi·ft/min)
 */
export function PV(pressure: any[][], speed: any[][], units?: any[][]): any[][] {
  return answer(PV_, [pressure, speed, units]);
}

/**
 * PV of a load spectrum that repeats: time-weighted mean (rest is a step of speed 0), greatest step, and the PV to compare with a limit: the greatest step, or with a time constant the peak of the rise, to the first order. Check each step's pressure and speed too. Answers mean PV, greatest PV of a step, PV to compare with a limit
 * @customfunction DUTYPV
 * @param pressures Mean pressure of each step, one range; MPa (psi), 0 MPa or more
 * @param speeds Sliding speed of each step, one range; m/s (ft/min), 0 m/s or more
 * @param times Duration of each step, one range, all in one unit; h, 0 h or more
 * @param [timeconstant] Time constant of the bush; in the unit of the times, as in PEAKRISE; h, above 0 h
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 * @returns Mean PV, greatest PV of a step, PV to compare with a limit
 */
export function DUTYPV(
  pressures: any[][],
  speeds: any[][],
  times: any[][],
  timeconstant?: any[][],
  units?: any[][],
): any[][] {
  return answer(DUTYPV_, [pressures, speeds, times, timeconstant, units]);
}
