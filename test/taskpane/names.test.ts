import { freeName, tableNameOf } from "../../src/port/names";

// Excel's rules for names (Microsoft, "Names in formulas"): no cell reference (Z$100, R1C1), not R or C alone, first a letter
test.each([
  ["Own grades", "Owngrades"],
  ["T", "TableT"],
  ["r", "Tabler"],
  ["AB 12", "TableAB12"],
  ["Own", "TableOwn"],
  ["R1C1", "TableR1C1"],
  ["2026", "Table2026"],
  ["!", "Table"],
  ["Größen", "Größen"],
])("the table of sheet %s is named %s", (sheet, table) => expect(tableNameOf(sheet)).toBe(table));

test("a name in use gets the least free number", () => {
  const taken = new Set(["Duties", "Duties2"]);
  expect(freeName("Duties", (name) => taken.has(name))).toBe("Duties3");
  expect(freeName("Lists", (name) => taken.has(name))).toBe("Lists");
});
