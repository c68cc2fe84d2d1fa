import type { Formula } from "./formula";
import { PRESSURE } from "./loading/pressure";
import { WASHERPRESSURE } from "./loading/washerPressure";
import { SPEED } from "./loading/speed";
import { SWINGSPEED } from "./loading/swingSpeed";
import { STROKESPEED } from "./loading/strokeSpeed";
import { WASHERSPEED } from "./loading/washerSpeed";
import { PVVALUE } from "./loading/pvValue";
import { DUTYPV } from "./loading/dutyPv";
import { FLANGEDBUSH } from "./loading/flangedBush";
import { SHAFTSLOPE } from "./loading/shaftSlope";
import { PEAKPRESSURE } from "./loading/peakPressure";
import { EDGEPRESSURE } from "./loading/edgePressure";
import { MAXTILT } from "./loading/maxTilt";
import { GRADE } from "./grades/grade";
import { GRADES } from "./grades/grades";
import { SOURCE } from "./grades/source";
import { MEDIA } from "./grades/media";
import { ALLOWABLE } from "./grades/allowable";
import { USE } from "./grades/use";
import { VERDICT } from "./grades/verdict";
import { CHECKS } from "./grades/checks";
import { SHORTLIST } from "./grades/shortlist";
import { MINLENGTH } from "./grades/minLength";
import { MAXLOAD } from "./grades/maxLoad";
import { MAXRPM } from "./grades/maxRpm";
import { CAUTIONS } from "./grades/cautions";
import { DUTIES } from "./duties/duties";
import { DUTYCHECKS } from "./duties/dutyChecks";
import { DUTYRANK } from "./duties/dutyRank";
import { DUTYROOM } from "./duties/dutyRoom";
import { DUTYSWEEP } from "./duties/dutySweep";
import { DUTYBAND } from "./duties/dutyBand";
import { FITTABLE } from "./duties/fitTable";
import { DUTYSHEET } from "./duties/dutySheet";
import { TORQUE } from "./heat/torque";
import { WASHERTORQUE } from "./heat/washerTorque";
import { HEAT } from "./heat/heat";
import { RUNTEMP } from "./heat/runTemp";
import { HEATPV } from "./heat/heatPv";
import { HOUSINGPATH } from "./heat/housingPath";
import { CONTACTSHARE } from "./heat/contactShare";
import { DERATEDPV } from "./heat/deratedPv";
import { BORETEMP } from "./heat/boreTemp";
import { PEAKRISE } from "./heat/peakRise";
import { DEVIATION } from "./fit/deviation";
import { LIMITS } from "./fit/limits";
import { CLOSEIN } from "./fit/closeIn";
import { PRESSFIT } from "./fit/pressFit";
import { CLEARANCE } from "./fit/clearance";
import { RUNCLEARANCE } from "./fit/runClearance";
import { GRIPLEFT } from "./fit/gripLeft";
import { PUSHOUT } from "./fit/pushOut";
import { SPINTORQUE } from "./fit/spinTorque";
import { PRESSIN } from "./fit/pressIn";
import { FITOF } from "./fit/fitOf";
import { FREETILT } from "./fit/freeTilt";
import { WEARRATE } from "./wear/wearRate";
import { BEDDING } from "./wear/bedding";
import { RUNNINGIN } from "./wear/runningIn";
import { WORNPEAK } from "./wear/wornPeak";
import { WEAR } from "./wear/wear";
import { LIFE } from "./wear/life";
import { LIFEBAND } from "./wear/lifeBand";
import { LANDED } from "./cost/landed";
import { PRICEAT } from "./cost/priceAt";
import { RUNCOST } from "./cost/runCost";
import { QUOTES } from "./cost/quotes";
import { DECISION } from "./cost/decision";
import { UNIT } from "./teach/unit";
import { VERSION } from "./teach/version";
import { present } from "./present";
import { stepsOf } from "./teach/steps";

export interface Family {
  readonly title: string;
  readonly functions: Readonly<Record<string, Formula>>;
}

/**
 * Every function of the sheet, in the order of the docs. A family is its folder here, its wrapper file and its group in the docs;
 * a function is its file's export under its name in a sheet.
 */
export const families = {
  loading: {
    title: "Loading, motion, PV",
    functions: {
      PRESSURE,
      WASHERPRESSURE,
      SPEED,
      SWINGSPEED,
      STROKESPEED,
      WASHERSPEED,
      PVVALUE,
      DUTYPV,
      FLANGEDBUSH,
      SHAFTSLOPE,
      PEAKPRESSURE,
      EDGEPRESSURE,
      MAXTILT,
    },
  },
  grades: {
    title: "Grades, limits, verdicts",
    functions: {
      GRADE,
      GRADES,
      SOURCE,
      MEDIA,
      ALLOWABLE,
      USE,
      VERDICT,
      CHECKS,
      SHORTLIST,
      MINLENGTH,
      MAXLOAD,
      MAXRPM,
      CAUTIONS,
    },
  },
  duties: {
    title: "Duties",
    functions: { DUTIES, DUTYCHECKS, DUTYRANK, DUTYROOM, DUTYSWEEP, DUTYBAND, FITTABLE, DUTYSHEET },
  },
  heat: {
    title: "Heat and friction",
    functions: {
      TORQUE,
      WASHERTORQUE,
      HEAT,
      RUNTEMP,
      HEATPV,
      HOUSINGPATH,
      CONTACTSHARE,
      DERATEDPV,
      BORETEMP,
      PEAKRISE,
    },
  },
  fit: {
    title: "Fits and clearance",
    functions: {
      DEVIATION,
      LIMITS,
      CLOSEIN,
      PRESSFIT,
      CLEARANCE,
      RUNCLEARANCE,
      GRIPLEFT,
      PUSHOUT,
      SPINTORQUE,
      PRESSIN,
      FITOF,
      FREETILT,
    },
  },
  wear: {
    title: "Wear and cost",
    functions: {
      WEARRATE,
      WEAR,
      RUNNINGIN,
      WORNPEAK,
      BEDDING,
      LIFE,
      LIFEBAND,
      LANDED,
      PRICEAT,
      RUNCOST,
      QUOTES,
      DECISION,
    },
  },
  teach: {
    title: "Units and teaching",
    functions: { UNIT, VERSION, STEPS: stepsOf(() => familyList) },
  },
} as const satisfies Record<string, Family>;

export type FamilyTitle = (typeof families)[keyof typeof families]["title"];

/** Under their names in a sheet. */
export const functions = {
  ...families.loading.functions,
  ...families.grades.functions,
  ...families.duties.functions,
  ...families.heat.functions,
  ...families.fit.functions,
  ...families.wear.functions,
  ...families.teach.functions,
};

export const familyList: readonly Family[] = Object.values(families);
/** As a list, which hints, docs, tests and benches walk. */
export const catalogue: readonly Formula[] = Object.values(functions);

/** The title of the family that a function belongs to. */
export const familyOf = (id: string): FamilyTitle =>
  present(Object.values(families).find(({ functions: own }) => Object.keys(own).includes(id))).title;

const byName: ReadonlyMap<string, Formula> = new Map(catalogue.map((f) => [f.spec.id, f]));

/** The function of this name, as formulas write it behind "BUSH."; nothing where there is none. */
export const formulaNamed = (id: string): Formula | undefined => byName.get(id);
