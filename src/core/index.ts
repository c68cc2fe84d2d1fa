/** What the npm package offers: the functions under their names in a sheet. */
export { catalogue, families, familyList, familyOf, functions } from "./families";
export type { Family, FamilyTitle } from "./families";
