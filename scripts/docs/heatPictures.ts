import { functions } from "../../src/core";
import { curve, level } from "./chart";
import type { Chart, Point } from "./chart";
import { afterStep } from "../../src/core/heat/firstOrder";

/** The pictures of the functions of heat. */
export const heatPictures: Readonly<Record<string, () => Chart>> = {
  DERATEDPV: () => {
    const pv = (exponent: number) => (ambient: number) =>
      functions.DERATEDPV({ pvlimit: 0.12, highest: 90, ambient, exponent });
    return {
      id: "picture",
      title: "PV limit against the surroundings",
      text: "A limit of 0.12 MPa·m/s for a bush that bears 90 °C: level up to 23 °C, then falling to nothing at 90 °C; where still air alone cools, it falls faster.",
      x: { label: "temperature of the surroundings, °C", from: -20, to: 100 },
      y: { label: "PV limit, MPa·m/s", from: 0, to: 0.14 },
      series: [
        { label: "cooling in proportion to the rise, m = 1", look: "first", points: curve(pv(1), -20, 100, 120) },
        { label: "still air alone, m = 1.25", look: "second", points: curve(pv(1.25), -20, 100, 120) },
      ],
    };
  },
  BORETEMP: () => {
    const bore = (ambient: number) => (pv: number) => functions.BORETEMP({ pv, pvlimit: 0.12, highest: 90, ambient });
    return {
      id: "picture",
      title: "Bore temperature against PV",
      text: "A limit of 0.12 MPa·m/s for a bush that bears 90 °C: straight lines, each as far above its surroundings as the PV makes it; where a line crosses the limit stands the PV that DERATEDPV allows.",
      x: { label: "PV, MPa·m/s", from: 0, to: 0.14 },
      y: { label: "bore temperature, °C", from: 0, to: 120 },
      series: [
        { label: "surroundings of 23 °C", look: "first", points: curve(bore(23), 0, 0.14) },
        { label: "surroundings of 45 °C", look: "second", points: curve(bore(45), 0, 0.14) },
        { label: "surroundings of 70 °C", look: "third", points: curve(bore(70), 0, 0.14, 280) },
        level("highest temperature", 90, 0, 0.14),
      ],
    };
  },
  RUNTEMP: () => {
    const bush = {
      ...{ bore: 20, length: 15, wall: 1.5, speed: 0.1, friction: 0.15, ambient: 25 },
      ...{ bushconductivity: 0.25, shaftconductivity: 45, endlength: 60, ends: 2 },
    };
    const at = (end: 0 | 1, housingpath?: number) => (load: number) =>
      functions.RUNTEMP({ ...bush, load, ...(housingpath === undefined ? {} : { housingpath }) })[end] as number;
    return {
      id: "picture",
      title: "Running temperature against load",
      text: "A bush of 20 × 15 mm at 0.1 m/s with two shaft ends of 60 mm: without the housing's conductance the truth lies anywhere between the two outer lines; with 0.09 W/K it is one line.",
      x: { label: "load, N", from: 0, to: 600 },
      y: { label: "bore temperature, °C", from: 0, to: 160 },
      series: [
        { label: "no way out through the housing", look: "second", points: curve(at(1), 0, 600, 240) },
        { label: "housing of 0.09 W/K", look: "first", points: curve(at(1, 0.09), 0, 600) },
        { label: "housing at ambient", look: "third", points: curve(at(0), 0, 600) },
      ],
    };
  },
  CONTACTSHARE: () => {
    const share = (wall: number) => (clearance: number) =>
      functions.CONTACTSHARE({ clearance, wall, conductivity: 0.25 });
    return {
      id: "picture",
      title: "Share of the bore that passes heat on against clearance",
      text: "A bush of 0.25 W/(m·K): with no gap all of the bore takes heat from the shaft; the wider the gap, the less of it, and the less the thinner the wall. RUNTEMP takes a half unless another share is given.",
      x: { label: "clearance, mm", from: 0, to: 0.4 },
      y: { label: "share of the bore", from: 0, to: 1 },
      series: [
        { label: "wall 3 mm", look: "second", points: curve(share(3), 0, 0.4) },
        { label: "wall 1.5 mm", look: "first", points: curve(share(1.5), 0, 0.4) },
        { label: "wall 0.75 mm", look: "third", points: curve(share(0.75), 0, 0.4) },
        level("taken unless given", 0.5, 0, 0.4),
      ],
    };
  },
  PEAKRISE: () => {
    const [steady, on, off] = [60, 6, 18];
    const course = (timeconstant: number): Point[] => {
      const peak = functions.PEAKRISE({ rises: [steady, 0], times: [on, off], timeconstant });
      const low = afterStep(peak, { steady: 0, time: off }, timeconstant);
      return Array.from({ length: 2 }, (_, cycle) => cycle * (on + off)).flatMap((start): Point[] => [
        ...curve((t) => afterStep(low, { steady, time: t - start }, timeconstant), start, start + on, 30),
        ...curve(
          (t) => afterStep(peak, { steady: 0, time: t - start - on }, timeconstant),
          start + on,
          start + on + off,
          60,
        ),
      ]);
    };
    return {
      id: "picture",
      title: "Rise of an intermittent duty",
      text: "6 minutes on, 18 off, 60 K if it ran on: the longer the time constant, the nearer the rise stays to its mean of 15 K. One taken too long hides the peak.",
      x: { label: "time, min", from: 0, to: 48 },
      y: { label: "rise, K", from: 0, to: 60 },
      series: [
        { label: "time constant 4 min", look: "first", points: course(4) },
        { label: "time constant 12 min", look: "second", points: course(12) },
        { label: "time constant 60 min", look: "third", points: course(60) },
        level("rise of the mean PV", (steady * on) / (on + off), 0, 48),
      ],
    };
  },
};
