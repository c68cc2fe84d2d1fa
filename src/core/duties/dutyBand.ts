import { clash } from "../errors";
import { formula } from "../formula";
import type { Answer } from "../formula";
import type { Grade } from "../grades/model/library";
import { present } from "../present";
import { assess } from "./judging/assess";
import { likelyOf, pickOf, quantile, spreadPoints } from "./model/bandPoints";
import { BandTally, sampleCount } from "./model/bandTally";
import type { Point } from "./model/bandTally";
import { chooseDuty, chooseGrade, oneDutyArgs } from "./judging/choose";
import { criteria } from "./criteria";
import type { Criterion } from "./judging/criterion";
import type { Duty } from "./model/duty";
import type { NamedDuty } from "./model/namedDuty";
import { dutiesArg } from "./model/readDuties";
import { verdictOf } from "./judging/verdict";

/** The whole verdict and each criterion over the corners of a duty's bands, their likely values and the points between. */
function study({ values }: Grade, duty: NamedDuty) {
  const whole = new BandTally();
  const byCriterion = new Map<Criterion, BandTally>();
  let points = 0;
  const visit = (at: Duty, point: Point) => {
    points++;
    const checks = assess(values, at);
    for (const { criterion, word, use } of checks) {
      let tally = byCriterion.get(criterion);
      if (!tally) byCriterion.set(criterion, (tally = new BandTally()));
      tally.add(word, use, point);
    }
    const { word, use } = verdictOf(checks);
    whole.add(word, use, point);
  };
  for (const corner of duty.corners) visit(corner, "corner");
  visit(duty.with(likelyOf), "likely");
  for (const shares of spreadPoints(sampleCount, duty.bands.length)) {
    visit(duty.with(pickOf(duty.bands, (band, j) => quantile(band, present(shares[j])))), "sample");
  }
  return { whole, byCriterion, points };
}

export const DUTYBAND = formula(
  {
    id: "DUTYBAND",
    text: 'One duty whose numbers are known within bands: best, likely and worst use of each criterion, the worst verdict, and how much of the bands passes. What holds or fails at every point looked at passes or fails "throughout"; else the share that does not fail, care included, in whole percent and good to about two, of 2048 points spread over the bands, each independent: "640 to 960" alike between its ends, "800 ± 20 %" triangular. Where data are missing no share is given',
    args: { duties: dutiesArg, ...oneDutyArgs },
    units: true,
    result: {
      shape: "table",
      text: "The whole verdict, then one criterion per row; a cell is empty where no ratio tells the use",
      columns: [
        { name: "criterion", kind: "text" },
        { name: "best use", kind: "ratio" },
        { name: "likely use", kind: "ratio" },
        { name: "worst use", kind: "ratio" },
        { name: "worst verdict", kind: "text" },
        { name: "passes", kind: "text" },
      ],
    },
    source: [
      { key: "own", at: "corners of the bands, and a count over evenly spread points between them" },
      { key: "roberts", at: "additive recurrence" },
    ],
    example: [
      [
        ["duty", "Seed-drum spindle"],
        ["load [N]", "180 ± 40 %"],
        ["bore [mm]", 15],
        ["length [mm]", 20],
        ["rpm", "100 to 180"],
        ["temperature [°C]", "5 to 45"],
      ],
      "",
      "Demo Medlar",
    ],
    see: ["DUTYCHECKS", "DUTYROOM", "DUTIES"],
  },
  ({ duties, duty, grade, grades }): Answer[][] => {
    const chosen = chooseDuty(duties, duty);
    if (chosen.bands.length === 0)
      throw clash("duty", 'duty holds no band: type a number of it as "640 to 960" or "800 ± 20 %"');
    const judged = chooseGrade(chosen, grade, grades);
    const { whole, byCriterion, points } = study(judged, chosen);
    return [
      [`verdict, ${judged.name}`, ...whole.answers(points)],
      ...criteria.flatMap((criterion): Answer[][] => {
        const tally = byCriterion.get(criterion);
        return tally ? [[criterion.heading, ...tally.answers(points)]] : [];
      }),
    ];
  },
);
