// Written by `npm run sync` from the specs in src/core; edits here are lost.

import { dutyTable as DUTIES_, dutyChecks as DUTYCHECKS_, dutyRank as DUTYRANK_ } from "../core";

import { answer } from "../edge/sheet";

/**
 * Every duty of a table judged by all criteria with its own grade, or with the best, which is named; one row for each row of the table. Pressure without the impact factor. Answers one row for each row of the table, later steps and spare rows empty
 * @customfunction DUTIES
 * @param duties Duties; a heading row (duty, load, bore, length, rpm, temperature …, units in brackets: "load [lbf]") and one row per duty, or a card with its headings down the first of two columns
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 * @returns One row for each row of the table, later steps and spare rows empty
 */
export function DUTIES(duties: any[][], grades?: any[][], units?: any[][]): any[][] {
  return answer(DUTIES_, [duties, grades, units]);
}

/**
 * Every criterion of one duty with value, limit, use, verdict and where the limit comes from; below it what was not asked, and columns that were not read. Answers one criterion per row; a cell is empty where there is no number
 * @customfunction DUTYCHECKS
 * @param duties Duties; a heading row (duty, load, bore, length, rpm, temperature …, units in brackets: "load [lbf]") and one row per duty, or a card with its headings down the first of two columns
 * @param [duty] Name of the duty, or its number in the table, steps counted once; not needed where there is one
 * @param [grade] Grade to judge; else the duty's own, else the best
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 * @returns One criterion per row; a cell is empty where there is no number
 */
export function DUTYCHECKS(
  duties: any[][],
  duty?: any[][],
  grade?: any[][],
  grades?: any[][],
  units?: any[][],
): any[][] {
  return answer(DUTYCHECKS_, [duties, duty, grade, grades, units]);
}

/**
 * All grades ranked for one duty, each with its reason: those of grades where given, else the generic families; invented ones only when asked for. Answers one grade per row, best first
 * @customfunction DUTYRANK
 * @param duties Duties; a heading row (duty, load, bore, length, rpm, temperature …, units in brackets: "load [lbf]") and one row per duty, or a card with its headings down the first of two columns
 * @param [duty] Name of the duty, or its number in the table, steps counted once; not needed where there is one
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 * @returns One grade per row, best first
 */
export function DUTYRANK(duties: any[][], duty?: any[][], grades?: any[][], units?: any[][]): any[][] {
  return answer(DUTYRANK_, [duties, duty, grades, units]);
}
