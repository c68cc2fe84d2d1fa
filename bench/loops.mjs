import { bestOfEach } from "./timing.mjs";

/** What anyone would write by hand: plain numbers from columns, a loop over their rows, no check of anything. */
const loops = {
  PRESSURE: {
    cells: (i) => [100 + i, 10 + (i % 50), 8 + (i % 40)],
    byHand(load, bore, length) {
      const out = [];
      for (let i = 0; i < load.length; i++) out.push([load[i][0] / (bore[i][0] * length[i][0])]);
      return out;
    },
  },
  SPEED: {
    cells: (i) => [10 + (i % 50), 1 + (i % 300)],
    byHand(bore, rpm) {
      const out = [];
      for (let i = 0; i < bore.length; i++) out.push([(Math.PI * bore[i][0] * rpm[i][0]) / 60_000]);
      return out;
    },
  },
  LIFE: {
    cells: (i) => [1e-6 + (i % 9) * 1e-7, 0.5 + (i % 40) / 10, 0.01 + (i % 50) / 100, 0.2 + (i % 5) / 10],
    byHand(wearRate, pressure, speed, allowance) {
      const out = [];
      for (let i = 0; i < wearRate.length; i++)
        out.push([allowance[i][0] / (wearRate[i][0] * pressure[i][0] * speed[i][0] * 3600)]);
      return out;
    },
  },
  RUNCLEARANCE: {
    cells: (i) => [0.04 + (i % 20) / 1000, 20, 23, 0.05, 1.03, -20 + (i % 100), 9e-5, 2.36e-5, 1.17e-5, (i % 8) / 1000],
    byHand(clearance, bore, outside, pressed, closeIn, temperature, bush, housing, shaft, swelling) {
      const out = [];
      for (let i = 0; i < clearance.length; i++) {
        const rise = temperature[i][0] - 20;
        const strain = bush[i][0] * rise + swelling[i][0];
        const left = pressed[i][0] + outside[i][0] * (strain - housing[i][0] * rise);
        const closed = closeIn[i][0] * (Math.max(0, left) - Math.max(0, pressed[i][0]));
        const grown = (bore[i][0] - clearance[i][0]) * shaft[i][0] * rise;
        out.push([clearance[i][0] + bore[i][0] * strain - closed - grown]);
      }
      return out;
    },
  },
};

/** One row of inputs of PRESSURE, and columns of them. */
export const pressureInputs = loops.PRESSURE.cells;
export const pressureColumns = (rows) => columnsOf(pressureInputs, rows);

const columnsOf = (cells, rows) =>
  cells(0).map((_, column) => Array.from({ length: rows }, (__, row) => [cells(row)[column]]));

/** Each of them by one call against the loop, whose answers must be the same. */
export const againstLoops = (call) =>
  Object.entries(loops).map(([id, { cells, byHand }]) => () => {
    const columns = columnsOf(cells, 10_000);
    checkSame(id, call(id, ...columns), byHand(...columns));
    const [ours, loop] = bestOfEach([() => call(id, ...columns), () => byHand(...columns)]);
    const note = `${ours.toFixed(2)} ms against ${loop.toFixed(2)} ms`;
    return { name: `${id} over 10 000 rows, against a hand-written loop`, ratio: ours / loop, limit: 5, note };
  });

/**
 * Time for ten times the rows over time for the rows. 100 000 rows no longer fit the processor's cache, and the loop too
 * takes far more than ten times as long for them; so the growth may be 11 or the loop's own, whichever is more.
 */
export const growthsBesideLoops = (call) =>
  ["PRESSURE", "RUNCLEARANCE"].flatMap((id) =>
    [1000, 10_000].map((rows) => () => {
      const { cells, byHand } = loops[id];
      const [few, many] = [rows, 10 * rows].map((count) => columnsOf(cells, count));
      const growthOf = (run) => {
        const [less, more] = bestOfEach([() => run(few), () => run(many)]);
        return more / less;
      };
      const ours = growthOf((columns) => call(id, ...columns));
      const loop = growthOf((columns) => byHand(...columns));
      const note = `the loop's: ${loop.toPrecision(3)}`;
      return { name: `${id}, ${10 * rows} rows over ${rows}`, ratio: ours, limit: Math.max(11, loop), note };
    }),
  );

function checkSame(id, ours, theirs) {
  const isSame = ([value], row) => Math.abs(value - theirs[row][0]) <= 1e-9 * Math.abs(theirs[row][0]);
  const different = ours.findIndex((answer, row) => !isSame(answer, row));
  if (different >= 0) throw new Error(`${id}, row ${different + 1}: ${ours[different]} against ${theirs[different]}`);
}
