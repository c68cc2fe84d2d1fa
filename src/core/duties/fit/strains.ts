import { heldStrain } from "../../fit/lame";
import { assemblyTemperature } from "../../fit/running";
import type { Assembly } from "./assembly";
import type { Climate } from "./climates";

/** Growth of the bush in one step, once it is warmer than at assembly. */
export const stepOf = ({ step }: Assembly, { bush }: Climate): number => (bush > assemblyTemperature ? step : 0);

/** Strains since assembly, of bush, housing and shaft. */
export function bushStrain(assembly: Assembly, climate: Climate): number {
  const { expansion, isHeld, poisson } = assembly;
  const free = expansion * (climate.bush - assemblyTemperature) + stepOf(assembly, climate) + climate.swelling;
  return isHeld ? heldStrain(free, housingStrain(assembly, climate), poisson) : free;
}
const housingStrain = ({ housing }: Assembly, climate: Climate): number =>
  housing.expansion * (climate.housing - assemblyTemperature);
export const shaftStrain = ({ shaftMetal }: Assembly, climate: Climate): number =>
  shaftMetal.expansion * (climate.shaft - assemblyTemperature);

export const mismatchOf = (assembly: Assembly, climate: Climate): number =>
  bushStrain(assembly, climate) - housingStrain(assembly, climate);

export const hottestOf = (assembly: Assembly, all: readonly Climate[]): Climate =>
  all.filter(({ isAfter }) => !isAfter).reduce((a, b) => (mismatchOf(assembly, b) > mismatchOf(assembly, a) ? b : a));
