// Written by `npm run sync` from the specs in src/core; edits here are lost.
/* oxlint-disable typescript/no-explicit-any -- a cell of any kind, as Excel's generator wants it */

import { functions } from "../core";
import { answer } from "../edge/sheet";

/**
 * Limit deviations of a tolerance zone: the upper or the lower one, or both side by side. Answers upper and lower limit deviation, or the one asked for
 * @customfunction DEVIATION
 * @param size Nominal size, up to 500 mm for an ISO 286 class; mm (in), above 0 mm
 * @param zone Tolerance zone of the hole (capital letter) or the shaft (small letter); ISO 286 class "H7", or two deviations "+0.05/+0.10"
 * @param [side] Which deviation; without it both; "upper" or "lower"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function DEVIATION(size: any[][], zone: any[][], side?: any[][], units?: any[][]): any[][] {
  return answer(functions.DEVIATION, [size, zone, side, units]);
}
/**
 * Limits of size of a hole or a shaft in a tolerance zone. Answers lower and upper limit of size
 * @customfunction LIMITS
 * @param size Nominal size, up to 500 mm for an ISO 286 class; mm (in), above 0 mm
 * @param zone Tolerance zone of the hole (capital letter) or the shaft (small letter); ISO 286 class "H7", or two deviations "+0.05/+0.10"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function LIMITS(size: any[][], zone: any[][], units?: any[][]): any[][] {
  return answer(functions.LIMITS, [size, zone, units]);
}
/**
 * Bore close-in per unit of diametral interference of a bush pressed into a housing; lengths in one unit, moduli in one unit
 * @customfunction CLOSEIN
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param outside Outside diameter of the bush; mm (in), above 0 mm
 * @param housing Outside diameter of the housing; a very large one (1E9) for an unbounded housing; mm (in), above 0 mm
 * @param bushmodulus Compressive modulus of the bush; MPa (psi), above 0 MPa
 * @param bushpoisson Poisson's ratio of the bush; from 0 to 0.5
 * @param housingmodulus Modulus of the housing; MPa (psi), above 0 MPa
 * @param housingpoisson Poisson's ratio of the housing; from 0 to 0.5
 */
export function CLOSEIN(
  bore: any[][],
  outside: any[][],
  housing: any[][],
  bushmodulus: any[][],
  bushpoisson: any[][],
  housingmodulus: any[][],
  housingpoisson: any[][],
): any[][] {
  return answer(functions.CLOSEIN, [bore, outside, housing, bushmodulus, bushpoisson, housingmodulus, housingpoisson]);
}
/**
 * Press fit of a bush: fit pressure, hoop stress at the bore (negative is compression) and change of the bore (negative is close-in), fresh, before stress relaxation, and elastic: high where the stress nears the compressive strength. Answers fit pressure, hoop stress at the bore, bore change
 * @customfunction PRESSFIT
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param outside Outside diameter of the bush; mm (in), above 0 mm
 * @param housing Outside diameter of the housing; a very large one (1E9) for an unbounded housing; mm (in), above 0 mm
 * @param interference Diametral interference; at most a tenth of outside; mm (in), 0 mm or more
 * @param bushmodulus Compressive modulus of the bush; MPa (psi), above 0 MPa
 * @param bushpoisson Poisson's ratio of the bush; from 0 to 0.5
 * @param housingmodulus Modulus of the housing; MPa (psi), above 0 MPa
 * @param housingpoisson Poisson's ratio of the housing; from 0 to 0.5
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function PRESSFIT(
  bore: any[][],
  outside: any[][],
  housing: any[][],
  interference: any[][],
  bushmodulus: any[][],
  bushpoisson: any[][],
  housingmodulus: any[][],
  housingpoisson: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.PRESSFIT, [
    bore,
    outside,
    housing,
    interference,
    bushmodulus,
    bushpoisson,
    housingmodulus,
    housingpoisson,
    units,
  ]);
}
/**
 * Clearance of a bore and a shaft from their limits of size: worst case and root-sum-square band; negative is interference. Answers least and greatest clearance, root-sum-square least and greatest
 * @customfunction CLEARANCE
 * @param boreleast Least bore; mm (in), above 0 mm
 * @param boregreatest Greatest bore; mm (in), above 0 mm
 * @param shaftleast Least shaft diameter; mm (in), above 0 mm
 * @param shaftgreatest Greatest shaft diameter; mm (in), above 0 mm
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function CLEARANCE(
  boreleast: any[][],
  boregreatest: any[][],
  shaftleast: any[][],
  shaftgreatest: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.CLEARANCE, [boreleast, boregreatest, shaftleast, shaftgreatest, units]);
}
/**
 * Running clearance at temperature and moisture, from the clearance after pressing; zero or less binds the shaft. Too high, the unsafe side, where the bush runs hotter than its housing or is held at its ends. Answers mm (in)
 * @customfunction RUNCLEARANCE
 * @param clearance Clearance after pressing, at the reference temperature; mm (in)
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param outside Outside diameter of the bush; mm (in), above 0 mm
 * @param interference Interference of bush and housing at the reference temperature; negative is a loose bush; mm (in)
 * @param closein Bore close-in per unit of interference, from CLOSEIN; 0 or more
 * @param temperature Temperature of bush, housing and shaft; °C (°F), -273.15 °C or more
 * @param bushexpansion Thermal expansion of the bush; 1/K (1/°F), at most 0.001 1/K
 * @param housingexpansion Thermal expansion of the housing; 1/K (1/°F), at most 0.001 1/K
 * @param shaftexpansion Thermal expansion of the shaft; 1/K (1/°F), at most 0.001 1/K
 * @param [swelling] Linear swelling of the bush by moisture since pressing: 0.005 or "0.5 %"; from -10 % to 10 %, default 0
 * @param [reference] Temperature at which clearance and interference hold (ISO 1); °C (°F), -273.15 °C or more, default 20 °C
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function RUNCLEARANCE(
  clearance: any[][],
  bore: any[][],
  outside: any[][],
  interference: any[][],
  closein: any[][],
  temperature: any[][],
  bushexpansion: any[][],
  housingexpansion: any[][],
  shaftexpansion: any[][],
  swelling?: any[][],
  reference?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.RUNCLEARANCE, [
    clearance,
    bore,
    outside,
    interference,
    closein,
    temperature,
    bushexpansion,
    housingexpansion,
    shaftexpansion,
    swelling,
    reference,
    units,
  ]);
}
/**
 * Interference that is left of a press fit after a hot hold, in a stiff housing, which is the safe side; zero or less is a loose bush. Lengths in one unit; check the coldest state after the hottest. Answers mm (in)
 * @customfunction GRIPLEFT
 * @param interference Diametral interference when pressed in; at most a tenth of outside; mm (in), 0 mm or more
 * @param outside Outside diameter of the bush; mm (in), above 0 mm
 * @param kept Share of the modulus left after the whole time hot; measured, since extrapolation from an hour kept up to 1.9 times too much near a glass transition; from 0 to 1
 * @param mismatchhot Free strain of the bush less that of the housing since pressing, when hottest; by heat and moisture, 0.4 % is 0.004; from -0.2 to 0.2
 * @param mismatchnow The same in the state that is asked for; below 0 where the bush has shrunk or dried; from -0.2 to 0.2
 */
