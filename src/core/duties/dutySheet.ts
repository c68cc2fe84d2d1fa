import { formula } from "../formula";
import type { Answer } from "../formula";
import { kindText } from "../grades/model/library";
import type { Grade, Library } from "../grades/model/library";
import type { System } from "../kinds";
import { VERSION } from "../teach/version";
import { cautionsOf } from "../grades/cautionsOf";
import { chooseDuty, chooseGrade, exampleDuty, oneDutyArgs } from "./judging/choose";
import { dataLabel, judge, notAsked } from "./judging/judge";
import type { NamedDuty } from "./model/namedDuty";
import { scopeOf } from "./judging/rank";
import { dutiesArg } from "./model/readDuties";
import { criterionLines, variedIn } from "./sheet/criterion";
import { countedIn, figureLines } from "./sheet/figures";
import { cornerText, inputLines } from "./sheet/inputs";
import { RecordWorkings, wordLine } from "./sheet/rows";
import type { Line } from "./sheet/rows";
import { stepLines } from "./sheet/steps";
import type { Check } from "./judging/criterion";
import { verdictOf, verdictText } from "./judging/verdict";
import type { Verdict } from "./judging/verdict";

type Section = readonly [name: string, lines: readonly Line[]];

/** How the grade came to be judged. */
function chosenBy(duty: NamedDuty, wanted: string | undefined, library: Library | undefined): string {
  if (wanted !== undefined) return "named for this sheet";
  return duty.grade === undefined ? `best of the ${scopeOf(library).length} grades looked at` : "named by the duty";
}

const headLines = (duty: NamedDuty, grade: Grade, chosen: string): Line[] => [
  wordLine("duty", duty.name),
  ["grade", "", kindText[grade.kind], grade.name, "", chosen],
  wordLine("add-in", VERSION({})),
];

/** Loads and motions at each corner that a criterion of pressure, speed and PV was judged at. */
function loadSections(duty: NamedDuty, varied: ReadonlySet<Check>, record: RecordWorkings): Section[] {
  const judged = [...varied].filter(({ criterion }) => ofFaces.has(criterion.id));
  const corners = new Set(judged.map((check) => duty.corners.indexOf(check.duty)));
  return [...(corners.size > 0 ? corners : [0])].flatMap((corner) => {
    const at = cornerText(duty, corner, record.system);
    return stepLines(duty, corner, record).map(([name, lines]): Section => [
      at === "" ? name : `${name}, ${at}`,
      lines,
    ]);
  });
}
const ofFaces: ReadonlySet<string> = new Set(["staticPressure", "runningPressure", "facePressure", "speed", "pv"]);

const useLine = ({ governing, next }: Verdict, use: number): Line => {
  const { heading } = (governing.use === undefined && next ? next : governing).criterion;
  return ["use", "", heading, use, "", ""];
};

function verdictLines(grade: Grade, checks: readonly Check[], system: System): Line[] {
  const verdict = verdictOf(checks);
  return [
    wordLine("verdict", verdictText(checks, system, verdict)),
    wordLine("governed by", verdict.governing.criterion.heading),
    ...(verdict.use === undefined ? [] : [useLine(verdict, verdict.use)]),
    wordLine("data", dataLabel(grade, checks), "the weakest of all figures that counted"),
  ];
}

export const DUTYSHEET = formula(
  {
    id: "DUTYSHEET",
    text: "The calculation record of one duty, line by line, for whoever checks and signs it: inputs as read, figures of the grade with their sources, loads and motions, every criterion with formula, numbers put in, result and source, the verdict, what was not asked, cautions; in inch units where asked. With bands each criterion is worked at its worst corner",
    args: { duties: dutiesArg, ...oneDutyArgs },
    units: true,
    result: {
      shape: "table",
      text: "One step per row; what a symbol stands for is told where it is first used",
      columns: [
        { name: "section", kind: "text" },
        { name: "what", kind: "text" },
        { name: "formula", kind: "text" },
        { name: "numbers", kind: "text" },
        { name: "result", kind: "measure" },
        { name: "unit", kind: "text" },
        { name: "from where", kind: "text" },
      ],
    },
    source: { key: "own", at: "each line names its own" },
    example: [exampleDuty, "", "Demo Medlar"],
    see: ["DUTIES", "DUTYCHECKS", "STEPS"],
  },
  ({ duties, duty, grade, grades }, system = "metric"): Answer[][] => {
    const chosen = chooseDuty(duties, duty);
    const judged = chooseGrade(chosen, grade, grades);
    const checks = judge(judged, chosen);
    const varied = variedIn(judged, chosen, checks);
    const record = new RecordWorkings(system);
    const sections: Section[] = [
      ["record", headLines(chosen, judged, chosenBy(chosen, grade, grades))],
      ["input", inputLines(chosen, checks, system)],
      ["grade", figureLines(judged, chosen, countedIn(checks), system)],
      ...loadSections(chosen, varied, record),
      ...checks.map((check): Section => [
        check.criterion.heading,
        criterionLines(judged, chosen, check, varied.has(check), record),
      ]),
      ["verdict", verdictLines(judged, checks, system)],
      [
        "not asked",
        notAsked(checks, chosen).map(({ heading, asked }) => wordLine(heading, "not asked", `asked ${asked}`)),
      ],
      ["not read", duties.unknownColumns.map((heading) => wordLine(heading, "not read", "column of no known heading"))],
      ["caution", cautionsOf(judged, chosen.moving, checks, system, grades).map((caution) => wordLine(caution, ""))],
    ];
    return sections.flatMap(([name, lines]) => lines.map((line) => [name, ...line]));
  },
);
