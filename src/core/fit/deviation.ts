import { formula } from "../formula";
import { deviationsOf } from "./zones/iso286";
import { zoneArg } from "./zones/zone";

/** Limit deviations of an ISO 286 class from its tables: ES and EI of a hole, es and ei of a shaft. */
export const DEVIATION = formula(
  {
    id: "DEVIATION",
    text: "Limit deviations of a tolerance zone: the upper or the lower one, or both side by side",
    args: {
      size: { kind: "length", symbol: "D", above: 0, text: "Nominal size, up to 500 mm for an ISO 286 class" },
      zone: zoneArg("Tolerance zone of the hole (capital letter) or the shaft (small letter)"),
      side: { kind: "choice", choices: ["upper", "lower"], optional: true, text: "Which deviation; without it both" },
    },
    units: true,
    result: {
      shape: "row",
      columns: [
        { name: "upper deviation", kind: "length" },
        { name: "lower deviation", kind: "length" },
      ],
      text: "Upper and lower limit deviation, or the one asked for",
    },
    source: { key: "iso286", at: "Tables 1 to 5" },
    example: [25, "H7"],
    see: ["LIMITS", "FITOF"],
  },
  ({ size, zone, side }) => {
    const { upper, lower } = deviationsOf(zone, size, { zone: "zone", size: "size" });
    return side === undefined ? [upper, lower] : [side === "upper" ? upper : lower];
  },
);
