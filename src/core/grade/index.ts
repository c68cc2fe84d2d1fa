/** The grades and what is asked of them, for the faces and for other calculations. */
export { assess, roomTemperature, temperatureChecks } from "./assess";
export type { Check, Criterion, Duty } from "./assess";
export { cautionsOf, lengthCaution, shafts, standingCautions } from "./cautions";
export { curveText, leastOver, readCurve, valueAt } from "./curve";
export type { Curve } from "./curve";
export { findGrade, findProperty, nearest } from "./find";
export { gradeKey, kindText, libraryOf, standardLibrary } from "./library";
export type { Grade, GradeKind, Library, Origin } from "./library";
export { limitOf, motions } from "./limits";
export type { Limit, LimitKey, Motion } from "./limits";
export { headingOf, kindOf, properties, property, propertyNamed, ratings, splitHeading } from "./properties";
export type { Property, PropertyKey, Rating, Values } from "./properties";
export { boreCloseIn } from "./swell";
export { gradesArg, parseGrades, readGrades } from "./table";
export type { GradeTable } from "./table";
export { measure, percentText, reasonOf, verdictOf, verdictText } from "./verdict";
export type { Verdict } from "./verdict";
