import { motions } from "./model/limits";

/** The arguments by which a sheet states a duty of which pressure and speed are known; every function that judges one shares them. */
export const dutyArgs = {
  pressure: {
    kind: "pressure",
    symbol: "p",
    from: 0,
    label: "Mean pressure",
    text: "Mean pressure while running, or at rest where the motion is static; times your impact factor where there is shock",
  },
  speed: { kind: "speed", symbol: "v", from: 0, text: "Mean sliding speed; not looked at where the motion is static" },
  temperature: { kind: "span", text: "Temperature of the surroundings; that of the bore is computed" },
  motion: {
    kind: "choice",
    choices: motions,
    default: "turning",
    optional: true,
    text: "Motion: chooses the speed limit; static checks the static pressure limit and ignores speed and PV",
  },
} as const;

export const wetArg = {
  kind: "choice",
  choices: ["dry", "wet"],
  default: "dry",
  optional: true,
  text: "Whether the bush may become saturated with water",
} as const;
