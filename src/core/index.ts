import type { Formula } from "./formula";
import { sleevePressure } from "./loading/pressure";
import { washerPressure } from "./loading/washerPressure";
import { strokeSpeed } from "./loading/strokeSpeed";
import { turningSpeed } from "./loading/speed";
import { swingSpeed } from "./loading/swingSpeed";
import { washerSpeed } from "./loading/washerSpeed";
import { dutyPv } from "./loading/dutyPv";
import { pressureSpeed } from "./loading/pvValue";
import { dutyChecks } from "./duties/dutyChecks";
import { dutyRank } from "./duties/dutyRank";
import { dutyRoom } from "./duties/dutyRoom";
import { dutySweep } from "./duties/dutySweep";
import { fitTable } from "./duties/fitTable";
import { dutyBand } from "./duties/dutyBand";
import { dutySheet } from "./duties/dutySheet";
import { dutyTable } from "./duties/duties";
import { flangedBush } from "./loading/flangedBush";
import { shaftSlope } from "./loading/shaftSlope";
import { peakPressure } from "./loading/peakPressure";
import { edgePressure } from "./loading/edgePressure";
import { maxTilt } from "./loading/maxTilt";
import { landedCost } from "./cost/landed";
import { priceAt } from "./cost/priceAt";
import { quoteRanking } from "./cost/quotes";
import { runCost } from "./cost/runCost";
import { clearance } from "./fit/clearance";
import { closeIn } from "./fit/closeIn";
import { deviation } from "./fit/deviation";
import { fitOf } from "./fit/fitOf";
import { freeTilt } from "./fit/freeTilt";
import { limitsOfSize } from "./fit/limits";
import { pressFit } from "./fit/pressFit";
import { runClearance } from "./fit/runClearance";
import { gripLeft } from "./fit/gripLeft";
import { pushOut } from "./fit/pushOut";
import { spinTorque } from "./fit/spinTorque";
import { pressIn } from "./fit/pressIn";
import { gradeProperty } from "./grades/grade";
import { gradeTable } from "./grades/grades";
import { mediaResistance } from "./grades/media";
import { gradeSource } from "./grades/source";
import { allowable } from "./grades/allowable";
import { limitUse } from "./grades/use";
import { verdictLine } from "./grades/verdict";
import { checkTable } from "./grades/checks";
import { shortlist } from "./grades/shortlist";
import { leastLength } from "./grades/minLength";
import { greatestLoad } from "./grades/maxLoad";
import { greatestRpm } from "./grades/maxRpm";
import { cautionList } from "./grades/cautions";
import { frictionHeat } from "./heat/heat";
import { heatPv } from "./heat/heatPv";
import { housingPath } from "./heat/housingPath";
import { deratedPv } from "./heat/deratedPv";
import { boreTemperature } from "./heat/boreTemp";
import { peakRise } from "./heat/peakRise";
import { runTemperature } from "./heat/runTemp";
import { sleeveTorque } from "./heat/torque";
import { washerTorque } from "./heat/washerTorque";
import { wearLife } from "./wear/life";
import { lifeBand } from "./wear/lifeBand";
import { wearRate } from "./wear/wearRate";
import { wearDepth } from "./wear/wear";
import { stepsOf } from "./teach/steps";
import { unitOf } from "./teach/unit";
import { versionOf } from "./teach/version";

const formulas: readonly Formula[] = [
  // Loading, motion, PV
  sleevePressure,
  washerPressure,
  turningSpeed,
  swingSpeed,
  strokeSpeed,
  washerSpeed,
  pressureSpeed,
  dutyPv,
  flangedBush,
  shaftSlope,
  peakPressure,
  edgePressure,
  maxTilt,
  // Grades, limits, verdicts
  gradeProperty,
  gradeTable,
  gradeSource,
  mediaResistance,
  allowable,
  limitUse,
  verdictLine,
  checkTable,
  shortlist,
  leastLength,
  greatestLoad,
  greatestRpm,
  cautionList,
  // Duties
  dutyTable,
  dutyChecks,
  dutyRank,
  dutyRoom,
  dutySweep,
  dutyBand,
  fitTable,
  dutySheet,
  // Heat and friction
  sleeveTorque,
  washerTorque,
  frictionHeat,
  runTemperature,
  heatPv,
  housingPath,
  deratedPv,
  boreTemperature,
  peakRise,
  // Fits and clearance
  deviation,
  limitsOfSize,
  closeIn,
  pressFit,
  clearance,
  runClearance,
  gripLeft,
  pushOut,
  spinTorque,
  pressIn,
  fitOf,
  freeTilt,
  // Wear and cost
  wearRate,
  wearDepth,
  wearLife,
  lifeBand,
  landedCost,
  priceAt,
  runCost,
  quoteRanking,
  // Units and teaching
  unitOf,
  versionOf,
];

export const workedSteps = stepsOf(formulas);

/** Every function in the order of the docs; wrappers, hints, docs, tests and benches iterate it. */
export const catalogue: readonly Formula[] = [...formulas, workedSteps];

export {
  sleevePressure,
  washerPressure,
  turningSpeed,
  swingSpeed,
  strokeSpeed,
  washerSpeed,
  pressureSpeed,
  dutyPv,
  flangedBush,
  shaftSlope,
  peakPressure,
  edgePressure,
  maxTilt,
  gradeProperty,
  gradeTable,
  gradeSource,
  mediaResistance,
  allowable,
  limitUse,
  verdictLine,
  checkTable,
  shortlist,
  leastLength,
  greatestLoad,
  greatestRpm,
  cautionList,
  dutyTable,
  dutyChecks,
  dutyRank,
  dutyRoom,
  dutySweep,
  dutyBand,
  fitTable,
  dutySheet,
  sleeveTorque,
  washerTorque,
  frictionHeat,
  runTemperature,
  heatPv,
  housingPath,
  deratedPv,
  boreTemperature,
  peakRise,
  deviation,
  limitsOfSize,
  closeIn,
  pressFit,
  clearance,
  runClearance,
  gripLeft,
  pushOut,
  spinTorque,
  pressIn,
  fitOf,
  freeTilt,
  wearRate,
  wearDepth,
  wearLife,
  lifeBand,
  landedCost,
  priceAt,
  runCost,
  quoteRanking,
  unitOf,
  versionOf,
};
