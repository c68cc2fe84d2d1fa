import { all, create } from "mathjs";
import { catalogue, functions } from "../../../src/core";
import { betweenOf, isNumberArg, resultSymbols } from "../../../src/core/formula";
import type { Arg, Formula } from "../../../src/core/formula";
import { isDimensional, kinds } from "../../../src/core/kinds";
import type { System } from "../../../src/core/kinds";
import { inchUnit } from "../../../src/core/teach/dimension";
import { unitText } from "../../../src/core/teach/notation";
import { call, CellError, inInch } from "../../support";

const math = create(all!);
const worked = catalogue.filter((f) => f.spec.working).map((f) => [f.spec.id, f] as const);
type Line = [text: string, formula: string, numbers: string, result: unknown, unit: string];
const steps = (id: string, ...given: unknown[]) => call(functions.STEPS, [id, ...given]) as Line[];

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

const betweenUnits = (f: Formula): string[] =>
  typeof f.spec.between === "function" ? [] : Object.values(betweenOf(f, {})).map(({ unit }) => unit);

/** Every unit that may stand behind a number, the longest first. */
const unitNames = [
  ...new Set([
    ...Object.values(kinds).flatMap(({ metric, inch }) => [metric, inch, `${metric}/${inch}`, `${inch}/${metric}`]),
    ...worked.flatMap(([, f]) => betweenUnits(f).flatMap((unit) => [unit, inchUnit(unit)])),
  ]),
]
  .map(unitText)
  .filter((unit) => unit !== "" && !unit.startsWith("/"))
  .sort((a, b) => b.length - a.length);
