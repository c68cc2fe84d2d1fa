import type { Book } from "../book";
import { duties } from "./duties";
import { fit } from "./fit";
import { grades, gradeTable } from "./ownGrades";
import { decision, quotes } from "./quotes";
import { shortlist } from "./shortlist";
import { startHere } from "./startHere";
import { workedExample } from "./workedExample";

/** The worked sheets of the rooftop greenhouse; a further sheet joins the list. */
export const greenhouse: Book = {
  name: "Rooftop greenhouse",
  tables: [gradeTable],
  sheets: [startHere, duties, shortlist, grades, fit, quotes, decision, workedExample],
};
