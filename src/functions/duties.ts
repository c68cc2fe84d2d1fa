// Written by `npm run sync` from the specs in src/core; edits here are lost.
/* oxlint-disable typescript/no-explicit-any -- a cell of any kind, as Excel's generator wants it */

import { functions } from "../core";
import { answer } from "../edge/sheet";

/**
 * Every duty of a table judged by all criteria with its own grade, or with the best, which is named; one row for each row of the table. Pressure without the impact factor; the bore temperature is its upper figure: friction at its high figure, no way out through a housing of unknown conductance. Answers one row for each row of the table, later steps and spare rows empty
 * @customfunction DUTIES
 * @param duties Duties; a heading row (duty, load, bore, length, rpm, temperature …, units in brackets: "load [lbf]") and one row per duty, or a card with its headings down the first of two columns
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function DUTIES(duties: any[][], grades?: any[][], units?: any[][]): any[][] {
  return answer(functions.DUTIES, [duties, grades, units]);
}
/**
 * Every criterion of one duty with value, limit, use, verdict and where the limit comes from; below it what was not asked, and columns that were not read. Answers one criterion per row; a cell is empty where there is no number
 * @customfunction DUTYCHECKS
 * @param duties Duties; a heading row (duty, load, bore, length, rpm, temperature …, units in brackets: "load [lbf]") and one row per duty, or a card with its headings down the first of two columns
 * @param [duty] Name of the duty, or its number in the table, steps counted once; not needed where there is one
 * @param [grade] Grade to judge; else the duty's own, else the best
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function DUTYCHECKS(
  duties: any[][],
  duty?: any[][],
  grade?: any[][],
  grades?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.DUTYCHECKS, [duties, duty, grade, grades, units]);
}
/**
 * All grades ranked for one duty, each with its reason: those of grades where given, else the generic families; invented ones only when asked for. Answers one grade per row, best first
 * @customfunction DUTYRANK
 * @param duties Duties; a heading row (duty, load, bore, length, rpm, temperature …, units in brackets: "load [lbf]") and one row per duty, or a card with its headings down the first of two columns
 * @param [duty] Name of the duty, or its number in the table, steps counted once; not needed where there is one
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function DUTYRANK(duties: any[][], duty?: any[][], grades?: any[][], units?: any[][]): any[][] {
  return answer(functions.DUTYRANK, [duties, duty, grades, units]);
}
/**
 * For each number of one duty how far it may move down and up, all else equal, before the verdict's word changes, and the criterion that turns it; "none" where it turns nothing within its bounds or, where those are open, from a thousandth to a thousand times the value. Temperatures: one moves as one, of two each as far as the other. A band moves as a whole, in proportion, the others are held. A number moves in all steps that share it. "At it alone": that bound has this word, and nothing lies beyond. "Not monotone": further out the verdict turns back. Answers the verdict as it is, then one number per row
 * @customfunction DUTYROOM
 * @param duties Duties; a heading row (duty, load, bore, length, rpm, temperature …, units in brackets: "load [lbf]") and one row per duty, or a card with its headings down the first of two columns
 * @param [duty] Name of the duty, or its number in the table, steps counted once; not needed where there is one
 * @param [grade] Grade to judge; else the duty's own, else the best
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function DUTYROOM(duties: any[][], duty?: any[][], grade?: any[][], grades?: any[][], units?: any[][]): any[][] {
  return answer(functions.DUTYROOM, [duties, duty, grade, grades, units]);
}
/**
 * One duty with one of its fields at each of a range of values, all else equal: use, governing criterion and verdict in a row for each value. The value is put into the first step and all that share it; the grade, where none is chosen, is the best for the duty as it stands. Answers one value per row, an error in the row of a value that cannot be
 * @customfunction DUTYSWEEP
 * @param duties Duties; a heading row (duty, load, bore, length, rpm, temperature …, units in brackets: "load [lbf]") and one row per duty, or a card with its headings down the first of two columns
 * @param heading Heading of the field, its unit in brackets where it has one: "load", "load [lbf]"
 * @param values Values to put in one after the other; a range of values as they would stand in the duty, text with its own unit too
 * @param [duty] Name of the duty, or its number in the table, steps counted once; not needed where there is one
 * @param [grade] Grade to judge; else the duty's own, else the best
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function DUTYSWEEP(
  duties: any[][],
  heading: any[][],
  values: any[][],
  duty?: any[][],
  grade?: any[][],
  grades?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.DUTYSWEEP, [duties, heading, values, duty, grade, grades, units]);
}
/**
 * One duty whose numbers are known within bands: best, likely and worst use of each criterion, the worst verdict, and how much of the bands passes. What holds or fails at every point looked at passes or fails "throughout"; else the share that does not fail, care included, in whole percent and good to about two, of 2048 points spread over the bands, each independent: "640 to 960" alike between its ends, "800 ± 20 %" triangular. Where data are missing no share is given. Answers the whole verdict, then one criterion per row; a cell is empty where no ratio tells the use
 * @customfunction DUTYBAND
 * @param duties Duties; a heading row (duty, load, bore, length, rpm, temperature …, units in brackets: "load [lbf]") and one row per duty, or a card with its headings down the first of two columns
 * @param [duty] Name of the duty, or its number in the table, steps counted once; not needed where there is one
 * @param [grade] Grade to judge; else the duty's own, else the best
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function DUTYBAND(duties: any[][], duty?: any[][], grade?: any[][], grades?: any[][], units?: any[][]): any[][] {
  return answer(functions.DUTYBAND, [duties, duty, grade, grades, units]);
}
/**
 * The fit of one duty state by state: running clearance, grip and hoop stress of a bush pressed into its housing, through assembly (20 °C), cold, hot, in a short peak, running, moist or dried, and cold again after the hottest hold has relaxed it, with the hardest states of service again where those are narrower or looser. Its verdicts are those of the criteria clearance and grip; beyond the grade's temperatures a state fails. A moisture at assembly that is not told is looked at dry and humid, a share of grip kept that is not told at 100 % and at 0 %, both care; states that only a bore warmer than its PV implies would fail, as was measured, are added as care. Of bands the harder end counts in each column. Answers one state per row: least and greatest clearance in the worst case of all tolerances, root sum square where most assemblies lie; below 0 the shaft is held and the bush is loose. Verdict "fits", or "fails", "no data", "care" with the reason: binds, loose in the housing, grip lost, overstressed
 * @customfunction FITTABLE
 * @param duties Duties; a heading row (duty, load, bore, length, rpm, temperature …, units in brackets: "load [lbf]") and one row per duty, or a card with its headings down the first of two columns
 * @param [duty] Name of the duty, or its number in the table, steps counted once; not needed where there is one
 * @param [grade] Grade to judge; else the duty's own, else the best
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function FITTABLE(duties: any[][], duty?: any[][], grade?: any[][], grades?: any[][], units?: any[][]): any[][] {
  return answer(functions.FITTABLE, [duties, duty, grade, grades, units]);
}
/**
 * The calculation record of one duty, line by line, for whoever checks and signs it: inputs as read, figures of the grade with their sources, loads and motions, every criterion with formula, numbers put in, result and source, the verdict, what was not asked, cautions; in inch units where asked. With bands each criterion is worked at its worst corner. Answers one step per row; what a symbol stands for is told where it is first used
 * @customfunction DUTYSHEET
 * @param duties Duties; a heading row (duty, load, bore, length, rpm, temperature …, units in brackets: "load [lbf]") and one row per duty, or a card with its headings down the first of two columns
 * @param [duty] Name of the duty, or its number in the table, steps counted once; not needed where there is one
 * @param [grade] Grade to judge; else the duty's own, else the best
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function DUTYSHEET(
  duties: any[][],
  duty?: any[][],
  grade?: any[][],
  grades?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.DUTYSHEET, [duties, duty, grade, grades, units]);
}
