/** Duties and how they are judged, for the faces. */
export { assess } from "./assess";
export { criteria } from "./criteria";
export { lowestTemperature, roomTemperature } from "./criteria/lowestTemperature";
export { words } from "./criterion";
export type { Check, Criterion, Finding, Word } from "./criterion";
export { statedDuty } from "./duty";
export type { Duty, Face, Stated, Step } from "./duty";
export { field, fieldHeadings, fieldKeys, fields, headingOf as fieldHeading, isAskedFor, parts } from "./fields";
export type { FieldEntry, FieldKey, FieldValues, Part } from "./fields";
export { dataLabel, found, judge } from "./judge";
export { NamedDuty } from "./namedDuty";
export { ranked, scopeOf } from "./rank";
export type { Ranked } from "./rank";
export { readDuties } from "./readDuties";
export type { DutyLine, DutyTable } from "./readDuties";
export { stepValues } from "./stepValues";
export { missingText, reasonOf, verdictOf, verdictText } from "./verdict";
export type { Verdict } from "./verdict";
