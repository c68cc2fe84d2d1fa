import type { Book } from "../book";
import { duties } from "./duties";
import { grades, gradeTable } from "./ownGrades";
import { shortlist } from "./shortlist";
import { startHere } from "./startHere";

/** The worked sheets of the rooftop greenhouse; a further sheet joins the list. */
export const greenhouse: Book = {
  name: "Rooftop greenhouse",
  tables: [gradeTable],
  sheets: [startHere, duties, shortlist, grades],
};
