import type { Measurement } from "./measurements";
import { measurements } from "./measurements";
import type { Model } from "./models";
import { models } from "./models";

/** A measurement beside its prediction. */
export interface Compared extends Measurement {
  readonly predicted: number;
  /** Predicted over measured. */
  readonly ratio: number;
  readonly isUnsafe: boolean;
  /** Unsafe by more than the measurement's own scatter, as far as the source tells it. */
  readonly isBeyond: boolean;
}

export interface ModelErrors {
  readonly model: Model;
  /** The worst on the unsafe side first. */
  readonly points: readonly Compared[];
  /** Predicted over measured: the middle one, the least and the greatest. */
  readonly median: number;
  readonly least: number;
  readonly greatest: number;
  readonly unsafe: number;
  readonly beyond: number;
}

/** What a reading may be off by rounding alone: half a percent counts as equal. */
const equal = 0.005;

function compared(of: Measurement, model: Model): Compared {
  const predicted = model.predict(of);
  const short = of.unsafe === "low" ? of.measured - predicted : predicted - of.measured;
  const isUnsafe = short > equal * of.measured;
  return {
    ...of,
    predicted,
    ratio: predicted / of.measured,
    isUnsafe,
    isBeyond: isUnsafe && short > (of.scatter ?? 0),
  };
}

/** How far a prediction is on the unsafe side, as a ratio above 1. */
export const unsafeBy = ({ ratio, unsafe }: Compared): number => (unsafe === "low" ? 1 / ratio : ratio);

function errorsOf(model: Model): ModelErrors {
  const points = measurements
    .filter((one) => one.model === model.key)
    .map((one) => compared(one, model))
    .sort((a, b) => unsafeBy(b) - unsafeBy(a));
  const ratios = points.map(({ ratio }) => ratio).sort((a, b) => a - b);
  const middle = [Math.floor((ratios.length - 1) / 2), Math.ceil((ratios.length - 1) / 2)];
  return {
    model,
    points,
    median: middle.reduce((sum, i) => sum + (ratios[i] ?? NaN), 0) / 2,
    least: ratios[0] ?? NaN,
    greatest: ratios.at(-1) ?? NaN,
    unsafe: points.filter(({ isUnsafe }) => isUnsafe).length,
    beyond: points.filter(({ isBeyond }) => isBeyond).length,
  };
}

/** Every model with its measurements: the worst on the unsafe side first, those without any last. */
export function modelErrors(): ModelErrors[] {
  const worst = ({ points }: ModelErrors) => (points[0] ? unsafeBy(points[0]) : 0);
  return models.map(errorsOf).sort((a, b) => worst(b) - worst(a));
}
