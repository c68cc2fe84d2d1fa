import { all, create } from "mathjs";
import { catalogue, workedSteps } from "../../../src/core";
import { isNumberArg, resultSymbols } from "../../../src/core/formula";
import type { Arg, Formula } from "../../../src/core/formula";
import { isDimensional, kinds } from "../../../src/core/kinds";
import type { System } from "../../../src/core/kinds";
import { call, CellError, inInch } from "../../support";

const math = create(all!);
const worked = catalogue.filter((f) => f.spec.working).map((f) => [f.spec.id, f] as const);
type Line = [text: string, formula: string, numbers: string, result: unknown, unit: string];
const steps = (id: string, ...given: unknown[]) => call(workedSteps, [id, ...given]) as Line[];

const args = (f: Formula) => Object.values<Arg>(f.spec.args);

/** The example, its numbers scaled a little so that they are not round, in a unit system. */
function given(f: Formula, system: System, by = 1): unknown[] {
  const free = (arg: Arg) => isNumberArg(arg) && !["ratio", "count", "temperature"].includes(arg.kind);
  const values = f.spec.example.map((value, i) =>
    typeof value === "number" && free(args(f)[i]!) ? value * by : value,
  );
  return system === "inch" ? values.map((value, i) => inInch(args(f)[i]!, value)) : values;
}
const stepsOf = (f: Formula, typed: readonly unknown[], system: System): Line[] =>
  steps(
    f.spec.id,
    ...typed,
    ...Array<null>(args(f).length - typed.length).fill(null),
    ...(f.spec.units ? [system] : []),
  );

/** Every unit that may stand behind a number, the longest first. */
const unitNames = [
  ...new Set([
    ...Object.values(kinds).flatMap(({ metric, inch }) => [metric, inch]),
    ...worked.flatMap(([, f]) => Object.values(f.spec.between ?? {}).map(({ unit }) => unit)),
    ...["m²", "mm²", "in²", "W/K", "min⁻¹", "MPa⁻¹", "psi⁻¹", "K⁻¹", "°F⁻¹", "N/lbf", "mm/in", "lbf/N"],
  ]),
]
  .filter((unit) => unit !== "" && !unit.startsWith("1/"))
  .sort((a, b) => b.length - a.length);
