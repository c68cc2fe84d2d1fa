import { formula } from "../formula";

/** Hours until the allowance is worn: h/(k·p·v·3600). Without pressure or speed nothing wears and no finite life exists: an error. */
export const wearLife = formula(
  {
    id: "LIFE",
    family: "Wear and cost",
    text: "Running hours until the wear allowance is used up; times 60 and the cycles per minute it gives cycles",
    args: {
      wearrate: {
        kind: "wearRate",
        symbol: "k",
        above: 0,
        text: "Specific wear rate, times your own factors for shaft roughness, hardness and dirt where you have them",
      },
      pressure: {
        kind: "pressure",
        symbol: "p",
        above: 0,
        text: "Mean pressure; without any there is no wear and no finite life",
      },
      speed: {
        kind: "speed",
        symbol: "v",
        above: 0,
        text: "Mean sliding speed; at rest there is no wear and no finite life",
      },
      allowance: { kind: "length", symbol: "h", above: 0, text: "Wear depth that may be used up" },
    },
    units: true,
    result: { kind: "time", symbol: "t" },
    working: ["t = h / (k * p * v * 3600)"],
    source: { key: "archard", at: "linear wear law, solved for the time" },
    example: [2e-6, 2.67, 0.1257, 0.5],
    see: ["WEAR", "LIFEBAND", "RUNCOST"],
  },
  ({ wearrate, pressure, speed, allowance }) => allowance / (wearrate * pressure * speed * 3600),
);
