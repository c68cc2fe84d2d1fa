import { BushError } from "../errors";
import { formula, Measure, UnitLabel } from "../formula";
import type { Answer } from "../formula";
import type { Grade } from "../grades/model/library";
import { assess } from "./judging/assess";
import { chooseDuty, chooseGrade, exampleDuty, oneDutyArgs } from "./judging/choose";
import { words } from "./judging/criterion";
import { judge } from "./judging/judge";
import { movablesOf } from "./model/movable";
import { mayJump } from "./model/corners";
import type { Movable } from "./model/movable";
import type { NamedDuty } from "./model/namedDuty";
import { dutiesArg } from "./model/readDuties";
import { pathOf, turnOf } from "./model/turning";
import type { Moved, Way } from "./model/turning";
import { verdictOf, verdictText } from "./judging/verdict";

/** A number of a duty on its way, judged with a grade. */
function moving(grade: Grade, { corners, values }: NamedDuty, { to }: Movable): Moved {
  const attempt = <T>(run: () => T): T | BushError => {
    try {
      return run();
    } catch (error) {
      if (error instanceof BushError) return error;
      throw error;
    }
  };
  // where corners come and go with a size, all of them are judged as one
  const isWhole = mayJump(values);
  return {
    corners: isWhole ? 1 : corners.length,
    rankAt: (value, corner) => {
      const rank = attempt(() => worstRank(grade, to(value, isWhole ? undefined : corner)));
      return rank instanceof BushError ? -1 : rank;
    },
    verdictAt: (value) => attempt(() => verdictOf(judge(grade, to(value)))),
  };
}

/** The word of a duty's verdict by its place from the worst; no corner is judged behind one that fails. */
function worstRank({ values }: Grade, { corners }: NamedDuty): number {
  let worst: number = words.length;
  for (const corner of corners) {
    for (const { word } of assess(values, corner)) worst = Math.min(worst, words.indexOf(word));
    if (worst === 0) break;
  }
  return worst;
}

/** The limit on one side, the word beyond it, or at it where nothing lies beyond, and what stops there. */
function sideOf(moved: Moved, number: Movable, way: Way): Answer[] {
  const turn = turnOf(moved, number.value, pathOf(number, way));
  if (!turn) return ["", "", "none"];
  const { at, isEnd, word, stoppedBy, isMonotone } = turn;
  const beyond = word && isEnd ? `${word}, at it alone` : (word ?? "no duty");
  return [new Measure(at, number.kind), beyond, isMonotone ? stoppedBy : `${stoppedBy}; not monotone`];
}

export const DUTYROOM = formula(
  {
    id: "DUTYROOM",
    text: 'For each number of one duty how far it may move down and up, all else equal, before the verdict\'s word changes, and the criterion that turns it; "none" where it turns nothing within its bounds or, where those are open, from a thousandth to a thousand times the value. Temperatures: one moves as one, of two each as far as the other. A band moves as a whole, in proportion, the others are held. A number moves in all steps that share it. "At it alone": that bound has this word, and nothing lies beyond. "Not monotone": further out the verdict turns back',
    args: { duties: dutiesArg, ...oneDutyArgs },
    units: true,
    result: {
      shape: "table",
      text: "The verdict as it is, then one number per row",
      columns: [
        { name: "field", kind: "text" },
        { name: "value", kind: "measure" },
        { name: "unit", kind: "text" },
        { name: "least", kind: "measure" },
        { name: "below it", kind: "text" },
        { name: "stopped by (down)", kind: "text" },
        { name: "greatest", kind: "measure" },
        { name: "above it", kind: "text" },
        { name: "stopped by (up)", kind: "text" },
      ],
    },
    source: { key: "own", at: "bisection on the criteria of DUTYCHECKS" },
    example: [exampleDuty, "", "Demo Medlar"],
    see: ["DUTYCHECKS", "DUTYSWEEP", "MAXLOAD", "MAXRPM", "MINLENGTH"],
  },
  ({ duties, duty, grade, grades }, system = "metric"): Answer[][] => {
    const chosen = chooseDuty(duties, duty);
    const judged = chooseGrade(chosen, grade, grades);
    const rest: Answer[] = ["", "", "", "", "", "", ""];
    return [
      [`verdict, ${judged.name}`, verdictText(judge(judged, chosen), system), ...rest],
      ...movablesOf(chosen).map((number): Answer[] => {
        const { label, value, kind } = number;
        const moved = moving(judged, chosen, number);
        const sides = [...sideOf(moved, number, -1), ...sideOf(moved, number, 1)];
        return [label, new Measure(value, kind), new UnitLabel(kind), ...sides];
      }),
    ];
  },
);