const behindNumber = new RegExp(
  `(?<=[\\d⁰-⁹]) (${unitNames.map((unit) => unit.replace(/[().]/g, "\\$&")).join("|")})(?![\\p{L}·/⁻²³])`,
  "gu",
);
const digitsOf = (power: string) =>
  [...power].map((sign) => "⁻⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(sign) - 1).map((n) => (n < 0 ? "-" : n));

/** A shown expression as mathjs reads it: units off, the trade's signs turned into operators. */
const plain = (shown: string): string =>
  shown
    .replace(/\u202f/g, "")
    .replace(behindNumber, "")
    .replace(/°/g, "")
    .replace(
      /([\d.]+) × 10([⁻⁰¹²³⁴-⁹]+)/g,
      (_, mantissa: string, power: string) => `${mantissa}e${digitsOf(power).join("")}`,
    )
    .replace(/[⁻⁰¹²³⁴-⁹]+/g, (power) => `^${digitsOf(power).join("")}`)
    .replace(/√/g, "sqrt")
    .replace(/π/g, "pi")
    .replace(/−/g, "-")
    .replace(/[×·]/g, "*")
    .replace(/ %/g, "");

/** What a shown number is worth, and half of its last digit; a number of few digits is shown whole. */
function shownNumber(text: string): { value: number; half: number } {
  const [mantissa, exponent = "0"] = plain(text).split("e") as [string, string?];
  const places = mantissa.split(".")[1]?.length ?? 0;
  const written = mantissa.replace(/[-.]/g, "").replace(/^0+/, "").length;
  // zeros at the end are not written: 20 stands for 20.00
  const spare = Math.max(0, 4 - written);
  return { value: Number(`${mantissa}e${exponent}`), half: 0.5 * 10 ** (Number(exponent) - places - spare) };
}

const calculations = (lines: readonly Line[]): Line[] => lines.filter(([, , numbers]) => / = .* = /.test(numbers));

describe.each(worked)("STEPS of %s", (_, f) => {
  const systems: System[] = f.spec.units ? ["metric", "inch"] : ["metric"];
  const each = systems.flatMap((system) => [1, 1.0007, 0.913].map((by) => [system, by] as const));

  test.each(each)("%s, numbers × %d: the numbers shown come to the number shown behind them", (system, by) => {
    const lines = calculations(stepsOf(f, given(f, system, by), system));
    expect(lines.length).toBeGreaterThan(0);
    for (const [, formula, numbers, , unit] of lines) {
      const [symbol, expression, result] = numbers.split(" = ") as [string, string, string];
      expect(formula.split(" = ")[0]).toBe(symbol);
      expect(unit === "°" ? result.endsWith("°") : unit === "" || result.endsWith(` ${unit}`)).toBe(true);
      const { value, half } = shownNumber(result);
      const worth = math.evaluate(plain(expression), { ln: Math.log }) as number;
      if (!(Math.abs(worth - value) <= half * (1 + 1e-9))) throw new Error(`${numbers}: comes to ${worth}`);
      // each formula evaluates to the same with the symbols' own values: see test/core/working.test.ts
      if (formula.includes("=")) expect(formula).not.toMatch(/[*^]|sqrt|pi\b/);
    }
  });

  test.each(each)("%s, numbers × %d: the last results are the function's own answers", (system, by) => {
    const typed = given(f, system, by);
    const lines = calculations(stepsOf(f, typed, system));
    const answers = call(f, typed, f.spec.units ? system : undefined)[0]!;
    for (const { symbol, kind, at } of resultSymbols(f.spec.result)) {
      const last = lines.findLast(([, , numbers]) => numbers.startsWith(`${symbol} = `))!;
      expect(last[3]).toBe(answers[at]);
      expect(last[4]).toBe(
        f.spec.units || !isDimensional(kind) ? (unitsShown[kinds[kind][system]] ?? kinds[kind][system]) : "",
      );
    }
  });

  test("every line says in a few words what its symbol is, and no fixed number is left unexplained", () => {
    for (const system of systems) {
      const [, ...lines] = stepsOf(f, given(f, system), system);
      for (const [text, symbol] of lines) {
        expect(text).toMatch(/^[\p{Lu}"0°][^;:]+$/u);
        if (symbol !== "" && text !== "Fixed factor") expect(text.length).toBeLessThan(110);
      }
      const fixed = new Set(lines.filter(([text]) => text === "Fixed factor").map(([, number]) => number));
      for (const [, formula] of lines.filter(([, formula]) => formula.includes(" = ")))
        for (const [number] of formula.replace(/\u202f/g, "").matchAll(/(?<![\p{L}_\d.])\d[\d.]*(?![\d.])/gu))
          if (Number(number) > 4 || !Number.isInteger(Number(number)))
            expect([...fixed].map((one) => one.replace(/\u202f/g, ""))).toContain(number);
      expect(lines.some(([what]) => what === "Source")).toBe(true);
    }
  });
});
const unitsShown: Record<string, string> = { "1/min": "min⁻¹" };

/** The line of a symbol's value. */
const lineOf = (lines: readonly Line[], symbol: string): Line =>
  lines.findLast(([, formula]) => formula === symbol || formula.startsWith(`${symbol} = `))!;

describe("as a trainer would write it", () => {
  test("what each symbol is, the formula, the numbers put in, what they come to", () => {
    expect(steps("PRESSURE", 800, 20, 15).slice(1, 5)).toEqual([
      ["Radial load", "F", "800 N", 800, "N"],
      ["Bore of the bush", "d", "20 mm", 20, "mm"],
      ["Length of the bush", "L", "15 mm", 15, "mm"],
      [
        "Mean pressure",
        "p = F / (d·L)",
        "p = 800 N / (20 mm × 15 mm) = 2.667 MPa",
        800 / 300,
        "MPa",
      ],
    ]);
  });
  test("in inch units where they are asked for", () => {
    const pressure = steps("PRESSURE", "250 lbf", 0.75, 0.5, "inch");
    expect(pressure[1]).toEqual(["Radial load", "F", "250 lbf", 250, "lbf"]);
    expect(lineOf(pressure, "p")[2]).toBe("p = 250 lbf / (0.75 in × 0.5 in) = 666.7 psi");
    const speed = steps("SPEED", 0.75, 120, "inch");
    expect(lineOf(speed, "v").slice(1, 3)).toEqual([
      "v = π·d·n / 12",
      "v = π × 0.75 in × 120 min⁻¹ / 12 = 23.56 ft/min",
    ]);
    expect(speed.find(([text]) => text === "Fixed factor")).toEqual(["Fixed factor", "12", "12 in/ft", 12, ""]);
    expect(lineOf(steps("TORQUE", 250, 0.75, 0.2, "inch"), "T").slice(1, 3)).toEqual([
      "T = μ·F·d / 2",
      "T = 0.2 × 250 lbf × 0.75 in / 2 = 18.75 lbf·in",
    ]);
    const wear = steps("WEAR", 1e-8, 400, 250, "inch");
    expect(lineOf(wear, "h")[1]).toBe("h = 88·k·p·s");
    expect(wear.find(([text]) => text === "Fixed factor")![2]).toBe("5280 ft/mi ÷ 60 min/h");
    expect(lineOf(steps("LIFE", 1e-8, 400, 25, 0.02, "inch"), "t")[1]).toBe("t = h / (k·p·v)");
    const strain = lineOf(
      steps("RUNCLEARANCE", 0.0016, 0.75, 0.875, 0.002, 1.03, 176, 5e-5, 1.3e-5, 6.5e-6, null, null, "inch"),
      "ε",
    );
    expect(strain[2]).toMatch(/^ε = 5 × 10⁻⁵ °F⁻¹ × \(176 °F − 68 °F\)/);
  });
  test("converted in lines of their own where a formula has no plain form in them", () => {
    const heat = steps("HEAT", 180, 25, 0.2, "inch");
    expect(lineOf(heat, "F").slice(1)).toEqual([
      "F",
      "F = 180 lbf × 4.4482 N/lbf = 800.7 N",
      expect.closeTo(800.68, 2),
      "N",
    ]);
    expect(lineOf(heat, "Q")[2]).toBe("Q = 0.2 × 800.7 N × 0.127 m/s = 20.34 W");
    const run = steps("RUNTEMP", 180, 0.75, 0.5, 0.06, 25, 0.2, 77, 1.8, 312, 1, 1.76, "inch");
    expect(lineOf(run, "Ta")[2]).toBe("Ta = (77 °F − 32 °F) × 5 / 9 = 25 °C");
    const [before, after] = run.filter(([text]) => text.startsWith("Running temperature"));
    expect(before!.slice(1, 2).concat(before![4])).toEqual(["T = Ta + Q / G", "°C"]);
    expect(after!.slice(0, 2).concat(after![4])).toEqual([
      "Running temperature by friction heat, converted",
      "T",
      "°F",
    ]);
    expect(after![2]).toMatch(/^T = [\d.]+ °C × 9 \/ 5 \+ 32 °F = [\d.]+ °F$/);
  });
  test("powers, roots, π and small numbers in the trade's signs", () => {
    const washer = steps("WASHERPRESSURE", 500, 21, 40);
    expect(lineOf(washer, "A").slice(0, 3)).toEqual([
      "Area of the face",
      "A = π·(Do² − Di²) / 4",
      "A = π × ((40 mm)² − (21 mm)²) / 4 = 910.3 mm²",
    ]);
    expect(lineOf(steps("WEAR", 0.000002, 2.67, 400), "k")[2]).toBe("2 × 10⁻⁶ mm³/(N·m)");
    expect(lineOf(steps("CLEARANCE", 20, 20.021, 19.959, 19.98), "t")[1]).toBe(
      "t = √(((Bg − Bl) / 2)² + ((Sg − Sl) / 2)²)",
    );
    const press = steps("PRESSFIT", 20, 23, 40, 0.05, 2000, 0.4, 69000, 0.33);
    expect(lineOf(press, "Eh")[2]).toBe("69\u202f000 MPa");
    expect(lineOf(press, "σ")[1]).toBe("σ = −2·p·D² / (D² − d²)");
    expect(["ch", "cb"].map((symbol) => lineOf(press, symbol)[0])).toEqual([
      "Compliance of the housing",
      "Compliance of the bush",
    ]);
  });
  test("fixed numbers are told what they are made of", () => {
    const fixed = (lines: readonly Line[]) =>
      lines.filter(([text]) => text === "Fixed factor").map((line) => line.slice(1, 3));
    expect(fixed(steps("SPEED", 20, 120))).toEqual([["60\u202f000", "1000 mm/m × 60 s/min"]]);
    expect(fixed(steps("LIFE", 2e-6, 2.67, 0.1257, 0.5))).toEqual([["3600", "3600 s/h"]]);
    expect(fixed(steps("WEAR", 2e-6, 2.67, 400))).toEqual([["1000", "1000 m/km"]]);
    expect(fixed(steps("RUNCOST", 3, 4000))).toEqual([["1000", "per 1000 running hours"]]);
    expect(fixed(steps("FREETILT", 0.04, 20))).toEqual([["180", "degrees of π radians"]]);
  });
  test("numbers are shown with the digits that they need, and no more", () => {
    // 3.707 × 0.126 and 3.7065 × 0.1257 would be 0.467 and 0.4659: the factors get as many digits as the product needs
    expect(lineOf(steps("PVVALUE", 3.7065, 0.12566370614), "PV")[2]).toBe(
      "PV = 3.7065 MPa × 0.12566 m/s = 0.4658 MPa·m/s",
    );
    expect(lineOf(steps("LIMITS", 25, "H7"), "D_max")[2]).toBe("D_max = 25 mm + 0.021 mm = 25.021 mm");
    expect(lineOf(steps("LIMITS", 1, "H7", "inch"), "D_max")[2]).toBe("D_max = 1 in + 0.0008268 in = 1.0008268 in");
  });
  test("labels bear no advice, one temperature stands alone, a limit says where it comes from", () => {
    const life = steps("LIFE", 2e-6, 2.67, 0.1257, 0.5);
    expect(life.slice(1, 4).map(([text]) => text)).toEqual([
      "Specific wear rate",
      "Mean pressure",
      "Mean sliding speed",
    ]);
    const use = (temperature: unknown, ...units: unknown[]) =>
      steps("USE", "Demo Sorrel", 2, 0.04, temperature, ...(units.length > 0 ? [null, null, ...units] : []));
    expect(lineOf(use(40), "temperature")[2]).toBe("40 °C");
    expect(lineOf(use("-20 to 60"), "temperature")[2]).toBe("−20 to 60 °C");
    expect(lineOf(use(104, "inch"), "temperature")[2]).toBe("104 °F");
    expect(lineOf(use(40), "PV_a")[0]).toBe('Limit of PV, from "PV at temperature"');
    expect(lineOf(use(40), "v_a")[0]).toBe("Limit of speed");
    expect(lineOf(steps("LIMITS", 1, "+0.001/+0.002", "inch"), "zone")[2]).toBe("+0.002/+0.001 in");
  });
  test("a conversion of units shows its factor, that of temperatures its zero", () => {
    expect(lineOf(steps("UNIT", 250, "lbf", "N"), "x")[2]).toBe("x = 250 × 4.448 = 1112");
    expect(lineOf(steps("UNIT", 68, "°F", "°C"), "x").slice(1, 3)).toEqual([
      "x = (a − o)·k",
      "x = (68 − 32) × 0.5556 = 20",
    ]);
    expect(lineOf(steps("UNIT", 68, "°F", "K"), "q").slice(0, 3)).toEqual(["0 °C in K", "q", "273.15"]);
  });
  test("a function that takes any one unit shows none", () => {
    const lines = steps("CLOSEIN", 0.75, 0.875, 1.5, 290000, 0.4, 1e7, 0.33);
    expect(new Set(lines.slice(1).map((line) => line[4]))).toEqual(new Set([""]));
    expect(lineOf(lines, "Eh")[2]).toBe("1 × 10⁷");
  });
});

test("the name may be typed as in a cell", () => {
  for (const name of ["pressure", "BUSH.PRESSURE", "=BUSH.PRESSURE(", "bush_pressure"])
    expect(steps(name, 800, 20, 15)).toEqual(steps("PRESSURE", 800, 20, 15));
});

test("what is wrong with the arguments is what the function itself says", () => {
  expect(steps("PRESSURE", 800, -20, 15)).toEqual([[new CellError("#VALUE!", "bore must be above 0 mm, got -20")]]);
  expect(steps("PRESSURE", 800, 20)).toEqual([[new CellError("#VALUE!", "length is missing")]]);
});

test("a function without a formula, or none at all, is said", () => {
  const [[unknown]] = call(workedSteps, ["PRESURE", 1]) as [[CellError]];
  expect(unknown.code).toBe("#N/A");
  expect(unknown.message).toContain('calculation must be a function of this add-in, got "PRESURE"');
  const [[wordy]] = call(workedSteps, ["VERDICT", "POM", 1, 1, 20]) as [[CellError]];
  expect(wordy.message).toContain("VERDICT has no formula to work");
});

test("every scalar calculation but the look-ups shows its steps", () => {
  const scalar = catalogue.filter((f) => resultSymbols(f.spec.result).length === 1).map((f) => f.spec.id);
  const without = scalar.filter((id) => !worked.some(([name]) => name === id));
  expect(without).toEqual(["PRICEAT"]);
});
