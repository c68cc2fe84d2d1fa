import { functions } from "../../src/core";
import { NamedDuty, stepValues } from "../../src/core/duties";
import { fitStates } from "../../src/core/duties/fit/states";
import { isMissing } from "../../src/core/duties/judging/criterion";
import { readZone } from "../../src/core/fit/zones/zone";
import { chart, curve, level } from "./chart";
import type { Chart, Point } from "./chart";
import { heatPictures } from "./heatPictures";
import { wearPictures } from "./wearPictures";

/** Pictures of the models by the function on whose page they stand; every curve is computed by that function. */
export const pictures: Readonly<Record<string, () => Chart>> = {
  ...heatPictures,
  ...wearPictures,
  PEAKPRESSURE: () => {
    const bush = { load: 3000, bore: 20, length: 20, wall: 1.5, modulus: 2500 };
    const peak = (poisson: number) => (clearance: number) =>
      functions.PEAKPRESSURE({ ...bush, poisson, clearance })[0]!;
    const mean = functions.PRESSURE(bush);
    return {
      id: "picture",
      title: "Peak pressure against clearance",
      text: "3000 N on a bush of 20 × 20 mm with a wall of 1.5 mm: without clearance the peak is 4/π of the mean, with it several times as much, and the more the nearer Poisson's ratio comes to 0.5.",
      x: { label: "clearance, mm", from: 0, to: 0.3 },
      y: { label: "pressure, MPa", from: 0, to: 50 },
      series: [
        { label: "ν = 0.45", look: "second", points: curve(peak(0.45), 0, 0.3) },
        { label: "ν = 0.4", look: "first", points: curve(peak(0.4), 0, 0.3) },
        { label: "ν = 0.3", look: "third", points: curve(peak(0.3), 0, 0.3) },
        level("mean pressure", mean, 0, 0.3),
      ],
    };
  },
  EDGEPRESSURE: () => {
    const layer = { load: 600, bore: 20, length: 15, wall: 1.5, clearance: 0.08, modulus: 2500, poisson: 0.4 };
    const edge = (figure: 0 | 1) => (tilt: number) => functions.EDGEPRESSURE({ ...layer, tilt })[figure] as number;
    const [mean, touching] = [functions.PRESSURE(layer), functions.FREETILT(layer)];
    return {
      id: "picture",
      title: "Edge pressure against the tilt of the shaft",
      text: "600 N on a bush of 20 × 15 mm with a clearance of 0.08 mm, up to the free tilt, where both ends touch: the edge carries many times the mean long before. The truth lies near the lower line or between the two.",
      x: { label: "tilt, °", from: 0, to: 0.32 },
      y: { label: "pressure, MPa", from: 0, to: 60 },
      series: [
        { label: "upper edge pressure", look: "first", points: curve(edge(1), 0, touching) },
        { label: "lower edge pressure", look: "second", points: curve(edge(0), 0, touching) },
        level("mean pressure", mean, 0, 0.32),
      ],
    };
  },
  WEAR: () => {
    const worn = (from: "bush" | "flat", clearance: number) => (distance: number) =>
      functions.WEAR({ wearrate: 2e-6, pressure: 2.5, distance, from, clearance });
    return {
      id: "picture",
      title: "Wear depth against sliding distance",
      text: "2.5 MPa at a rate of 2·10⁻⁶ mm³/(N·m): a rate from flat tests put in as if it came from bushes gives the lowest line; in a bore the load gathers at the bottom, the more the greater the clearance, until wear has shaped it.",
      x: { label: "sliding distance, km", from: 0, to: 20 },
      y: { label: "wear depth, mm", from: 0, to: 0.2 },
      series: [
        { label: "flat, clearance 0.4 mm", look: "second", points: curve(worn("flat", 0.4), 0, 20) },
        { label: "flat, clearance 0.08 mm", look: "first", points: curve(worn("flat", 0.08), 0, 20) },
        { label: "flat, no clearance", look: "third", points: curve(worn("flat", 0), 0, 20) },
        { label: "taken for a rate of bushes", look: "limit", points: curve(worn("bush", 0), 0, 20) },
      ],
    };
  },
  LIFE: () => {
    const life = (from: "bush" | "flat", clearance: number) => (allowance: number) =>
      functions.LIFE({ wearrate: 2e-6, pressure: 2.5, speed: 0.1, from, clearance, allowance });
    return {
      id: "picture",
      title: "Life against wear allowance",
      text: "2.5 MPa at 0.1 m/s and a rate of 2·10⁻⁶ mm³/(N·m): the same rate lasts the longest if it is taken for one of bushes, and the shortest in a bore with much clearance.",
      x: { label: "wear allowance, mm", from: 0, to: 0.3 },
      y: { label: "life, h", from: 0, to: 180 },
      series: [
        { label: "taken for a rate of bushes", look: "limit", points: curve(life("bush", 0), 0.001, 0.3) },
        { label: "flat, no clearance", look: "third", points: curve(life("flat", 0), 0.001, 0.3) },
        { label: "flat, clearance 0.08 mm", look: "first", points: curve(life("flat", 0.08), 0.001, 0.3) },
        { label: "flat, clearance 0.4 mm", look: "second", points: curve(life("flat", 0.4), 0.001, 0.3) },
      ],
    };
  },
  FLANGEDBUSH: () => {
    const bush = { radial: 600, bore: 20, length: 20, inner: 21, outer: 30, rpm: 60, friction: 0.15 };
    const pv = (column: number) => (axial: number) => functions.FLANGEDBUSH({ ...bush, axial })[column]!;
    return {
      id: "picture",
      title: "PV of a flanged bush against its axial load",
      text: "600 N radial load on 20 × 20 mm, a flange of 21 to 30 mm, 60 turns a minute: the PV to compare adds the flange's heat to that of the sleeve.",
      x: { label: "axial load, N", from: 0, to: 600 },
      y: { label: "PV, MPa·m/s", from: 0, to: 0.25 },
      series: [
        { label: "PV to compare with the limit", look: "first", points: curve(pv(4), 0, 600) },
        { label: "sleeve alone", look: "third", points: curve(pv(2), 0, 600) },
        { label: "flange alone", look: "second", points: curve(pv(3), 0, 600) },
      ],
    };
  },
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
          marked: true,
          points: states.map((s, i) => at(i, s.clearance.least)),
        },
        {
          label: "interference, 0.6 of the modulus kept",
          look: "second",
          marked: true,
          points: states.map((s, i) => at(i, s.grip)),
        },
        { label: "interference, nothing lost", look: "third", marked: true, points: kept.map((s, i) => at(i, s.grip)) },
        level("0: binds, or is loose", 0, -0.4, states.length - 0.6),
      ],
    };
  },
};

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

/** The picture of a function as a figure of its page; none where it has none. */
export const pictureOf = (id: string): string[] => {
  const of = pictures[id];
  return of ? [chart(of())] : [];
};
