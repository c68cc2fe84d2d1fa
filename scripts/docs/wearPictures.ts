import { functions } from "../../src/core";
import { curve, level } from "./chart";
import type { Chart } from "./chart";

const bush = { load: 750, bore: 20, length: 15 };
const pressure = functions.PRESSURE(bush);
const rate = 2e-6;

/** The pictures of a bore that wears in. */
export const wearPictures: Readonly<Record<string, () => Chart>> = {
  WORNPEAK: () => {
    const peak = (clearance: number) => (sinking: number) => functions.WORNPEAK({ pressure, sinking, clearance })[0]!;
    const least = (4 / Math.PI) * pressure;
    return {
      id: "picture",
      title: "Peak pressure against how far the shaft has sunk in",
      text: `${pressure} MPa in the mean: the bore wears where it touches, so that ever more of it bears, and the peak falls to 4/π of the mean; the greater the clearance, the longer that takes. Before any wear the peak is that of PEAKPRESSURE.`,
      x: { label: "depth by which the shaft has sunk in, mm", from: 0, to: 0.2 },
      y: { label: "peak pressure, MPa", from: 0, to: 20 },
      series: [
        { label: "clearance 0.3 mm", look: "second", points: curve(peak(0.3), 0.002, 0.2) },
        { label: "clearance 0.08 mm", look: "first", points: curve(peak(0.08), 0.0005, 0.2, 200) },
        level("4/π of the mean", least, 0, 0.2),
      ],
    };
  },
  RUNNINGIN: () => {
    const worn = (over?: number) => (distance: number) =>
      functions.RUNNINGIN({ wearrate: rate, pressure, distance, depth: 0.02, ...(over === undefined ? {} : { over }) });
    const steady = (distance: number) => functions.WEAR({ wearrate: rate, pressure, distance, from: "bush" });
    return {
      id: "picture",
      title: "Wear depth while a new face runs in",
      text: `${pressure} MPa at a rate of 2·10⁻⁶ mm³/(N·m), and 0.02 mm that running in takes: without the distance of running in the whole of it counts from the start, the safe side; WEAR alone leaves it out.`,
      x: { label: "sliding distance, km", from: 0, to: 4 },
      y: { label: "wear depth, mm", from: 0, to: 0.05 },
      series: [
        { label: "the whole at once", look: "second", points: curve(worn(), 0, 4) },
        { label: "running in over 0.6 km", look: "first", points: curve(worn(0.6), 0, 4) },
        { label: "without running in", look: "limit", points: curve(steady, 0, 4) },
      ],
    };
  },
  BEDDING: () => {
    const bedded = (tilt: number) => (distance: number) =>
      functions.BEDDING({ wearrate: rate, pressure, length: bush.length, tilt, distance })[1]!;
    return {
      id: "picture",
      title: "Pressure on the bedded part against sliding distance",
      text: `${pressure} MPa in the mean on a bush of 15 mm: a tilted shaft bears on its edge at first and wears its way along the length, until the mean stands on all of it; twice the tilt takes twice the distance.`,
      x: { label: "sliding distance, km", from: 0, to: 4 },
      y: { label: "pressure on the bedded part, MPa", from: 0, to: 20 },
      series: [
        { label: "tilt 0.2°", look: "second", points: curve(bedded(0.2), 0.1, 4) },
        { label: "tilt 0.1°", look: "first", points: curve(bedded(0.1), 0.05, 4) },
        level("mean pressure", pressure, 0, 4),
      ],
    };
  },
};
