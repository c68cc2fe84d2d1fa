import { noDatum } from "../../errors";
import { unknownName } from "../../names";
import { gradeKey, standardLibrary } from "./library";
import type { Grade, Library } from "./library";
import { properties, propertyNamed } from "./properties";
import type { Property } from "./properties";

/** The grade of that name; an unknown one is an error that suggests the nearest names and never picks one. */
export function findGrade(name: string, library: Library = standardLibrary()): Grade {
  const found = library.byName.get(gradeKey(name));
  if (found) return found;
  throw noDatum("grade", unknownName("grade", name, library.names, "GRADES() lists the library"));
}

/** The property of that heading; `argument` is the one that names it. */
export function findProperty(heading: string, argument = "property"): Property {
  const found = propertyNamed(heading);
  if (found) return found;
  throw noDatum(
    argument,
    unknownName(
      argument,
      heading,
      properties.map((p) => p.heading),
      "GRADES() shows the headings",
    ),
  );
}
