/**
 * Quantities of the core as formulas of a spreadsheet, written from the equations in the sources that the specs name
 * and not from the code: {1} is the first argument. Unit factors are literal (SI Brochure, 9th ed.; NIST SP 811, 2008).
 */
export interface OracleCase {
  readonly id: string;
  readonly given: readonly (number | string | null)[];
  readonly units?: "inch";
  /** The answer's cells from the left that the formulas stand for. */
  readonly formulas: readonly string[];
}

const wall = (d: string, L: string, w: string, k: string) => `0.5*2*PI()*${k}*(${L}/1000)/LN((${d}+2*${w})/${d})`;
const fin = (d: string, L: string, k: string, l: string, ends: string, h: string) => {
  const [perimeter, along] = [`(PI()*${d}/1000)`, `(${k}*PI()*(${d}/1000)^2/4)`];
  const end = `(SQRT(${h}*${perimeter}*${along})*TANH(SQRT(${h}*${perimeter}/${along})*${l}/1000))`;
  return `${ends}/(1/${end}+${L}/1000/(3*${ends}*${along}))`;
};
const housing = "(({3}^2+{2}^2)/({3}^2-{2}^2)+{n})/{h}";
const ring = (b: string, p: string) => `(({2}^2+{1}^2)/({2}^2-{1}^2)-${p})/${b}`;
const fitPressure = `{4}/({2}*(${housing.replace("{n}", "{8}").replace("{h}", "{7}")}+${ring("{5}", "{6}")}))`;
// K₁/K₀ from the ascending series of I₀, I₁ and K₀ (Abramowitz & Stegun, Handbook of Mathematical Functions, 9.6.10, 9.6.13, memory) and the Wronskian
// I₀·K₁ + I₁·K₀ = 1/x (9.6.15), for x well below 1: LibreOffice's own BESSELK is a polynomial good to 1e-7 only.
const seat = "{1}/2000*SQRT(2*{4}/({3}*{2}/1000))";
const z = `((${seat})/2)^2`;
const i0 = `(1+${z}+(${z})^2/4+(${z})^3/36+(${z})^4/576)`;
const i1 = `((${seat})/2*(1+${z}/2+(${z})^2/12+(${z})^3/144+(${z})^4/2880))`;
const k0 = `(${z}+(${z})^2/4*1.5+(${z})^3/36*11/6+(${z})^4/576*25/12-(LN((${seat})/2)+0.57721566490153286)*${i0})`;

const faceRadius = "({6}^2+{6}*{5}+{5}^2)/(3*({6}+{5}))";