const behindNumber = new RegExp(
  `(?<=[\\d⁰-⁹]) (${unitNames.map((unit) => unit.replace(/[().]/g, "\\$&")).join("|")})(?![\\p{L}·/⁻²³⁴])`,
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

/** What has a sign of its own on paper; only an exponent that is an expression has none. */
const notTrade = /\*|sqrt|pi\b|\^(?!\([^()]* [/+−] )/;

const calculations = (lines: readonly Line[]): Line[] => lines.filter(([, , numbers]) => / = .* = /.test(numbers));

const systemsOf = (f: Formula): System[] => (f.spec.units ? ["metric", "inch"] : ["metric"]);

/** The numbers shown in each line come to the number shown behind them, in the signs of the trade. */
function checkNumbers(lines: readonly Line[]): void {
  for (const [, formula, numbers, , unit] of lines) {
    const [symbol, expression, result] = numbers.split(" = ") as [string, string, string];
    expect(formula.split(" = ")[0]).toBe(symbol);
    expect(unit === "°" ? result.endsWith("°") : unit === "" || result.endsWith(` ${unit}`)).toBe(true);
    const { value, half } = shownNumber(result);
    const worth = math.evaluate(plain(expression), { ln: Math.log }) as number;
    if (!(Math.abs(worth - value) <= half * (1 + 1e-9))) throw new Error(`${numbers}: comes to ${worth}`);
    // each formula evaluates to the same with the symbols' own values: see test/core/working.test.ts
    if (formula.includes("=")) expect(formula).not.toMatch(notTrade);
  }
}

/** Every line says in a few words what its symbol is, and what each fixed number is stands behind it. */
function checkWords([, ...lines]: readonly Line[]): void {
  for (const [text, symbol] of lines) {
    expect(text).toMatch(/^[\p{Lu}"0°][^;:]+$/u);
    if (symbol !== "" && text !== "Fixed factor") expect(text.length).toBeLessThan(110);
  }
  const fixed = lines.filter(([text]) => text === "Fixed factor").map(([, number]) => number.replace(/\u202f/g, ""));
  for (const [, formula] of lines.filter(([, formula]) => formula.includes(" = ")))
    for (const [number] of formula.replace(/\u202f/g, "").matchAll(/(?<![\p{L}_\d.])\d[\d.]*(?![\d.])/gu))
      if (Number(number) > 4 || !Number.isInteger(Number(number))) expect(fixed).toContain(number);
  expect(lines.some(([what]) => what === "Source")).toBe(true);
}

/** The example with each of its choices, with nothing where it may be left out, with 0 where that is allowed. */
function variants(f: Formula, typed: readonly unknown[]): unknown[][] {
  const others = (arg: Arg): readonly unknown[] => [
    ...(arg.kind === "choice" ? arg.choices : []),
    ...(arg.optional ? [null] : []),
    ...("from" in arg && arg.from === 0 ? [0] : []),
  ];
  const room = args(f).map((_, i): unknown => typed[i] ?? null);
  return args(f).flatMap((arg, i) => others(arg).map((value) => room.with(i, value)));
}

/** The last line of each result ends in what the function itself answers. */
function checkAnswers(f: Formula, typed: readonly unknown[], system: System, lines: readonly Line[]): void {
  const answers = call(f, typed, f.spec.units ? system : undefined)[0]!;
  for (const { symbol, kind, at } of resultSymbols(f.spec.result)) {
    const last = lineOf(lines, symbol);
    expect(last[3]).toEqual(answers[at]);
    expect(last[4]).toBe(
      f.spec.units || !isDimensional(kind) ? (unitsShown[kinds[kind][system]] ?? kinds[kind][system]) : "",
    );
  }
}

describe.each(worked)("STEPS of %s", (_, f) => {
  const systems = systemsOf(f);
  const each = systems.flatMap((system) => [1, 1.0007, 0.913].map((by) => [system, by] as const));

  test.each(each)("%s, numbers × %d: the numbers shown come to the number shown behind them", (system, by) => {
    const lines = calculations(stepsOf(f, given(f, system, by), system));
    expect(lines.length).toBeGreaterThan(0);
    checkNumbers(lines);
  });

  test.each(each)("%s, numbers × %d: the last results are the function's own answers", (system, by) => {
    const typed = given(f, system, by);
    const lines = calculations(stepsOf(f, typed, system));
    checkAnswers(f, typed, system, lines);
  });

  test("every line says in a few words what its symbol is, and no fixed number is left unexplained", () => {
    for (const system of systems) checkWords(stepsOf(f, given(f, system), system));
  });

  test.each(systems)("%s: the same for each choice, each argument left out and each that may be 0", (system) => {
    for (const typed of variants(f, given(f, system))) {
      const lines = stepsOf(f, typed, system);
      if ((lines[0]![0] as unknown) instanceof CellError) continue;
      checkNumbers(calculations(lines));
      checkAnswers(f, typed, system, lines);
      checkWords(lines);
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
      ["Mean pressure", "p = F / (d·L)", "p = 800 N / (20 mm × 15 mm) = 2.667 MPa", 800 / 300, "MPa"],
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
    const wear = steps("WEAR", 1e-8, 400, 250, null, null, "inch");
    expect(lineOf(wear, "h")[1]).toBe("h = 88·k·p·s");
    expect(wear.find(([text]) => text === "Fixed factor")![2]).toBe("5280 ft/mi ÷ 60 min/h");
    expect(lineOf(steps("LIFE", 1e-8, 400, 25, 0.02, null, null, "inch"), "t")[1]).toBe("t = h / (k·p·v)");
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
    const run = steps("RUNTEMP", 90, 0.75, 0.5, 0.06, 20, 0.15, 77, 0.25, 45, 2, 2, 0.09, null, null, "inch");
    expect(lineOf(run, "Ta")[2]).toBe("Ta = (77 °F − 32 °F) × 5 / 9 = 25 °C");
    expect(lineOf(run, "Gh").slice(2)).toEqual(["0.09 W/K", 0.09, "W/K"]);
    const [before, after] = run.filter(([text]) => text.startsWith("Least temperature"));
    expect(before!.slice(1, 2).concat(before![4])).toEqual(["T_low = Ta + Q / G_high", "°C"]);
    expect(after!.slice(0, 2).concat(after![4])).toEqual(["Least temperature, converted", "T_low", "°F"]);
    expect(after![2]).toMatch(/^T_low = [\d.]+ °C × 9 \/ 5 \+ 32 °F = [\d.]+ °F$/);
    expect(lineOf(run, "T_high")[2]).toBe(after![2].replace("T_low", "T_high"));
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
    const [text, , numbers] = use(40).find(([, symbol]) => symbol.startsWith("PV_a = "))!;
    expect(text).toBe('Limit of PV, between two points of "PV at temperature"');
    // 0.12 at 23 °C, 0.05 at 60 °C
    expect(numbers).toContain("(40 °C − 23 °C) / (60 °C − 23 °C)");
    expect(lineOf(steps("LIMITS", 1, "+0.001/+0.002", "inch"), "zone")[2]).toBe("+0.002/+0.001 in");
  });
  test("USE shows the criterion that governs, from the duty to the limit and where that comes from", () => {
    const limits = { "running pressure limit [MPa]": 20, "static pressure limit [MPa]": 60, "PV limit [MPa·m/s]": 0.1 };
    const more = { "speed limit turning [m/s]": 1, "speed limit swinging [m/s]": 0.5, "highest temperature [°C]": 123 };
    const plain = { ...limits, ...more, "lowest temperature [°C]": -40 };
    const grades = [
      ["grade", ...Object.keys(plain), "pressure at temperature [°C: MPa]"],
      ["Steady", ...Object.values(plain), null],
      ["Softening", ...Object.values(plain), "20: 18; 120: 4"],
    ];
    const use = (grade: string, p: number, v: number, motion: string, units: System, temperature = 63) => {
      const given =
        units === "metric" ? [p, v, temperature] : [p * 145.03773773, v * 196.8503937, temperature * 1.8 + 32];
      const lines = steps("USE", grade, ...given, motion, grades, units);
      checkNumbers(calculations(lines));
      checkWords(lines);
      const rows = lines.filter(([, symbol]) => /^(p_a|v_a|PV_a|V|Z|u)\b/.test(symbol));
      expect(new Set(rows.map(([, , , , unit]) => unit)).size).toBe(2);
      return rows.map(([text, formula, , , unit]) => [text, formula, unit].filter(Boolean).join(" | "));
    };
    const lines = (formula: string, unit: string, limit: string) => [
      `What the duty asks | V = ${formula} | ${unit}`,
      `What the grade bears | Z = ${limit} | ${unit}`,
      "Governing use | u = V / Z",
    ];
    for (const [system, pressure, speed, pv] of [
      ["metric", "MPa", "m/s", "MPa·m/s"],
      ["inch", "psi", "ft/min", "psi·ft/min"],
    ] as const) {
      const [asked, ...rest] = lines("p·v", pv, "PV_a / S");
      const derated = `Limit of PV, derated for the surroundings | PV_a = PV_ref·(T_max − T) / (T_max − T_ref) | ${pv}`;
      expect(use("Steady", 1, 0.05, "turning", system)).toEqual([asked, derated, ...rest]);
      expect(use("Steady", 1, 0.05, "turning", system, 20)).toEqual([`Limit of PV | PV_a | ${pv}`, asked, ...rest]);
      const pressed = lines("p·K", pressure, "p_a / S");
      expect(use("Steady", 10, 0.0001, "turning", system)).toEqual([
        `Limit of running pressure | p_a | ${pressure}`,
        ...pressed,
      ]);
      const read = "p_a = y_1 + (y_2 − y_1)·(T_c − T_1) / (T_2 − T_1)";
      for (const [v, motion, what] of [
        [0.0001, "turning", "running pressure"],
        [0, "static", "static pressure"],
      ] as const)
        expect(use("Softening", 2, v, motion, system)).toEqual([
          pressed[0],
          `Limit of ${what}, between two points of "pressure at temperature" | ${read} | ${pressure}`,
          ...pressed.slice(1),
        ]);
      expect(use("Steady", 0.001, 0.4, "swinging", system)).toEqual([
        `Limit of swinging speed | v_a | ${speed}`,
        ...lines("v", speed, "v_a"),
      ]);
    }
  });
  test("an exponent is raised where it has small signs, else written as in a cell", () => {
    const derated = (m: number) => lineOf(steps("DERATEDPV", 0.12, 90, 60, null, m), "PV").slice(1, 3);
    expect(derated(2)).toEqual(["PV = PV_ref·xᵐ", "PV = 0.12 MPa·m/s × 0.4478² = 0.02406 MPa·m/s"]);
    expect(derated(1.25)[1]).toBe("PV = 0.12 MPa·m/s × 0.44776^1.25 = 0.04395 MPa·m/s");
    expect(lineOf(steps("BORETEMP", 0.06, 0.12, 90, 40, null, 1.25), "T").slice(1, 3)).toEqual([
      "T = Ta + ΔT_ref·(PV / PV_ref)^(1 / m)",
      "T = 40 °C + 67 K × (0.06 MPa·m/s / 0.12 MPa·m/s)^(1 / 1.25) = 78.48 °C",
    ]);
    expect(lineOf(steps("PEAKRISE", [[2], [10]], [[1], [2]], 8), "ΔT")[1]).toContain("exp(−t1 / τ)");
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

test("arguments beyond those of the calculation are refused, blanks there are none", () => {
  const surplus = new CellError("#VALUE!", "argument 5 must be empty, as PRESSURE takes 4, got 7");
  expect(steps("PRESSURE", 800, 20, 15, "metric", 7)).toEqual([[surplus]]);
  expect(steps("PRESSURE", 800, 20, 15, null, null, 7)).toEqual([
    [new CellError("#VALUE!", "argument 6 must be empty, as PRESSURE takes 4, got 7")],
  ]);
  expect(steps("PRESSURE", 800, 20, 15, "metric", "", null)).toEqual(steps("PRESSURE", 800, 20, 15));
});

test("a function without a formula, or none at all, is said", () => {
  const [[unknown]] = call(functions.STEPS, ["PRESURE", 1]) as [[CellError]];
  expect(unknown.code).toBe("#N/A");
  expect(unknown.message).toContain('calculation must be a function of this add-in, got "PRESURE"');
  const [[wordy]] = call(functions.STEPS, ["VERDICT", "POM copolymer", 1, 1, 20]) as [[CellError]];
  expect(wordy.message).toContain("VERDICT has no formula to work");
});

test("every scalar calculation but the look-ups shows its steps", () => {
  const scalar = catalogue.filter((f) => resultSymbols(f.spec.result).length === 1).map((f) => f.spec.id);
  const without = scalar.filter((id) => !worked.some(([name]) => name === id));
  expect(without).toEqual(["PRICEAT"]);
});
