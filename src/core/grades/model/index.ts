/** The grades and what is asked of them, for the faces and for other calculations. */
export { curveText, leastOver, readCurve, valueAt } from "./curve";
export { findGrade, findProperty } from "./find";
export { propertyCell } from "../grade";
export { labels, weakest } from "./labels";
export { kindText, labelOf, libraryOf, standardLibrary } from "./library";
export type { Grade, GradeKind, Library } from "./library";
export { motions, pressureLimit, pvLimit, speedLimit } from "./limits";
export type { Limit, Motion } from "./limits";
export { mediaClasses, mediaRatings } from "./media";
export { propertyHeading, kindOf, properties, property, propertyNamed, ratings } from "./properties";
export type { Property, PropertyKey, Rating, Values } from "./properties";
export { originText } from "../source";
export { gradeReading, gradesArg, parseGrades, readGrades } from "./table";
