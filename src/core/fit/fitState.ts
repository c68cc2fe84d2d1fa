import { runningState } from "./running";

/** Two limits: of a size, a clearance or an interference. */
export interface Limits {
  readonly least: number;
  readonly greatest: number;
}

/** A bush in its housing and a shaft in the bush, by their limits of size at assembly; mm. */
export interface Assembly {
  /** "pressed": the bore's limits hold after pressing in. "free": before. */
  readonly boreState: "pressed" | "free";
  readonly bore: Limits;
  readonly shaft: Limits;
  readonly outside: Limits;
  readonly housing: Limits;
  /** Nominal outside diameter of the bush. */
  readonly nominalOutside: number;
  /** κ, bore close-in per unit of interference. */
  readonly closeIn: number;
}

/** What heat and moisture have done since assembly, as strains. */
export interface Growth {
  readonly bush: number;
  readonly housing: number;
  readonly shaft: number;
}

export interface FitState {
  /** Worst case of all four tolerances. */
  readonly clearance: Limits;
  /** Root-sum-square band of the clearance. */
  readonly band: Limits;
  /** Interference left between bush and housing, worst case; zero or less is a loose bush. */
  readonly interference: Limits;
}

/**
 * Clearance rises with the bore, falls with the shaft, and goes one way with the interference, so that the worst cases
 * stand at the ends of the limits. The band takes half of each tolerance: bush and housing first join to the half-width
 * of their interference, √((To/2)² + (Th/2)²), whose effect then joins bore and shaft, C = Cm ± √((Tb/2)² + (Ts/2)² + ti²).
 */
export function fitState(a: Assembly, growth: Growth): FitState {
  const at = (bore: number, shaft: number, interference: number) => {
    const pressed = a.boreState === "pressed" ? bore : bore - a.closeIn * Math.max(0, interference);
    return runningState({
      clearance: pressed - shaft,
      bore,
      shaft,
      outside: a.nominalOutside,
      interference,
      closeIn: a.closeIn,
      bushStrain: growth.bush,
      housingStrain: growth.housing,
      shaftStrain: growth.shaft,
    });
  };
  const tight = a.outside.greatest - a.housing.least;
  const slack = a.outside.least - a.housing.greatest;
  const lows = [slack, tight].map((interference) => at(a.bore.least, a.shaft.greatest, interference));
  const highs = [slack, tight].map((interference) => at(a.bore.greatest, a.shaft.least, interference));

  const boreMiddle = middle(a.bore);
  const shaftMiddle = middle(a.shaft);
  const likely = Math.hypot(half(a.outside), half(a.housing));
  const ends = [-likely, likely].map(
    (deviation) => at(boreMiddle, shaftMiddle, (tight + slack) / 2 + deviation).clearance,
  ) as [number, number];
  const centre = (ends[0] + ends[1]) / 2;
  const width = Math.hypot(
    half(a.bore) * (1 + growth.bush),
    half(a.shaft) * (1 + growth.shaft),
    (ends[1] - ends[0]) / 2,
  );
  return {
    clearance: limitsOf(
      lows.map((s) => s.clearance),
      highs.map((s) => s.clearance),
    ),
    band: { least: centre - width, greatest: centre + width },
    interference: { least: lows[0]!.interference, greatest: lows[1]!.interference },
  };
}

const limitsOf = (lows: number[], highs: number[]): Limits => ({
  least: Math.min(...lows),
  greatest: Math.max(...highs),
});
const middle = ({ least, greatest }: Limits): number => (least + greatest) / 2;
const half = ({ least, greatest }: Limits): number => (greatest - least) / 2;