export function GRIPLEFT(
  interference: any[][],
  outside: any[][],
  kept: any[][],
  mismatchhot: any[][],
  mismatchnow: any[][],
): any[][] {
  return answer(functions.GRIPLEFT, [interference, outside, kept, mismatchhot, mismatchnow]);
}
/**
 * Force that pushes a bush out of its housing; take the lowest friction, and the pressure left after the hottest hold, where the grip has to hold. Answers N (lbf)
 * @customfunction PUSHOUT
 * @param pressure Fit pressure; the one that is left in the state that is asked for; MPa (psi), 0 MPa or more
 * @param outside Outside diameter of the bush; mm (in), above 0 mm
 * @param length Length of the bush in the housing; mm (in), above 0 mm
 * @param friction Coefficient of friction between bush and housing; from 0 to 2
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function PUSHOUT(
  pressure: any[][],
  outside: any[][],
  length: any[][],
  friction: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.PUSHOUT, [pressure, outside, length, friction, units]);
}
/**
 * Torque that spins a bush in its housing, to be above the friction torque in its bore; take the lowest friction, and the pressure left after the hottest hold. Answers N·m (lbf·in)
 * @customfunction SPINTORQUE
 * @param pressure Fit pressure; the one that is left in the state that is asked for; MPa (psi), 0 MPa or more
 * @param outside Outside diameter of the bush; mm (in), above 0 mm
 * @param length Length of the bush in the housing; mm (in), above 0 mm
 * @param friction Coefficient of friction between bush and housing; from 0 to 2
 * @param [load] Radial load, which helps to hold the bush; leave it out where it comes and goes; N (lbf), 0 N or more, default 0 N
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function SPINTORQUE(
  pressure: any[][],
  outside: any[][],
  length: any[][],
  friction: any[][],
  load?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.SPINTORQUE, [pressure, outside, length, friction, load, units]);
}
/**
 * Force that presses a bush into its housing at full depth, the fresh joint's friction and the squeezing on its chamfer; take the highest friction to choose a press by, and allow for a bush that enters tilted. Answers N (lbf)
 * @customfunction PRESSIN
 * @param pressure Fit pressure when fresh, from PRESSFIT; MPa (psi), 0 MPa or more
 * @param outside Outside diameter of the bush; mm (in), above 0 mm
 * @param length Length of the bush in the housing; mm (in), above 0 mm
 * @param interference Diametral interference; at most a tenth of outside; mm (in), 0 mm or more
 * @param friction Coefficient of friction between bush and housing; from 0 to 2
 * @param [chamfer] Angle of the lead-in chamfer to the axis; °, above 0° and below 90°, default 30 °
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function PRESSIN(
  pressure: any[][],
  outside: any[][],
  length: any[][],
  interference: any[][],
  friction: any[][],
  chamfer?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.PRESSIN, [pressure, outside, length, interference, friction, chamfer, units]);
}
/**
 * A fit by its ISO 286 code: least and greatest clearance (negative is interference) and its kind. Answers least and greatest clearance, "clearance", "transition" or "interference"
 * @customfunction FITOF
 * @param size Nominal size of hole and shaft; mm (in), above 0 mm and at most 500 mm
 * @param fit Hole and shaft class; ISO 286 code "H7/f7", hole first
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function FITOF(size: any[][], fit: any[][], units?: any[][]): any[][] {
  return answer(functions.FITOF, [size, fit, units]);
}
/**
 * Angle at which both ends of the bush touch the shaft; low for that, the safe side, but no onset of edge loading; at a tenth of it the edge may carry seven to ten times the mean pressure. Answers °
 * @customfunction FREETILT
 * @param clearance Diametral running clearance; mm (in), 0 mm or more
 * @param length Length of the bush; mm (in), above 0 mm
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function FREETILT(clearance: any[][], length: any[][], units?: any[][]): any[][] {
  return answer(functions.FREETILT, [clearance, length, units]);
}