export const cases: readonly OracleCase[] = [
  { id: "PRESSURE", given: [813, 19.7, 14.3], formulas: ["={1}/({2}*{3})"] },
  { id: "PRESSURE", units: "inch", given: [180, 0.75, 0.8], formulas: ["={1}/({2}*{3})"] },
  { id: "WASHERPRESSURE", given: [150, 18, 36], formulas: ["={1}/(PI()/4*({3}^2-{2}^2))"] },
  { id: "SPEED", given: [20.3, 117], formulas: ["=PI()*{1}*{2}/60000"] },
  // ft/min of a shaft in inches: π·d·n/12
  { id: "SPEED", units: "inch", given: [0.75, 120], formulas: ["=PI()*{1}*{2}/12"] },
  { id: "SWINGSPEED", given: [20, 70, 3.5], formulas: ["=2*({2}/360)*PI()*{1}*{3}/60000"] },
  { id: "STROKESPEED", given: [240, 17], formulas: ["=2*{1}*{2}/60000"] },
  { id: "STROKESPEED", units: "inch", given: [9, 17], formulas: ["=2*{1}*{2}/12"] },
  { id: "WASHERSPEED", given: [18, 36, 150], formulas: ["=PI()*(({1}+{2})/2)*{3}/60000"] },
  { id: "PVVALUE", given: [2.67, 0.126], formulas: ["={1}*{2}"] },
  { id: "PVVALUE", units: "inch", given: [387, 24.8], formulas: ["={1}*{2}"] },
  { id: "TORQUE", given: [800, 20, 0.17], formulas: ["={3}*{1}*{2}/2/1000"] },
  { id: "TORQUE", units: "inch", given: [180, 0.75, 0.17], formulas: ["={3}*{1}*{2}/2"] },
  {
    id: "WASHERTORQUE",
    given: [500, 21, 40, 0.2, "new"],
    formulas: ["={4}*{1}*(2/3)*(({3}/2)^3-({2}/2)^3)/(({3}/2)^2-({2}/2)^2)/1000"],
  },
  { id: "WASHERTORQUE", given: [500, 21, 40, 0.2, "worn"], formulas: ["={4}*{1}*({3}/2+{2}/2)/2/1000"] },
  { id: "HEAT", given: [800, 0.126, 0.17], formulas: ["={3}*{1}*{2}"] },
  // 1 ft/min = 0.00508 m/s and 1 lbf = 4.4482216152605 N
  { id: "HEAT", units: "inch", given: [180, 24.8, 0.17], formulas: ["={3}*({1}*4.4482216152605)*({2}*0.00508)"] },
  {
    id: "RUNTEMP",
    given: [300, 20, 15, 1.5, 0.1, 0.2, 25, 0.25, 45, 60, 1, null, 10],
    formulas: [
      `={7}+{6}*{1}*{5}/(${wall("{2}", "{3}", "{4}", "{8}")}+${fin("{2}", "{3}", "{9}", "{10}", "{11}", "{13}")})`,
      `={7}+{6}*{1}*{5}/(${fin("{2}", "{3}", "{9}", "{10}", "{11}", "{13}")})`,
    ],
  },
  {
    id: "RUNTEMP",
    given: [300, 20, 15, 1.5, 0.1, 0.2, 25, 0.25, 45, 60, 2, 0.07, 12],
    formulas: [
      `={7}+{6}*{1}*{5}/(1/(1/(${wall("{2}", "{3}", "{4}", "{8}")})+1/{12})+${fin("{2}", "{3}", "{9}", "{10}", "{11}", "{13}")})`,
    ],
  },
  {
    id: "HEATPV",
    given: [20, 15, 1.5, 40, 0.2, 0.25, 45, 70, 2, null, 12],
    formulas: [
      `={4}*${fin("{1}", "{2}", "{7}", "{8}", "{9}", "{11}")}/({5}*{1}*{2})`,
      `={4}*(${wall("{1}", "{2}", "{3}", "{6}")}+${fin("{1}", "{2}", "{7}", "{8}", "{9}", "{11}")})/({5}*{1}*{2})`,
    ],
  },
  {
    id: "HOUSINGPATH",
    given: [23, 8, 50, 12],
    formulas: [`=2*PI()*{3}*({2}/1000)*(${seat})*(1/((${seat})*${k0})-${i1})/${i0}`],
  },
  { id: "DERATEDPV", given: [0.12, 90, 60, null, 1.25], formulas: ["={1}*(({2}-{3})/({2}-23))^{5}"] },
  { id: "BORETEMP", given: [0.06, 0.12, 90, 40, null, 1.25], formulas: ["={4}+({3}-23)*({1}/{2})^(1/{6})"] },
  {
    id: "CLOSEIN",
    given: [20, 23, 40, 2000, 0.4, 69000, 0.33],
    formulas: [
      `=2*{2}*{1}/({4}*({2}^2-{1}^2))/(${housing.replace("{n}", "{7}").replace("{h}", "{6}")}+${ring("{4}", "{5}")})`,
    ],
  },
  {
    id: "PRESSFIT",
    given: [20, 23, 40, 0.05, 2000, 0.4, 69000, 0.33],
    formulas: [
      `=${fitPressure}`,
      `=-2*(${fitPressure})*{2}^2/({2}^2-{1}^2)`,
      `=-2*(${fitPressure})*{2}^2*{1}/({5}*({2}^2-{1}^2))`,
    ],
  },
  {
    id: "CLEARANCE",
    given: [20, 20.021, 19.959, 19.98],
    formulas: [
      "={1}-{4}",
      "={2}-{3}",
      "=({1}+{2})/2-({3}+{4})/2-SQRT((({2}-{1})/2)^2+(({4}-{3})/2)^2)",
      "=({1}+{2})/2-({3}+{4})/2+SQRT((({2}-{1})/2)^2+(({4}-{3})/2)^2)",
    ],
  },
  { id: "FREETILT", given: [0.05, 20], formulas: ["=DEGREES(ATAN({1}/{2}))"] },
  {
    id: "FLANGEDBUSH",
    given: [600, 300, 20, 19, 21, 30, 70, 0.15],
    formulas: [
      "={1}/({3}*{4})",
      "={2}/(PI()/4*({6}^2-{5}^2))",
      "={1}/({3}*{4})*PI()*{3}*{7}/60000",
      `={2}/(PI()/4*({6}^2-{5}^2))*2*PI()*{7}/60*${faceRadius}/1000`,
      `=({1}*{3}/2+{2}*${faceRadius})*2*PI()*{7}/60/1000/({3}*{4})`,
      `={8}*({1}*{3}/2+{2}*${faceRadius})/1000`,
      `={8}*({1}*{3}/2+{2}*${faceRadius})/1000*2*PI()*{7}/60`,
    ],
  },
  {
    id: "SHAFTSLOPE",
    given: ["overhung", 600, 200, 16, 206000, 60, 5],
    formulas: [
      "=DEGREES({2}*{6}*{3}/(3*{5}*PI()/64*({4}^4-{7}^4)))",
      "=DEGREES({2}*{6}*{3}/(6*{5}*PI()/64*({4}^4-{7}^4)))",
    ],
  },
  {
    id: "SHAFTSLOPE",
    given: ["offset", 600, 200, 16, 206000, 60],
    formulas: [
      "=DEGREES({2}*({3}-{6})*({3}^2-({3}-{6})^2)/(6*{3}*{5}*PI()/64*{4}^4))",
      "=DEGREES({2}*{6}*({3}^2-{6}^2)/(6*{3}*{5}*PI()/64*{4}^4))",
    ],
  },
  { id: "GRIPLEFT", given: [0.05, 23, 0.6, 0.0037, -0.001], formulas: ["={1}+{2}*{5}-(1-{3})*({1}+{2}*{4})"] },
  { id: "PUSHOUT", given: [1.8, 23, 15, 0.2], formulas: ["={4}*{1}*PI()*{2}*{3}"] },
  { id: "SPINTORQUE", given: [1.8, 23, 15, 0.2, 800], formulas: ["=({4}*{1}*PI()*{2}^2*{3}/2+{4}*{5}*{2}/2)/1000"] },
  {
    id: "PRESSIN",
    given: [5, 23, 15, 0.1, 0.2, 15],
    formulas: ["={5}*{1}*PI()*{2}*{3}+{1}*PI()*{2}*{4}/4*(1+{5}/TAN(RADIANS({6})))"],
  },
  { id: "WEARRATE", given: [2e-6, 2, 0.5, 3, 1.5, 4], formulas: ["={1}*{2}*{3}*{4}*{5}*{6}"] },
  { id: "WEAR", given: [2e-6, 2.67, 40, "flat", 0], formulas: ["=4/PI()*{1}*{2}*{3}*1000"] },
  {
    id: "LIFE",
    given: [2e-6, 2.67, 0.126, 0.2, "flat", 0.08],
    formulas: ["={6}/4*((1+2*{4}/{6})*ACOS(1/(1+2*{4}/{6}))-SQRT((1+2*{4}/{6})^2-1)/(1+2*{4}/{6}))/({1}*{2}*{3}*3600)"],
  },
  { id: "WEAR", given: [2e-6, 2.67, 400], formulas: ["={1}*{2}*{3}*1000"] },
  { id: "LIFE", given: [2e-6, 2.67, 0.126, 0.5], formulas: ["={4}/({1}*{2}*{3}*3600)"] },
  // price with duty, freight over the lot, tooling over the volume
  { id: "LANDED", given: [2.4, 200, 900, 5000, 60, 0.04], formulas: ["={1}*(1+{6})+{5}/{2}+{3}/{4}"] },
  { id: "RUNCOST", given: [3, 4000, 18, 40], formulas: ["=({1}+{3}+{4})/{2}*1000"] },
  { id: "UNIT", given: [1234.5, "psi", "MPa"], formulas: ["={1}*0.006894757293168361"] },
  { id: "UNIT", given: [98.6, "°F", "°C"], formulas: ["=({1}-32)/1.8"] },
  { id: "UNIT", given: [5000, "psi*ft/min", "MPa*m/s"], formulas: ["={1}*0.00003502536704929527"] },
  { id: "UNIT", given: [3.2, "in", "mm"], formulas: ["={1}*25.4"] },
];

/** A formula that is wrong by a part in a hundred million: the comparison must notice it. */
export const canary: OracleCase = { id: "PVVALUE", given: [2.67, 0.126], formulas: ["={1}*{2}*1.00000001"] };
