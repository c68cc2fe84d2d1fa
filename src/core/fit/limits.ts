import { formula, Measure } from "../formula";
import { deviationsOf, limitsIn } from "./zones/iso286";
import { zoneArg } from "./zones/zone";

const of = { zone: "zone", size: "size" };

/** Limits of size: the nominal size with each limit deviation added. */
export const LIMITS = formula(
  {
    id: "LIMITS",
    text: "Limits of size of a hole or a shaft in a tolerance zone",
    args: {
      size: { kind: "length", symbol: "D", above: 0, text: "Nominal size, up to 500 mm for an ISO 286 class" },
      zone: zoneArg("Tolerance zone of the hole (capital letter) or the shaft (small letter)"),
    },
    units: true,
    result: {
      shape: "row",
      columns: [
        { name: "least size", kind: "length", symbol: "D_min" },
        { name: "greatest size", kind: "length", symbol: "D_max" },
      ],
      text: "Lower and upper limit of size",
    },
    lookups: ({ size, zone }) => {
      const { lower, upper } = deviationsOf(zone, size, of);
      return {
        e_l: { value: new Measure(lower, "length"), text: "Lower limit deviation" },
        e_u: { value: new Measure(upper, "length"), text: "Upper limit deviation" },
      };
    },
    working: ["D_min = D + e_l", "D_max = D + e_u"],
    source: { key: "iso286", at: "Tables 1 to 5; limits of size" },
    example: [25, "H7"],
    see: ["DEVIATION", "CLEARANCE"],
  },
  ({ size, zone }) => {
    const { least, greatest } = limitsIn(zone, size, of);
    return [least, greatest];
  },
);
