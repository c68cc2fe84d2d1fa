import { loadFunctions } from "../scripts/lib/host.mjs";
import { readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { all, create } from "mathjs";
import { againstLoops, growthsBesideLoops, pressureColumns } from "./loops.mjs";
import { bandedDuty, column, dutyHeading, dutyRow, fitted, fullDuties, ownGrades, quoteTable } from "./tables.mjs";
import { best, bestOfEach } from "./timing.mjs";

const { call } = loadFunctions();
/** Time for ten times the rows over time for the rows. */
function growth(name, [few, many], run) {
  return () => {
    const [less, more] = bestOfEach([few, many].map(run), { rounds: 20 });
    const note = `${less.toPrecision(3)} ms, ${more.toPrecision(3)} ms`;
    return { name: `${name}, ${many} rows over ${few}`, ratio: more / less, limit: 11, note };
  };
}

function bareAnswer(cells) {
  const out = [];
  for (let i = 0; i < cells.length; i++) out.push([cells[i][0] * 1.5]);
  return out;
}

const grades = ownGrades(500);
const verdicts = (n) => {
  const columns = [
    column(n, (i) => `own ${1 + (i % 500)}`),
    column(n, (i) => 1 + (i % 30)),
    column(n, (i) => (i % 10) / 100),
  ];
  return () => call("VERDICT", ...columns, 40, "turning", grades);
};
const quotes = (n) => {
  const table = quoteTable(n);
  const duty = [
    ["load", "bore", "length", "rpm", "temperature"],
    [150, 20, 15, 96, 40],
  ];
  return () => call("QUOTES", table, duty, null, grades);
};
const growths = [
  growth("VERDICT with 500 own grades", [1000, 10_000], verdicts),
  growth("VERDICT with 500 own grades", [10_000, 100_000], verdicts),
  growth("QUOTES with 500 own grades", [500, 5000], quotes),
];

/** Cost of a verdict beside that of a pressure on as many rows: 33 before verdicts were made of criteria, and half as much again is allowed. */
function verdictsBesidePressures() {
  const rows = 10_000;
  const columns = pressureColumns(rows);
  const [verdict, pressure] = bestOfEach([verdicts(rows), () => call("PRESSURE", ...columns)]);
  const note = `${verdict.toPrecision(3)} ms, ${pressure.toPrecision(3)} ms`;
  return { name: "VERDICT over 10 000 rows, against PRESSURE", ratio: verdict / pressure, limit: 49.5, note };
}

/** Described duties with a chosen grade, against VERDICT on their pressures and speeds. */
function dutiesBesideVerdicts() {
  const rows = 10_000;
  const named = Array.from({ length: rows }, (_, i) => `own ${1 + (i % 500)}`);
  const table = [dutyHeading, ...named.map((grade, i) => dutyRow(i, grade))];
  const given = table
    .slice(1)
    .map(([, , load, bore, length, rpm]) => [load / (bore * length), (Math.PI * bore * rpm) / 60_000]);
  const columns = [named.map((grade) => [grade]), given.map(([p]) => [p]), given.map(([, v]) => [v])];
  const [duties, verdict] = bestOfEach([
    () => call("DUTIES", table, grades),
    () => call("VERDICT", ...columns, 40, "turning", grades),
  ]);
  const note = `${duties.toPrecision(3)} ms, ${verdict.toPrecision(3)} ms`;
  return { name: "DUTIES over 10 000 rows, against VERDICT on the same", ratio: duties / verdict, limit: 12, note };
}

/** The best of a hundred grades for each of a hundred duties. */
function bestOfHundred() {
  const table = [dutyHeading, ...Array.from({ length: 100 }, (_, i) => dutyRow(i, ""))];
  const hundred = grades.slice(0, 101);
  const ms = best(() => call("DUTIES", table, hundred));
  return { name: "100 duties against 100 grades, in ms", ratio: ms, limit: 100 };
}

const ofOneFit = [
  ["DUTYROOM of one duty with its fit, in ms", "DUTYROOM", fitted(fullDuties(1))],
  ["DUTYBAND of one duty with its fit and six bands, in ms", "DUTYBAND", fitted(bandedDuty)],
].map(([name, id, table]) => () => ({ name, ratio: best(() => call(id, table)), limit: 50 }));

/** A function that looks at one duty from many sides, against DUTIES over as many rows as it may cost. */
function besideDuties(what, rows, run) {
  return () => {
    const table = fullDuties(rows);
    const [ours, duties] = bestOfEach([run, () => call("DUTIES", table)]);
    const note = `${ours.toPrecision(3)} ms, ${duties.toPrecision(3)} ms`;
    return { name: `${what}, against DUTIES over ${rows} rows`, ratio: ours / duties, limit: 1, note };
  };
}
const loads = column(1000, (i) => 10 + i);
const sidesOfOneDuty = [
  besideDuties("DUTYROOM of ten numbers", 1000, () => call("DUTYROOM", fullDuties(1))),
  besideDuties("DUTYROOM of ten numbers, six of them bands", 5000, () => call("DUTYROOM", bandedDuty)),
  besideDuties("DUTYSWEEP of 1000 values", 1000, () => call("DUTYSWEEP", fullDuties(1), "load", loads)),
  besideDuties("DUTYBAND of six bands", 2000, () => call("DUTYBAND", bandedDuty)),
];

/** What a sheet of unit-aware cells would do: every cell a quantity of its own, in the whole of mathjs. */
function pressureAgainstNaiveUnits() {
  const math = create(all);
  const rows = 1000;
  const columns = pressureColumns(rows);
  const naive = () =>
    columns[0].map(([load], i) =>
      math.evaluate(`${load} N / (${columns[1][i][0]} mm * ${columns[2][i][0]} mm)`).toNumber("MPa"),
    );
  const ours = best(() => call("PRESSURE", ...columns));
  const theirs = best(naive);
  return {
    name: "PRESSURE over 1000 rows, against one unit expression a cell in mathjs",
    ratio: ours / theirs,
    limit: 0.01,
    note: `${(theirs / ours).toFixed(0)} times faster`,
  };
}

function textAgainstNumbers() {
  const rows = 10_000;
  const [plain, bore, length] = pressureColumns(rows);
  const typed = plain.map(([load]) => [`${load} lbf`]);
  const [text, numbers] = bestOfEach([typed, plain].map((load) => () => call("PRESSURE", load, bore, length)));
  return { name: "a column typed with its unit, against plain numbers", ratio: text / numbers, limit: 10 };
}

/** From nothing to the first answer. */
function startUp() {
  const start = performance.now();
  loadFunctions().call("PRESSURE", 800, 20, 15);
  const ms = performance.now() - start;
  return { name: "load functions.js and answer once, in ms", ratio: ms, limit: 500 };
}

const dist = new URL("../dist/", import.meta.url);
const builtAs = (file) => readFileSync(new URL(file, dist), "utf8");
const sizeOf = (...files) => files.reduce((sum, file) => sum + gzipSync(builtAs(file), { level: 9 }).length, 0) / 1000;

const sizeOfFunctions = () => ({ name: "functions.js gzipped, in kB", ratio: sizeOf("functions.js"), limit: 110 });

/** What the pane's page loads before it shows something: its script with the modules that this imports at once, and theirs. */
function sizeOfPane() {
  const files = new Set(["taskpane.js"]);
  for (const file of files)
    for (const [, name] of builtAs(file).matchAll(/(?:from|import)"\.\/([\w.]+\.js)"/g)) files.add(name);
  return { name: "taskpane.js and what it imports at once gzipped, in kB", ratio: sizeOf(...files), limit: 250 };
}

/** Heap that an answer of 100 000 rows holds, against that of a bare loop. */
function memory() {
  const rows = 100_000;
  const columns = pressureColumns(rows);
  call("PRESSURE", ...columns);
  const heap = () => (globalThis.gc?.(), process.memoryUsage().heapUsed / 1e6);
  const before = heap();
  const answer = call("PRESSURE", ...columns);
  const after = heap();
  const bare = bareAnswer(columns[0]);
  const loop = heap() - after;
  return {
    name: "memory held by an answer of 100 000 rows, against a bare loop's",
    ratio: (after - before) / loop,
    limit: 3,
    note: `${(after - before).toFixed(1)} MB for ${answer.length + bare.length - rows} rows`,
  };
}

export const benches = [
  ...againstLoops(call),
  pressureAgainstNaiveUnits,
  textAgainstNumbers,
  memory,
  ...growthsBesideLoops(call),
  ...growths,
  verdictsBesidePressures,
  dutiesBesideVerdicts,
  bestOfHundred,
  ...sidesOfOneDuty,
  ...ofOneFit,
  startUp,
  sizeOfFunctions,
  sizeOfPane,
];
