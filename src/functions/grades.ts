// Written by `npm run sync` from the specs in src/core; edits here are lost.
/* oxlint-disable typescript/no-explicit-any -- a cell of any kind, as Excel's generator wants it */

import { functions } from "../core";
import { answer } from "../edge/sheet";

/**
 * One property of a grade, in the unit of that property; a percentage as a ratio; a curve, a rating or a list as text. Answers the property; #N/A where the grade has no data
 * @customfunction GRADE
 * @param grade Name of a grade in grades or in the library
 * @param property Heading of the property: "PV limit"; case, spaces and hyphens do not count
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function GRADE(grade: any[][], property: any[][], grades?: any[][], units?: any[][]): any[][] {
  return answer(functions.GRADE, [grade, property, grades, units]);
}
/**
 * The own grades and the library as a table that can itself serve as grades; a cell is empty where there are no data. Answers headings with units, one grade below the other
 * @customfunction GRADES
 * @param [properties] Headings of the properties wanted, in their order; all of them unless given. Grade and kind always stand first; a range
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function GRADES(properties?: any[][], grades?: any[][], units?: any[][]): any[][] {
  return answer(functions.GRADES, [properties, grades, units]);
}
/**
 * Where a grade's value comes from: source, place in it, the number as printed, the band whose safe end it is, how well it is founded (label), condition. Answers the source in one line
 * @customfunction SOURCE
 * @param grade Name of a grade in grades or in the library
 * @param property Heading of the property
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 */
export function SOURCE(grade: any[][], property: any[][], grades?: any[][]): any[][] {
  return answer(functions.SOURCE, [grade, property, grades]);
}
/**
 * How a grade bears a medium: resistant, limited or attacked, and to what temperature; a note where a declaration has to be asked for. Answers the rating; #N/A where the grade has no data
 * @customfunction MEDIA
 * @param grade Name of a grade in grades or in the library
 * @param medium Class of medium: "water", "sea water", "weak acids"; own data in the guide lists them
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function MEDIA(grade: any[][], medium: any[][], grades?: any[][], units?: any[][]): any[][] {
  return answer(functions.MEDIA, [grade, medium, grades, units]);
}
/**
 * A grade's limit at a temperature, or the least over a range: pressures capped by their curve, PV by its curve or derated for the surroundings as DERATEDPV does. Answers the limit; #N/A beyond the grade's temperatures or its curve
 * @customfunction ALLOWABLE
 * @param grade Name of a grade in grades or in the library
 * @param property Heading of a limit of pressure, speed or PV: "PV limit"
 * @param temperature Temperature: for PV that of the surroundings, for pressures that of the bore; °C (°F), one value or lowest and highest as text "-20 to 60"
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function ALLOWABLE(
  grade: any[][],
  property: any[][],
  temperature: any[][],
  grades?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.ALLOWABLE, [grade, property, temperature, grades, units]);
}
/**
 * The governing use, value over limit: 1 is just held. #N/A where a datum is missing or the surroundings are outside the grade's temperatures. Answers governing use as a ratio; format the cell as a percentage
 * @customfunction USE
 * @param grade Name of a grade in grades or in the library
 * @param pressure Mean pressure while running, or at rest where the motion is static; times your impact factor where there is shock; MPa (psi), 0 MPa or more
 * @param speed Mean sliding speed; not looked at where the motion is static; m/s (ft/min), 0 m/s or more
 * @param temperature Temperature of the surroundings; that of the bore is computed; °C (°F), one value or lowest and highest as text "-20 to 60"
 * @param [motion] Motion: chooses the speed limit; static checks the static pressure limit and ignores speed and PV; "turning", "swinging", "linear" or "static", default "turning"
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function USE(
  grade: any[][],
  pressure: any[][],
  speed: any[][],
  temperature: any[][],
  motion?: any[][],
  grades?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.USE, [grade, pressure, speed, temperature, motion, grades, units]);
}
/**
 * Whether a grade holds a duty, with the criterion that governs: "fits, PV 62 %". A preliminary estimate: see CAUTIONS; a described duty is judged by DUTIES. Answers "fits", "care", "no data" or "fails", and why
 * @customfunction VERDICT
 * @param grade Name of a grade in grades or in the library
 * @param pressure Mean pressure while running, or at rest where the motion is static; times your impact factor where there is shock; MPa (psi), 0 MPa or more
 * @param speed Mean sliding speed; not looked at where the motion is static; m/s (ft/min), 0 m/s or more
 * @param temperature Temperature of the surroundings; that of the bore is computed; °C (°F), one value or lowest and highest as text "-20 to 60"
 * @param [motion] Motion: chooses the speed limit; static checks the static pressure limit and ignores speed and PV; "turning", "swinging", "linear" or "static", default "turning"
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function VERDICT(
  grade: any[][],
  pressure: any[][],
  speed: any[][],
  temperature: any[][],
  motion?: any[][],
  grades?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.VERDICT, [grade, pressure, speed, temperature, motion, grades, units]);
}
/**
 * Every criterion of a duty with value, limit, use and verdict; a lowest temperature counts where the duty is colder than 20 °C. Answers one criterion per row; a cell is empty where there is no number
 * @customfunction CHECKS
 * @param grade Name of a grade in grades or in the library
 * @param pressure Mean pressure while running, or at rest where the motion is static; times your impact factor where there is shock; MPa (psi), 0 MPa or more
 * @param speed Mean sliding speed; not looked at where the motion is static; m/s (ft/min), 0 m/s or more
 * @param temperature Temperature of the surroundings; that of the bore is computed; °C (°F), one value or lowest and highest as text "-20 to 60"
 * @param [motion] Motion: chooses the speed limit; static checks the static pressure limit and ignores speed and PV; "turning", "swinging", "linear" or "static", default "turning"
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function CHECKS(
  grade: any[][],
  pressure: any[][],
  speed: any[][],
  temperature: any[][],
  motion?: any[][],
  grades?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.CHECKS, [grade, pressure, speed, temperature, motion, grades, units]);
}
/**
 * Every grade ranked for a duty: by verdict, then by use, each with its reason; invented grades last, marked. Where it is wet, the swelling is told, and a grade of unknown swelling has no data. Answers one grade per row
 * @customfunction SHORTLIST
 * @param pressure Mean pressure while running, or at rest where the motion is static; times your impact factor where there is shock; MPa (psi), 0 MPa or more
 * @param speed Mean sliding speed; not looked at where the motion is static; m/s (ft/min), 0 m/s or more
 * @param temperature Temperature of the surroundings; that of the bore is computed; °C (°F), one value or lowest and highest as text "-20 to 60"
 * @param [motion] Motion: chooses the speed limit; static checks the static pressure limit and ignores speed and PV; "turning", "swinging", "linear" or "static", default "turning"
 * @param [wet] Whether the bush may become saturated with water; "dry" or "wet", default "dry"
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function SHORTLIST(
  pressure: any[][],
  speed: any[][],
  temperature: any[][],
  motion?: any[][],
  wet?: any[][],
  grades?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.SHORTLIST, [pressure, speed, temperature, motion, wet, grades, units]);
}
/**
 * Least length of a sleeve that holds running pressure, PV and bore temperature; #N/A where speed or temperature alone fail. Compare it with the bore: 0.5 to 2 times is common practice. Answers mm (in)
 * @customfunction MINLENGTH
 * @param grade Name of a grade in grades or in the library
 * @param load Radial load; N (lbf), 0 N or more
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param speed Mean sliding speed; m/s (ft/min), 0 m/s or more
 * @param temperature Temperature of the surroundings; that of the bore is computed; °C (°F), one value or lowest and highest as text "-20 to 60"
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function MINLENGTH(
  grade: any[][],
  load: any[][],
  bore: any[][],
  speed: any[][],
  temperature: any[][],
  grades?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.MINLENGTH, [grade, load, bore, speed, temperature, grades, units]);
}
/**
 * Highest radial load of a sleeve within running pressure, PV and bore temperature; #N/A where speed or temperature alone fail. Answers N (lbf)
 * @customfunction MAXLOAD
 * @param grade Name of a grade in grades or in the library
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param length Length of the bush; mm (in), above 0 mm
 * @param speed Mean sliding speed; m/s (ft/min), 0 m/s or more
 * @param temperature Temperature of the surroundings; that of the bore is computed; °C (°F), one value or lowest and highest as text "-20 to 60"
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function MAXLOAD(
  grade: any[][],
  bore: any[][],
  length: any[][],
  speed: any[][],
  temperature: any[][],
  grades?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.MAXLOAD, [grade, bore, length, speed, temperature, grades, units]);
}
/**
 * Highest shaft speed of a sleeve within turning speed, PV, bore temperature and the pressure limit at that temperature; #N/A where pressure or temperature alone fail. Answers 1/min
 * @customfunction MAXRPM
 * @param grade Name of a grade in grades or in the library
 * @param load Radial load; N (lbf), 0 N or more
 * @param bore Bore of the bush; mm (in), above 0 mm
 * @param length Length of the bush; mm (in), above 0 mm
 * @param temperature Temperature of the surroundings; that of the bore is computed; °C (°F), one value or lowest and highest as text "-20 to 60"
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function MAXRPM(
  grade: any[][],
  load: any[][],
  bore: any[][],
  length: any[][],
  temperature: any[][],
  grades?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.MAXRPM, [grade, load, bore, length, temperature, grades, units]);
}
/**
 * What to bear in mind with a grade in a duty: missing or remembered data, limits derated or not, moisture, shock, shaft, and the standing cautions. Answers one caution per row
 * @customfunction CAUTIONS
 * @param grade Name of a grade in grades or in the library
 * @param pressure Mean pressure while running, or at rest where the motion is static; times your impact factor where there is shock; MPa (psi), 0 MPa or more
 * @param speed Mean sliding speed; not looked at where the motion is static; m/s (ft/min), 0 m/s or more
 * @param temperature Temperature of the surroundings; that of the bore is computed; °C (°F), one value or lowest and highest as text "-20 to 60"
 * @param [motion] Motion: chooses the speed limit; static checks the static pressure limit and ignores speed and PV; "turning", "swinging", "linear" or "static", default "turning"
 * @param [wet] Whether the bush may become saturated with water; "dry" or "wet", default "dry"
 * @param [shock] Whether the load comes in blows; "steady" or "shock", default "steady"
 * @param [shaft] Shaft material; not looked at unless given; "hardened steel", "stainless steel", "soft steel", "hard-anodised aluminium" or "chromed"
 * @param [grades] Own grades, searched before the library; or the invented grades of the demo alone; a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"
 * @param [units] Unit system of plain numbers and of the answer; "metric" or "inch", default "metric". Text with its own unit overrides it
 */
export function CAUTIONS(
  grade: any[][],
  pressure: any[][],
  speed: any[][],
  temperature: any[][],
  motion?: any[][],
  wet?: any[][],
  shock?: any[][],
  shaft?: any[][],
  grades?: any[][],
  units?: any[][],
): any[][] {
  return answer(functions.CAUTIONS, [grade, pressure, speed, temperature, motion, wet, shock, shaft, grades, units]);
}
