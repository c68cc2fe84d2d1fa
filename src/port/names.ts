/**
 * A sheet's name as that of its table: letters and digits alone. One that a formula could read as a column, a cell or a
 * row ("T", "AB12", "R1C1"), also once a number stands behind it, gets a word in front.
 */
export function tableNameOf(sheet: string): string {
  const bare = sheet.replace(/[^\p{L}\p{N}]/gu, "");
  return /^([A-Z]{0,3}\d*|R\d*C\d*|\p{N}.*)$/iu.test(bare) ? `Table${bare}` : bare;
}

/** The wish, or with the least number behind it that makes it free. */
export function freeName(wish: string, isTaken: (name: string) => boolean): string {
  let name = wish;
  for (let i = 2; isTaken(name); i++) name = `${wish}${i}`;
  return name;
}
