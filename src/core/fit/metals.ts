import data from "../../../data/metals.json";
import { noDatum, orList, show } from "../errors";
import { nearest } from "../names";
import { present } from "../present";
import { sourceTitle } from "../sources";

interface Figures {
  /** Thermal expansion, 1/K. */
  readonly expansion: number;
  /** Modulus of elasticity, MPa. */
  readonly modulus: number;
  readonly poisson: number;
  /** Thermal conductivity, W/(m·K). */
  readonly conductivity: number;
}
export type MetalFigure = keyof Figures;

/** A common metal of housings and shafts; typical values at room temperature, each with its source in data/metals.json. */
export interface Metal extends Figures {
  readonly name: string;
  /** Where each figure comes from, in one line. */
  readonly origins: Readonly<Record<MetalFigure, string>>;
}

const key = (name: string): string => name.trim().toLowerCase().replace(/\s+/g, " ");

const originOf = (metal: string, { source, at, label }: { source: string; at: string; label: string }): string =>
  `${metal}: ${sourceTitle(source)}, ${at}; ${label}`;

export const metals: readonly Metal[] = data.metals.map(({ metal, values }) => ({
  name: metal,
  expansion: values.expansion.value,
  modulus: values.modulus.value,
  poisson: values.poisson.value,
  conductivity: values.conductivity.value,
  origins: {
    expansion: originOf(metal, values.expansion),
    modulus: originOf(metal, values.modulus),
    poisson: originOf(metal, values.poisson),
    conductivity: originOf(metal, values.conductivity),
  },
}));

const byName: ReadonlyMap<string, Metal> = new Map(
  data.metals.flatMap(({ metal, aliases }, i) =>
    [metal, ...aliases].map((name) => [key(name), present(metals[i])] as const),
  ),
);

/** The metal of that name or one of its other names; case and extra spaces do not count. */
export function findMetal(argument: string, name: string): Metal {
  const found = byName.get(name) ?? byName.get(key(name));
  if (found) return found;
  const near = nearest(name, [...byName.keys()]);
  const advice = near.length > 0 ? `nearest: ${orList(near)}` : "try carbon steel, stainless steel or aluminium alloy";
  throw noDatum(argument, `${argument} ${show(name)} is no metal known here; ${advice}`);
}

/** For the text of an argument. */
export const metalNames = metals.map((m) => m.name).join(", ");
