import { readAsTyped } from "../../src/files/asTyped";

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

test("every cell stays as it is written; a number is only what reads the same as one", () => {
  const { rows, remarks } = readAsTyped(bytes('part;price;note\r\n007;2,50;1E5\r\nA-1;3;"a;b"\r\n;0.25;1.10'));
  expect(rows).toEqual([
    ["part", "price", "note"],
    ["007", "2,50", "1E5"],
    ["A-1", 3, "a;b"],
    [null, 0.25, "1.10"],
  ]);
  expect(remarks).toEqual([]);
});

test("what is no text is refused in a sentence", () => {
  expect(() => readAsTyped(bytes("%PDF-1.7"))).toThrow("It is a PDF: copy its table into a sheet, or ask for a CSV.");
  expect(() => readAsTyped(bytes('a,b\n"open,1'))).toThrow(/never closed/);
  // also below a title, where no heading says how wide the list is
  const wide = Array(16_385).fill("1").join(",");
  expect(() => readAsTyped(bytes(`title\n${wide}`))).toThrow("Line 2 holds 16385 cells, at most 500 are read.");
});
