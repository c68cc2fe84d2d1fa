import { functions } from "../../src/core";
import { call, CellError, host } from "../support";
import { answer } from "../../src/edge/sheet";

const value = (message: string) => new CellError("#VALUE!", message);

describe("the sheet's edge", () => {
  test("a value, a range and text with a unit combine", () => {
    expect(answer(functions.PRESSURE, [800, [[20]], "15 mm", null], host)).toEqual([[800 / 300]]);
  });

  test("errors and blanks stay in their row", () => {
    expect(call(functions.PRESSURE, [[[800], [null], ["x"], [900]], 20, 15])).toEqual([
      [800 / 300],
      [""],
      [value('load must be a number or text like "12.5 N", got "x"')],
      [3],
    ]);
  });

  test.each([
    ["a table that cannot be read", [["nothing"], ["x"]], "#VALUE!"],
    ["a table of blanks", [[null], [""]], "#N/A"],
  ])("%s is gone through once, not for each row of a column", (_, rows, code) => {
    let times = 0;
    const table = new Proxy(rows, {
      get: (target, key) => {
        if (key === "map") times++;
        return Reflect.get(target, key) as unknown;
      },
    });
    const unknown = Array.from({ length: 50 }, () => ["Nowhere"]);
    const cells = call(functions.GRADE, [unknown, "PV limit", table]) as CellError[][];
    expect(cells.map(([cell]) => cell!.code)).toEqual(Array(50).fill(code));
    expect(times).toBe(1);
  });

  test("messages speak the sheet's unit system", () => {
    expect(call(functions.PRESSURE, [800, -5, 15], "inch")).toEqual([[value("bore must be above 0 in, got -5")]]);
    expect(call(functions.VERDICT, ["POM copolymer", 1, 0.1, -500], "inch")).toEqual([
      [value("temperature must be -459.67 °F or more, got -500")],
    ]);
  });

  test("units row by row", () => {
    const units = [["metric"], ["inch"], [""], ["furlongs"]];
    expect(answer(functions.PVVALUE, [[[1], [1], [1], [1]], [[2], [2], [2], [2]], units], host)).toEqual([
      [2],
      [expect.closeTo(2, 12)],
      [2],
      [value('units must be "metric" or "inch", got "furlongs"')],
    ]);
  });

  test("a faulty unit system is said once, for all", () => {
    expect(call(functions.PRESSURE, [800, 20, 15], "imperial" as "inch")).toEqual([
      [value('units must be "metric" or "inch", got "imperial"')],
    ]);
  });

  test("a text in a column reads as it does alone", () => {
    const texts = [
      "250 lbf",
      "1,234 lbf",
      "4 500 N",
      "12.5",
      "-5 N",
      "5N",
      " 5 N ",
      "1.2.3 N",
      "1e3 N",
      "7 psi",
      "5,5 N",
      "- N",
      "1.5kN",
      "7 ",
      "2 1e3 N",
      "\u22125 N",
      "12-3 N",
      "0.1.2",
      "3 N N",
    ];
    const column = call(functions.PRESSURE, [texts.map((text) => [text]), 20, 15]);
    texts.forEach((text, i) => expect([column[i]]).toEqual(call(functions.PRESSURE, [text, 20, 15])));
  });

  test("rows that answer several values want one column", () => {
    expect(call(functions.LIMITS, [[[20, 25]], "H7"])).toEqual([
      [value("size must be one column here: each row answers several values")],
    ]);
    expect(call(functions.LIMITS, [[[20], [null], ["x"]], "H7"])).toEqual([
      [20, expect.closeTo(20.021, 9)],
      ["", ""],
      [value('size must be a number or text like "12.5 mm", got "x"'), ""],
    ]);
  });

  test("tables of several rows stand below each other, numbered; a blank row stays blank", () => {
    const lines = call(functions.CHECKS, [
      [["POM copolymer"], [""], ["no such grade"]],
      [[1], [""], [1]],
      [[0.05], [""], [0.05]],
      [[20], [""], [20]],
    ]);
    expect(lines[0]!.slice(0, 3)).toEqual(["row", "criterion", "value"]);
    expect(lines.filter((line) => line[0] === 1).length).toBeGreaterThan(2);
    expect(lines.filter((line) => line[0] === "")).toHaveLength(1);
    const last = lines.at(-1)!;
    expect(last[0]).toBe(3);
    expect((last[1] as CellError).code).toBe("#N/A");
  });

  test("ragged, empty and one-dimensional ranges are taken for what they are", () => {
    expect(answer(functions.PRESSURE, [[[800], []], 20, 15, null], host)).toEqual([[800 / 300], [""]]);
    expect(answer(functions.PRESSURE, [[], 20, 15, null], host)).toEqual([[value("load is missing")]]);
    expect(answer(functions.PRESSURE, [[800, 900], 20, 15, null], host)).toEqual([[800 / 300, 3]]);
  });

  test("a rich value gives its basic value, an empty object is refused by name", () => {
    const rich = { type: "FormattedNumber", basicValue: 800, numberFormat: "0.0" };
    expect(call(functions.PRESSURE, [rich, 20, 15])).toEqual([[800 / 300]]);
    expect(call(functions.PRESSURE, [{}, 20, 15])).toEqual([[value("load must be a number or text, got an object")]]);
  });

  test("a rich value's older name for its value is read as well; an entity counts by its value alone", () => {
    expect(call(functions.PRESSURE, [{ type: "FormattedNumber", primitive: 800 }, 20, 15])).toEqual([[800 / 300]]);
    expect(call(functions.PRESSURE, [{ type: "Error", primitive: "#DIV/0!" }, 20, 15])).toEqual([
      [new CellError("#DIV/0!")],
    ]);
    const entity = { type: "Entity", text: "pivot", properties: {} };
    expect(call(functions.PRESSURE, [{ ...entity, basicType: "Double", basicValue: 800 }, 20, 15])).toEqual([
      [800 / 300],
    ]);
    expect(call(functions.PRESSURE, [{ ...entity, basicType: "Error", basicValue: "#VALUE!" }, 20, 15])).toEqual([
      [value("load must be a number or text, got an object")],
    ]);
  });

  describe("in Excel", () => {
    // what a function may answer with: Microsoft's description of CustomFunctions.ErrorCode (memory)
    beforeAll(() => void Object.assign(globalThis, { CustomFunctions: { Error: CellError } }));

    test("the call itself, handed over behind the arguments, is no argument", () => {
      const invocation = { address: "Sheet1!A1", functionName: "PRESSURE" };
      expect(answer(functions.PRESSURE, [[[800]], [[20]], [[15]], invocation])).toEqual([[800 / 300]]);
      expect(answer(functions.PRESSURE, [[[800]], [[20]], invocation, undefined])).toEqual([
        [value("length is missing")],
      ]);
    });

    test("a code that a function cannot answer goes on as #N/A that says what it was", () => {
      const loads = [["#NAME?"], ["#REF!"], ["#SPILL!"], ["#DIV/0!"], ["#NUM!"], ["#NULL!"], ["#N/A"]];
      const told = (code: string) => [new CellError("#N/A", `a cell that this needs holds ${code}`)];
      expect(answer(functions.PRESSURE, [loads, [[20]], [[15]], null])).toEqual([
        ...["#NAME?", "#REF!", "#SPILL!"].map(told),
        ...["#DIV/0!", "#NUM!", "#NULL!", "#N/A"].map((code) => [new CellError(code)]),
      ]);
    });
  });

  test("an answer too large for a number names the arguments", () => {
    const [[cell]] = call(functions.PRESSURE, [1e308, 1e-300, 1e-300]) as [[CellError]];
    expect(cell.message).toBe("load, bore or length: out of range, the answer is not a finite number");
  });

  test("lists are read whole, with the place of what is wrong", () => {
    const pressures = [[2], [4], [""]];
    expect(call(functions.DUTYPV, [pressures, [[0.1], [0.05], [""]], [[10], [5], [""]]])).toEqual([
      [expect.closeTo(0.2, 12), 0.2, 0.2],
    ]);
    expect(call(functions.DUTYPV, [pressures, [[0.1], [""], [""]], [[10], [5], [""]]])).toEqual([
      [value("speeds is missing in step 2")],
    ]);
    expect(
      call(functions.DUTYPV, [
        [[2], ["x"]],
        [[1], [1]],
        [[1], [1]],
      ]),
    ).toEqual([[value('pressures 2 must be a number or text like "12.5 MPa", got "x"')]]);
    expect(call(functions.DUTYPV, [[[2]], [[1], [1]], [[1], [1]]])).toEqual([
      [value("pressures has 1 cells, another range has 2: each step needs all three")],
    ]);
  });
});

test("a sheet is never given −0", () => {
  expect(call(functions.PRESSURE, [-0, 20, 15])).toEqual([[0]]);
  expect(call(functions.PVVALUE, [-0, 0.1])).toEqual([[0]]);
});
