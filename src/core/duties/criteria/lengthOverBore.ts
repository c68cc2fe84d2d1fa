import { present } from "../../present";
import { criterion, figure, rounding } from "../judging/criterion";
import type { Duty } from "../model/duty";

/** Short bushes lose their shaft's guidance, long ones load their edges (common practice). */
const usual = { least: 0.5, most: 2 };
const sizesOf = ({ given }: Duty) => ({ length: present(given.length), bore: present(given.bore) });
const ratioOf = (duty: Duty): number => {
  const { length, bore } = sizesOf(duty);
  return length / bore;
};
const limitOf = (value: number): number => (value < usual.least ? usual.least : usual.most);

export const lengthOverBore = criterion(
  {
    id: "lengthOverBore",
    heading: "length over bore",
    kind: "ratio",
    text: "Length over bore from 0.5 to 2",
    asked: "on a sleeve or a flanged bush",
    fields: ["length", "bore"],
    properties: [],
    source: { key: "practice", at: "length over bore from 0.5 to 2" },
    asks: ({ given }) => given.length !== undefined,
    working: (_, duty) => {
      const { length, bore } = sizesOf(duty);
      return {
        lines: ["V = L / d", "Z = r"],
        known: {
          L: figure(length, "length", "Length of the bush"),
          d: figure(bore, "length", "Bore of the bush"),
          r: figure(limitOf(length / bore), "ratio", "Bound of common practice"),
        },
      };
    },
  },
  (_, duty) => {
    const value = ratioOf(duty);
    const limit = limitOf(value);
    if (value >= usual.least - rounding && value <= usual.most + rounding)
      return { word: "fits", figures: [], value, limit };
    const say = () => `length ${Number(value.toPrecision(3))} times the bore, 0.5 to 2 is common practice`;
    return { word: "care", figures: [], value, limit, say };
  },
);
