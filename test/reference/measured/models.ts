import type { FamilyTitle } from "../../../src/core";
import type { Measurement } from "./measurements";
import * as predict from "./predict";

/** A model of the core that measurements are held against. */
export interface Model {
  readonly key: string;
  readonly title: string;
  readonly family: FamilyTitle;
  /** The functions that compute by it. */
  readonly functions: readonly string[];
  /** The criteria that rest on it, by their ids. */
  readonly criteria: readonly string[];
  /** How a prediction is made from the printed conditions. */
  readonly how: string;
  /** What explains the largest misses, and what follows from them. */
  readonly why: string;
  /** Where measurements were looked for in vain. */
  readonly looked?: string;
  readonly predict: (of: Measurement) => number;
}

const none = (of: Measurement): never => {
  throw new Error(`nothing predicts ${of.what}`);
};
const given =
  <G>(by: (given: G) => number) =>
  (of: Measurement) =>
    by(of.given as G);

export const models: readonly Model[] = [
  {
    key: "expansion",
    title: "Free expansion",
    family: "Fits and clearance",
    functions: ["RUNCLEARANCE", "GRIPLEFT", "FITTABLE"],
    criteria: ["clearance", "grip"],
    how: "Change of a free bush, with the one coefficient that the library has for the polymer or metal, and for PTFE its step just above 20 °C.",
    why: "PTFE changes its crystals at 19 and 30 °C and lengthens there by about a third of a percent within a few kelvin, inside the temperatures at which bushes are pressed in: by its coefficient alone the growth from 20 to 25 °C would be told 3.7 times too small, so that the library has it as a step of its own, which duties add above 20 °C. The step is taken from that measurement, which therefore says nothing about it; the others do. The coefficient is the greatest that is printed (216e-6, Callister, Table B.6), which holds from 20 °C down; a figure from the middle of what is printed, 140e-6, would be a third too low. Deep cold goes the other way: every coefficient falls with temperature, so that one number takes off too much, which is safe for the grip. With crystallinity the coefficient of PTFE changes three times.",
    predict: given(predict.strain),
  },
  {
    key: "direction",
    title: "Expansion alike in all directions",
    family: "Fits and clearance",
    functions: ["RUNCLEARANCE", "GRIPLEFT", "FITTABLE"],
    criteria: ["clearance"],
    how: "The model has one coefficient for all directions, a ratio of 1.",
    why: "Pressing and moulding lay chains and fillers in the plane, which holds the plane together and leaves the thickness to grow. The wall of a bush is a small part of its diameter, so that the misses count for the wall alone: the clearance's notes tell where so much more growth of it would miss what is wanted. Measured were pressed plates, not bushes; where it matters, measure the coefficient through the wall.",
    predict: () => 1,
  },
  {
    key: "swelling",
    title: "Swelling by water",
    family: "Fits and clearance",
    functions: ["RUNCLEARANCE", "FITTABLE"],
    criteria: ["clearance", "grip", "moisture"],
    how: "The linear swelling is a figure of the grade and is taken as it stands, alike in all directions.",
    why: "Nothing is predicted: the swelling is what the grade's owner measured.",
    looked:
      "Web pages, documentation and public repositories were searched on polyamide, swelling, hygroscopic strain, humidity and immersion. Theses and papers on PA6 and PA66 exist (Polymers 15 (2023) 3387 measures the swelling of moulded PA66 plates by direction), but what can be read of them are abstracts without a strain beside its water content. Figures of makers are not used here.",
    predict: none,
  },
  {
    key: "pressFit",
    title: "Pressure and force of a press fit",
    family: "Fits and clearance",
    functions: ["PRESSFIT", "CLOSEIN", "PUSHOUT", "SPINTORQUE", "PRESSIN"],
    criteria: ["grip", "clearance"],
    how: "Thick elastic rings (Lamé).",
    why: "Where parts yield, the elastic figure is too high, and more interference may hold less: an interference above a tenth of the outside is refused, and a hoop stress above the compressive strength fails.",
    looked:
      "Web pages, documentation and public repositories were searched on press fits of polymers, push-out, torque to slip and insertion force. One thesis fits closely (A. T. Nelson, Press fit design: force and torque testing of steel dowel pins in brass and nylon samples, MIT 2006): its abstract, which can be read, says that the torque needed to slip matched the theory well in nylon, and that the force of pressing in did not follow it in brass where the pin ploughed; its tables could not be read, so that no figure stands here.",
    predict: none,
  },
  {
    key: "contact",
    title: "Pressure in the bore",
    family: "Loading, motion, PV",
    functions: ["PEAKPRESSURE", "EDGEPRESSURE", "MAXTILT"],
    criteria: ["peakPressure", "edgePressure", "tilt"],
    how: "An elastic layer under a rigid shaft.",
    why: "Only other methods for the same assumptions bound it (see Reference checks): elements of the bonded wall, and cells.",
    looked:
      "Web pages, documentation and public repositories were searched on measured contact of shafts in polymer bushes, photoelastic pins in holes, pressure-sensitive film in polyethylene joints, and half angles of contact. What was found treats spheres, knees and hip cups, or a pin in a wide plate, which the model is not for, or computes bushes by another theory without measuring; no printed pressure or width of contact of a lined bore could be read.",
    predict: none,
  },
  {
    key: "runTemperature",
    title: "Bush, shaft and housing together",
    family: "Heat and friction",
    functions: ["RUNTEMP", "HEATPV", "HOUSINGPATH"],
    criteria: ["boreTemperature"],
    how: "A heat balance of wall, housing and shaft ends.",
    why: "Its parts are held against measurements (film and shaft end, conductivity, friction); the whole only against other methods.",
    looked:
      "Searched on dry polymer journal bearings with thermocouples, PV, load and speed. The tests found (PA12 bushes, composite bushes) print temperatures in figures or text that could not be read, or leave out the housing, without which nothing can be predicted.",
    predict: none,
  },
  {
    key: "conductivity",
    title: "Conductivity of the wall",
    family: "Heat and friction",
    functions: ["RUNTEMP", "HEATPV"],
    criteria: ["boreTemperature"],
    how: "The library's figure of the polymer.",
    why: "Crystallinity and water raise the conductivity of a polyamide. The library's figures are below the measured, so that the bore is computed too warm: safe.",
    predict: given(predict.conductivity),
  },
  {
    key: "friction",
    title: "Constant friction",
    family: "Heat and friction",
    functions: ["HEAT", "TORQUE", "RUNTEMP"],
    criteria: ["boreTemperature"],
    how: "One coefficient: that of 20 °C or of the reference pressure, the middle of a printed range, or of a series the mean of all its other points.",
    why: "Friction of PTFE composites falls with heat and pressure, so that one figure of the cold errs high, safe for the heat. Within a printed range the middle misses the upper end by a fifth: verdicts take the high figure of the grade.",
    predict: predict.friction,
  },
  {
    key: "boreTemperature",
    title: "Bore temperature from PV",
    family: "Heat and friction",
    functions: ["BORETEMP"],
    criteria: ["boreTemperature", "pv", "clearance"],
    how: "The rise in proportion to PV, as the PV limit drives the bore to its highest temperature.",
    why: "At part of the limit the bush is cooler and its friction higher than at the limit, so that it is warmer than the straight line says. Whether the highest temperature is passed is not touched by that: just there the friction is the one that the limit was stated with. Clearance and grip are: they are looked at once more with the bore as much warmer as was measured here, and are care where that would take them.",
    predict: given(predict.boreRise),
  },
  {
    key: "shaftEnd",
    title: "Shaft end in still air",
    family: "Heat and friction",
    functions: ["RUNTEMP", "HEATPV"],
    criteria: ["boreTemperature"],
    how: "A fin with an insulated tip and the film of still air that is the default, from the rod's size and conductivity alone.",
    why: "Radiation and the draught of a warm rod make the film better than the default, the more the hotter and shorter it is; the default is at or below what was measured, so that the bore is computed too warm: safe.",
    predict: given(predict.shaftEnd),
  },
  {
    key: "peakRise",
    title: "Rise in spells",
    family: "Heat and friction",
    functions: ["PEAKRISE", "DUTYPV"],
    criteria: ["pv"],
    how: "First order, with the time constant and the steady rise of a first spell for the spells after it.",
    why: "A rod is no single body: its heated end answers faster than its mean. With the time constant of the whole mass the peak of the heated end is a third too low, which the function warns of; with its own constant the misses are a few percent to either side.",
    predict: given(predict.heatedRise),
  },
  {
    key: "wear",
    title: "Wear with one rate",
    family: "Wear and cost",
    functions: ["WEAR", "LIFE"],
    criteria: ["wearLife"],
    how: "Depth in proportion to pressure and distance; the rate of each point is the geometric mean of what all the other points of its series measured.",
    why: "Between points of one test series at other pressures and speeds the rate itself changes by half and twice: films of debris form and break. A rate measured at one point is not known elsewhere to better than that: a verdict that rests on a single rate, or on a band narrower than this spread, says care where so much more wear has no room.",
    predict: predict.wear,
  },
  {
    key: "wearRate",
    title: "A rate from another test",
    family: "Wear and cost",
    functions: ["WEARRATE", "LIFEBAND"],
    criteria: ["wearLife"],
    how: "The rate of one test, material or processing put in for another.",
    why: "Motion across the grain, processing and the counterface change a rate tenfold and more, to either side. A rate is good for its own test; LIFEBAND tells the span.",
    predict: given(predict.oneRate),
  },
  {
    key: "pressureLimit",
    title: "Pressure limit without a curve",
    family: "Grades, limits, verdicts",
    functions: ["ALLOWABLE", "USE", "DUTIES"],
    criteria: ["staticPressure", "runningPressure", "facePressure"],
    how: "The limit of room temperature, as it stands where a grade has no curve.",
    why: "Every polymer bears less when hot. One measurement, of a polyimide at 320 °C, is not enough for a law: the line of a verdict that rests on such a limit says that it was not lowered. Give the grade a curve.",
    predict: given(predict.withoutCurve),
  },
  {
    key: "relaxation",
    title: "Share of the grip, extrapolated",
    family: "Fits and clearance",
    functions: ["GRIPLEFT"],
    criteria: ["grip"],
    how: "A power law fitted to the first hour, read at later times.",
    why: "Far below the glass transition a power law holds for years. Near it the modulus falls in a step that the first hour does not show: there the share must be measured.",
    predict: given(predict.kept),
  },
];
