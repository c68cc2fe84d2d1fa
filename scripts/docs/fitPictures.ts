import { functions } from "../../src/core";
import { fitRows, NamedDuty, stepValues } from "../../src/core/duties";
import type { FitRow } from "../../src/core/duties";
import { fitStates } from "../../src/core/duties/fit/states";
import { isMissing } from "../../src/core/duties/judging/criterion";
import { readZone } from "../../src/core/fit/zones/zone";
import type { Grade } from "../../src/core/grades/model";
import { curve, level } from "./chart";
import type { Chart, Point } from "./chart";
import { exampleOf } from "./dutyPictures";
import { axisOf } from "./rows";
import type { Rows } from "./rows";

/** The pictures of a bush through its states. */
export const fitPictures: Readonly<Record<string, () => Chart | Rows>> = {
  RUNCLEARANCE: () => {
    const bush = {
      ...{ clearance: 0.05, bore: 20, outside: 23, interference: 0.06, closein: 1.04 },
      ...{ bushexpansion: 9e-5, housingexpansion: 1.17e-5, shaftexpansion: 1.17e-5 },
    };
    const at = (swelling: number) => (temperature: number) =>
      functions.RUNCLEARANCE({ ...bush, swelling, temperature });
    return {
      id: "picture",
      title: "Running clearance against temperature",
      text: "An invented bush of 20/23 mm in steel: while its housing grips it, heat closes the bore; colder it lets go of the housing, and the clearance falls with the bush's own shrinking. The most clearance stands where it lets go.",
      x: { label: "temperature, °C", from: -60, to: 100 },
      y: { label: "clearance, mm", from: -0.02, to: 0.08 },
      series: [
        { label: "dry", look: "first", points: curve(at(0), -60, 100, 160) },
        { label: "swollen by 0.3 %", look: "second", points: curve(at(0.003), -60, 100, 160) },
        level("0: the shaft binds", 0, -60, 100),
      ],
    };
  },
  GRIPLEFT: () => {
    const states = holdOf(0.6);
    const kept = holdOf(1);
    const at = (i: number, mm: number): Point => [i, mm * 1000];
    return {
      id: "picture",
      title: "Clearance and grip through a hot hold",
      text: "An invented bush of 20/24 mm pressed into steel, between −10 and 60 °C: hot it grips hardest and has the least clearance. Back in the cold after the hold, with 0.6 of its modulus kept, it is loose, and its bore has stayed small.",
      x: { label: "state", from: -0.4, to: states.length - 0.6, words: states.map(({ name }) => name) },
      y: { label: "µm", from: -60, to: 180 },
      series: [
        {
          label: "least clearance",
          look: "first",
          marked: "joined",
          points: states.map((s, i) => at(i, s.clearance.least)),
        },
        {
          label: "interference, 0.6 of the modulus kept",
          look: "second",
          marked: "joined",
          points: states.map((s, i) => at(i, s.grip)),
        },
        {
          label: "interference, nothing lost",
          look: "third",
          marked: "joined",
          points: kept.map((s, i) => at(i, s.grip)),
        },
        level("0: binds, or is loose", 0, -0.4, states.length - 0.6),
      ],
    };
  },
  FITTABLE: () => {
    const { duty, grade } = exampleOf("FITTABLE");
    const states = toldStates(duty, grade);
    const all = states.flatMap(({ clearance, grip }) => [clearance.least, clearance.greatest, grip]);
    return {
      id: "picture",
      title: "Clearance and interference through the states of a fit",
      text: `The example above: the least clearance stands in the state “${leastIn(states, ({ clearance }) => clearance.least)}”, the least interference in “${leastIn(states, ({ grip }) => grip)}”.`,
      x: axisOf("mm", all),
      rows: states.map(({ name, clearance, grip }) => ({
        name,
        spread: [clearance.least, clearance.greatest],
        mark: grip,
      })),
      legend: { spread: "clearance, worst case of all tolerances", mark: "least interference of bush and housing" },
      limit: { label: "0: the shaft binds, the bush is loose", at: 0 },
    };
  },
};

/** The clearance of each state of a duty's fit, as its criterion looks at it. */
export function clearancePicture(duty: NamedDuty, grade: Grade): Rows {
  const states = toldStates(duty, grade);
  const wanted = duty.corners[0]!.given.leastClearance ?? 0;
  const ends = states.flatMap(({ clearance }) => [clearance.least, clearance.greatest]);
  return {
    id: "picture",
    title: "Clearance through the states of the fit",
    text: `The duty above: the least clearance, which is judged, stands in the state “${leastIn(states, ({ clearance }) => clearance.least)}”; most assemblies lie well inside.`,
    x: axisOf("clearance, mm", [...ends, wanted]),
    rows: states.map(({ name, clearance, band }) => ({
      name,
      spread: [clearance.least, clearance.greatest],
      most: [band.least, band.greatest],
    })),
    legend: { spread: "worst case of all tolerances", most: "most assemblies, root sum square" },
    limit: { label: "least clearance wanted", at: wanted },
  };
}

/** The interference that is left in each state of a duty's fit. */
export function gripPicture(duty: NamedDuty, grade: Grade): Rows {
  const states = toldStates(duty, grade);
  return {
    id: "picture",
    title: "Interference through the states of the fit",
    text: `The duty above: the bush grips hardest in the state “${leastIn(states, ({ grip }) => -grip)}”; the least interference, which is judged, stands in “${leastIn(states, ({ grip }) => grip)}”.`,
    x: axisOf(
      "least interference, mm",
      states.map(({ grip }) => grip),
    ),
    rows: states.map(({ name, grip }) => ({ name, spread: [Math.min(0, grip), Math.max(0, grip)], mark: grip })),
    legend: { mark: "least interference of bush and housing" },
    limit: { label: "0: the bush is loose", at: 0 },
  };
}

/** The states as they are told, none that is only supposed. */
const toldStates = (duty: NamedDuty, grade: Grade): FitRow[] =>
  fitRows(duty, grade).filter(({ isSupposed }) => !isSupposed);

const leastIn = (states: readonly FitRow[], of: (state: FitRow) => number): string =>
  states.reduce((a, b) => (of(b) < of(a) ? b : a)).name;

/** States of an invented bush at rest through cold, heat and back. */
function holdOf(keptGrip: number) {
  const zone = (text: string) => readZone(text, "metric", "zone");
  const step = stepValues(
    {
      ...{ load: 300, bore: 20, length: 20, wall: 2, motion: "static", temperature: { low: -10, high: 60 } },
      ...{ shaft: "hardened steel", housing: "carbon steel", housingOutside: 40, assemblyMoisture: "dry", keptGrip },
      ...{ boreZone: zone("D10"), outsideZone: zone("+0.10/+0.15"), housingZone: zone("H7"), shaftZone: zone("h9") },
    },
    {},
    false,
    false,
  );
  const [duty] = new NamedDuty("", [step]).corners;
  const found = fitStates({ expansion: 1e-4, expansionStep: 0, compressiveModulus: 2500, poisson: 0.4 }, duty!);
  if (isMissing(found)) throw new Error(`the picture's bush lacks ${JSON.stringify(found)}`);
  return found.states;
}
