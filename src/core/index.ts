/** What the npm package offers: the functions under their names in a sheet, readers of what they take, and the errors they throw. */
export { catalogue, families, familyList, familyOf, functions } from "./families";
export type { Family, FamilyTitle } from "./families";
export { readers } from "./readers";
export { BushError } from "./errors";
