import { cycleOf } from "../loading/spectrum";

/** A step of a cycle that repeats: the value that it would reach if it lasted, and how long it lasts. */
export interface Step {
  readonly steady: number;
  readonly time: number;
}

/**
 * θ_i = θ_(i−1) + (S_i − θ_(i−1))·(1 − e^(−t_i/τ)), from the θ_0 = B/(1 − e^(−t_c/τ)) at which the cycle closes, B being its end from 0.
 * Within a step θ goes one way, so the greatest stands at the end of one: its value and which step.
 */
export function peakOf(steps: readonly Step[], timeconstant: number): { readonly value: number; readonly at: number } {
  const cycle = cycleOf(steps.map(({ time }) => time));
  const after = (start: number, step: Step) => afterStep(start, step, timeconstant);
  let value = steps.reduce(after, 0) / -Math.expm1(-cycle / timeconstant);
  let peak = { value: -Infinity, at: 0 };
  steps.forEach((step, at) => {
    value = after(value, step);
    if (value > peak.value) peak = { value, at };
  });
  return peak;
}

/** What a value becomes within a step: it goes towards the step's steady value. */
export const afterStep = (start: number, { steady, time }: Step, timeconstant: number): number =>
  start - (steady - start) * Math.expm1(-time / timeconstant);

/** "t_c = t1 + t2": the head of the workings below. */
export const cycleLine = (steps: readonly unknown[]): string => `t_c = ${steps.map((_, i) => `t${i + 1}`).join(" + ")}`;
export const cycleBetween = { t_c: { unit: "h", text: "Duration of the cycle" } } as const;

/** `peakOf` in one line, its steady values being S1, S2 …: what each step leaves at the end of the step of the peak. */
export function peakLine(
  symbol: string,
  steady: (step: number) => string,
  steps: readonly Step[],
  timeconstant: number,
): string {
  const { at } = peakOf(steps, timeconstant);
  const order = steps.map((_, i) => ((at + 1 + i) % steps.length) + 1);
  const left = order.map((step, i) => {
    const since = order.slice(i + 1).map((later) => `t${later}`);
    const fading = since.length === 0 ? "" : ` * exp(-(${since.join(" + ")}) / τ)`;
    return `${steady(step)} * (1 - exp(-t${step} / τ))${fading}`;
  });
  return `${symbol} = (${left.join(" + ")}) / (1 - exp(-t_c / τ))`;
}
