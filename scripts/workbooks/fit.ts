import { fit as sheet } from "../../src/book/greenhouse/fit";
import type { FileBook } from "./book";

export const fit: FileBook = {
  file: "fit",
  title: "Clearance of a pressed polymer bush across temperature and moisture",
  sheets: [sheet],
};
