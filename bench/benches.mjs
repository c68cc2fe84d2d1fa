import { loadFunctions } from "../scripts/host.mjs";
import { best } from "./timing.mjs";

const { call } = loadFunctions();
const column = (rows, cell) => Array.from({ length: rows }, (_, i) => [cell(i)]);

/** What anyone would write by hand for the same table. */
function pressureByHand(load, bore, length) {
  const out = [];
  for (let i = 0; i < load.length; i++) out.push([load[i][0] / (bore[i][0] * length[i][0])]);
  return out;
}

function pressureAgainstLoop() {
  const rows = 10_000;
  const columns = [column(rows, (i) => 100 + i), column(rows, (i) => 10 + (i % 50)), column(rows, (i) => 8 + (i % 40))];
  const ours = best(() => call("PRESSURE", ...columns));
  const loop = best(() => pressureByHand(...columns));
  return { name: "PRESSURE over 10 000 rows, against a hand-written loop", ratio: ours / loop, limit: 10, note: `${ours.toFixed(2)} ms` };
}

export const benches = [pressureAgainstLoop];
