/** The grades and what is asked of them, for the faces and for other calculations. */
export { curveText, leastOver, readCurve, valueAt } from "./curve";
export type { Curve } from "./curve";
export { findGrade, findProperty } from "./find";
export { cellOf } from "./grade";
export { labels, weakest } from "./labels";
export type { Label } from "./labels";
export { gradeKey, kindText, labelOf, libraryOf, standardLibrary } from "./library";
export type { Grade, GradeKind, Library, Origin } from "./library";
export { motions, pressureLimit, pvLimit, speedKey, speedLimit } from "./limits";
export type { Limit, LimitKey, Motion } from "./limits";
export { mediaClasses, mediaRatings } from "./media";
export type { Media, MediaRating } from "./media";
export { headingOf, kindOf, properties, property, propertyNamed, ratings } from "./properties";
export type { Property, PropertyKey, Rating, Values } from "./properties";
export { shafts } from "./shafts";
export { originText } from "./source";
export { gradesArg, parseGrades, readGrades } from "./table";
export type { GradeTable, RowFault } from "./table";
