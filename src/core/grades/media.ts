import { noDatum } from "../errors";
import { formula } from "../formula";
import { findGrade } from "./model/find";
import { gradeArg } from "./grade";
import { findMedium, ratingText } from "./model/media";
import { gradesArg } from "./model/table";

export const MEDIA = formula(
  {
    id: "MEDIA",
    text: "How a grade bears a medium: resistant, limited or attacked, and to what temperature; a note where a declaration has to be asked for",
    args: {
      grade: gradeArg,
      medium: {
        kind: "text",
        text: 'Class of medium: "water", "sea water", "weak acids"; own data in the guide lists them',
      },
      grades: gradesArg,
    },
    units: true,
    result: { kind: "text", text: "The rating; #N/A where the grade has no data" },
    source: { key: "own" },
    example: ["PA66", "weak acids"],
    see: ["GRADE", "SOURCE", "CAUTIONS"],
  },
  ({ grade, medium, grades }, system = "metric"): string => {
    const found = findGrade(grade, grades);
    const named = findMedium("medium", medium);
    const rated = found.values.media?.find((entry) => entry.medium === named);
    if (!rated) throw noDatum("grade", `grade "${found.name}" has no data on ${named}`);
    return ratingText(rated, system);
  },
);
