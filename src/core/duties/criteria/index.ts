import type { Criterion } from "../judging/criterion";
import { boreTemperature } from "./boreTemperature";
import { clearance } from "./clearance";
import { damping } from "./damping";
import { dirt } from "./dirt";
import { edgePressure } from "./edgePressure";
import { facePressure } from "./facePressure";
import { grip } from "./grip";
import { highestTemperature } from "./highestTemperature";
import { lengthOverBore } from "./lengthOverBore";
import { lowestTemperature } from "./lowestTemperature";
import { media } from "./media";
import { moisture } from "./moisture";
import { notJudged } from "./notJudged";
import { peakPressure } from "./peakPressure";
import { pv } from "./pv";
import { runningPressure } from "./runningPressure";
import { shaft } from "./shaft";
import { shock } from "./shock";
import { shortPeak } from "./shortPeak";
import { speed } from "./speed";
import { staticPressure } from "./staticPressure";
import { tilt } from "./tilt";
import { vacuum } from "./vacuum";
import { wearLife } from "./wearLife";

const judging: readonly Criterion[] = [
  staticPressure,
  runningPressure,
  facePressure,
  highestTemperature,
  speed,
  pv,
  boreTemperature,
  shortPeak,
  lowestTemperature,
  peakPressure,
  edgePressure,
  tilt,
  wearLife,
  clearance,
  grip,
  moisture,
  media,
  dirt,
  shock,
  damping,
  vacuum,
  shaft,
  lengthOverBore,
];

/** Every criterion in the order in which equal ones govern; `assess`, docs, records and tests walk it. */
export const criteria: readonly Criterion[] = [...judging, notJudged(judging)];
