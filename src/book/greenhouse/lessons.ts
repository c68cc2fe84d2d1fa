import { functions } from "../../core";
import type { Formula } from "../../core/formula";
import type { Scalar } from "../book";

/** A calculation for a class, asked in the greenhouse's terms. */
export interface Lesson {
  readonly name: string;
  readonly formula: Formula;
  readonly story: string;
  readonly inputs: readonly Scalar[];
}

const lesson = (formula: Formula, story: string, inputs: readonly Scalar[], more = ""): Lesson => ({
  name: `${formula.spec.id}${more}`,
  formula,
  story,
  inputs,
});

export const lessons: readonly Lesson[] = [
  lesson(functions.PRESSURE, "A seed-drum spindle rests on a bush. How hard is the bush pressed?", [180, 15, 20]),
  lesson(
    functions.PRESSURE,
    "The bench roller is drawn in inches. How hard is its bush pressed?",
    [55, 0.75, 1, "inch"],
    " in inches",
  ),
  lesson(
    functions.WASHERPRESSURE,
    "A thrust collar carries the nutrient mixer. How hard is it pressed?",
    [150, 18, 36],
  ),
  lesson(functions.SPEED, "The seed drum turns steadily. How fast does its spindle slide in the bush?", [15, 120]),
  lesson(
    functions.SWINGSPEED,
    "A roof vent opens and closes again and again. How fast does its pivot slide on average?",
    [20, 70, 0.5],
  ),
  lesson(
    functions.PVVALUE,
    "Pressure times speed tells how much heat a bush must bear. What is it here?",
    [0.6, 0.0942],
  ),
  lesson(functions.MAXLOAD, "What may the roof vent weigh on a bush that moves slowly in a warm house?", [
    "Demo Sorrel",
    20,
    20,
    0.05,
    40,
  ]),
  lesson(functions.TORQUE, "How hard is the spindle to turn?", [180, 15, 0.18]),
  lesson(functions.HEAT, "How much heat does the friction make?", [180, 0.0942, 0.18]),
  lesson(
    functions.RUNTEMP,
    "How warm does the seed drum's bush become under glass?",
    [180, 15, 20, 1.5, 0.0942, 0.18, 30, 0.25, 45, 80, 1, 0.08],
  ),
  lesson(functions.CLOSEIN, "How much of its bore does a pressed bush lose?", [20, 23, 40, 2500, 0.4, 69000, 0.33]),
  lesson(
    functions.RUNCLEARANCE,
    "What clearance is left in the roof vent's pivot when it is hot and moist?",
    [0.06, 20, 23, 0.05, 1.036, 80, 0.000085, 0.0000236, 0.0000117, 0.005],
  ),
  lesson(functions.WEAR, "How deep is the bush worn after this distance?", [2e-6, 0.6, 50]),
  lesson(functions.LIFE, "After how many hours is the allowed depth worn off?", [2e-6, 0.6, 0.0942, 0.2]),
  lesson(functions.FREETILT, "How far may the vent's shaft tilt before it touches the bush's edges?", [0.05, 20]),
];
