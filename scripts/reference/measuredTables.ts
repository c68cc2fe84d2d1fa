import type { Compared, ModelErrors } from "../../test/reference/measured/compare";
import { cited } from "../../test/reference/measured/measurements";
import { table } from "./tables";

/** A number with its first digits; a small one as a power of ten. */
export const digits = (x: number, count = 3): string =>
  Math.abs(x) < 1e-3 ? x.toExponential(count - 1).replace(/\.?0*e-/, "e−") : String(Number(x.toPrecision(count)));

/** One line a model: how many, predicted over measured, how many on the unsafe side and by more than the scatter. */
export const modelRows = (measured: readonly ModelErrors[]): string =>
  table(
    ["model", "measurements", "median", "least", "greatest", "on the unsafe side", "by more than the scatter"],
    measured.map(({ model, points, median, least, greatest, unsafe, beyond }) => [
      model.title,
      points.length || "none found",
      ...(points.length > 0
        ? [...[median, least, greatest].map((x) => x.toFixed(2)), unsafe, beyond]
        : Array(5).fill("")),
    ]),
    [1, 2, 3, 4, 5, 6],
  );

const sideOf = ({ isUnsafe, isBeyond, unsafe, scatter }: Compared): string => {
  if (!isUnsafe) return "";
  const by = scatter === undefined ? "" : isBeyond ? ", more than the scatter" : ", within the scatter";
  return `too ${unsafe}, unsafe${by}`;
};

/** Every measurement of a model beside its prediction, the worst on the unsafe side first. */
export const pointRows = ({ points }: ModelErrors): string =>
  table(
    ["what", "measured", "predicted", "ratio", "side", "source"],
    points.map((point) => [
      point.what + (point.note ? ` (${point.note})` : ""),
      `${digits(point.measured, 5)}${point.scatter === undefined ? "" : ` ± ${digits(point.scatter, 2)}`} ${point.unit}`.trim(),
      digits(point.predicted),
      point.ratio.toFixed(2),
      sideOf(point),
      `${cited(point)}; ${point.label}`,
    ]),
    [1, 2, 3],
  );
