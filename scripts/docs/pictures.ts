import { functions } from "../../src/core";
import { chart, curve, level } from "./chart";
import type { Chart } from "./chart";
import { dutyPictures } from "./dutyPictures";
import { fitPictures } from "./fitPictures";
import { heatPictures } from "./heatPictures";
import { rowChart } from "./rows";
import type { Rows } from "./rows";
import { wearPictures } from "./wearPictures";

/** Pictures of the models by the function on whose page they stand; every curve is computed by that function. */
export const pictures: Readonly<Record<string, () => Chart | Rows>> = {
  ...dutyPictures,
  ...fitPictures,
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
  MAXTILT: () => {
    const layer = { bore: 20, length: 15, wall: 1.5, clearance: 0.08, modulus: 2500, poisson: 0.4 };
    const most = (pressure: number) => (load: number) => functions.MAXTILT({ ...layer, load, pressure });
    const [least, greatest] = [100, 3000];
    return {
      id: "picture",
      title: "Tilt allowed against load",
      text: "A bush of 20 × 15 mm with a clearance of 0.08 mm: twice the load leaves about half of the tilt, and none is left where a true shaft already presses as hard. Under lighter loads than a line begins with, the shaft touches both ends of the bush before its edge reaches the pressure.",
      x: { label: "load, N", from: 0, to: greatest },
      y: { label: "tilt, °", from: 0, to: 0.35 },
      series: [
        { label: "edge pressure of 60 MPa allowed", look: "second", points: curve(most(60), 650, greatest) },
        { label: "40 MPa", look: "first", points: curve(most(40), 320, greatest) },
        { label: "25 MPa", look: "third", points: curve(most(25), least, greatest) },
        level("both ends touch an unloaded shaft", functions.FREETILT(layer), 0, greatest),
      ],
    };
  },
  SHAFTSLOPE: () => {
    const shaft = { load: 600, diameter: 16, modulus: 206000 };
    const near = (loadcase: "central" | "uniform") => (span: number) =>
      functions.SHAFTSLOPE({ ...shaft, loadcase, span })[0];
    const overhung = (end: 0 | 1) => (span: number) =>
      functions.SHAFTSLOPE({ ...shaft, loadcase: "overhung", span, position: 60 })[end];
    return {
      id: "picture",
      title: "Slope at the bushes against their distance",
      text: "600 N on a steel shaft of 16 mm: between the bushes the slope grows with the square of their distance, and spread out the load bends the shaft less. A load that hangs over by 60 mm slopes the nearer bush twice as much as the farther.",
      x: { label: "distance of the bushes, mm", from: 0, to: 400 },
      y: { label: "slope, °", from: 0, to: 0.6 },
      series: [
        { label: "load half way", look: "first", points: curve(near("central"), 10, 400) },
        { label: "load spread evenly", look: "third", points: curve(near("uniform"), 10, 400) },
        { label: "overhung, nearer bush", look: "second", points: curve(overhung(0), 10, 400) },
        { label: "overhung, farther bush", look: "limit", points: curve(overhung(1), 10, 400) },
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
};

/** A picture as a figure of its page. */
export const drawn = (picture: Chart | Rows): string => ("rows" in picture ? rowChart(picture) : chart(picture));

/** The picture of a function as a figure of its page; none where it has none. */
export const pictureOf = (id: string): string[] => {
  const of = pictures[id];
  return of ? [drawn(of())] : [];
};
