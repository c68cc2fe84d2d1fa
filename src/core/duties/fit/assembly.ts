import { checkFeature, limitsIn } from "../../fit/zones/iso286";
import type { Limits } from "../../fit/zones/iso286";
import { heldAtEnds } from "../../fit/lame";
import type { Ring } from "../../fit/lame";
import { findMetal } from "../../fit/metals";
import type { Metal } from "../../fit/metals";
import type { Values } from "../../grades/model/properties";
import type { System } from "../../kinds";
import { present } from "../../present";
import type { Missing } from "../judging/criterion";
import type { FieldKey, Given } from "../model/fields";
import { misfit } from "../model/misfit";

/** A bush, its housing and its shaft, by limits of size before the bush is pressed in; mm. */
export interface Assembly {
  readonly ring: Ring;
  readonly bore: Limits;
  readonly shaft: Limits;
  readonly outside: Limits;
  readonly seat: Limits;
  /** Of the bush. */
  readonly wall: number;
  /** Whether the bore's limits hold after pressing in. */
  readonly isPressed: boolean;
  readonly isHeld: boolean;
  readonly modulus: number;
  readonly poisson: number;
  readonly expansion: number;
  /** Strain that comes beside it above the temperature of assembly. */
  readonly step: number;
  readonly housing: Metal;
  readonly shaftMetal: Metal;
}

/** The fields that ask for the fit, each needed once one of them is given. */
export const fitFields = ["boreZone", "shaftZone", "outsideZone", "housingZone"] as const;
const otherFields = ["bore", "housing", "shaft"] as const;
export const elasticFigures = ["expansion", "expansionStep", "compressiveModulus", "poisson"] as const;

/** Wall of the bush, by itself or out of its outside diameter. */
export const wallOf = ({ wall, outside, bore }: Given): number | undefined =>
  wall ?? (outside !== undefined && bore !== undefined ? (outside - bore) / 2 : undefined);

/** Fields of the fit that are not stated; the wall where its outside is not either. */
export const unstatedFit = (given: Given): FieldKey[] => [
  ...[...fitFields, ...otherFields].filter((key) => given[key] === undefined),
  ...(wallOf(given) === undefined ? (["wall"] as const) : []),
];

export function assemblyOf(values: Values, given: Given): Assembly | Missing {
  const [field] = unstatedFit(given);
  if (field !== undefined) return { field };
  for (const property of elasticFigures) if (values[property] === undefined) return { property };
  const [modulus, poisson] = [present(values.compressiveModulus), present(values.poisson)];
  const [bore, wall] = [present(given.bore), present(wallOf(given))];
  const outside = bore + 2 * wall;
  const housing = findMetal("housing", present(given.housing));
  const ring: Ring = {
    bore,
    outside,
    housing: given.housingOutside ?? Infinity,
    bushModulus: modulus,
    bushPoisson: poisson,
    housingModulus: housing.modulus,
    housingPoisson: housing.poisson,
  };
  const limits = (zone: (typeof fitFields)[number], size: number): Limits =>
    limitsIn(present(given[zone]), size, { zone, size: "bore" });
  const isHeld = given.heldAtEnds === "yes";
  return {
    ring: isHeld ? heldAtEnds(ring) : ring,
    bore: limits("boreZone", bore),
    shaft: limits("shaftZone", bore),
    outside: limits("outsideZone", outside),
    seat: limits("housingZone", outside),
    wall,
    isPressed: given.zoneHolds !== "free",
    isHeld,
    modulus,
    poisson,
    expansion: present(values.expansion),
    step: present(values.expansionStep),
    housing,
    shaftMetal: findMetal("shaft", present(given.shaft)),
  };
}

/** Zones that no class of ISO 286 has, or that leave no size, and metals that are not known, are told when the duty is read. */
export function checkFit(given: Given, system: System): void {
  const { bore, housingOutside } = given;
  const thickness = wallOf(given);
  const seat = bore === undefined || thickness === undefined ? undefined : bore + 2 * thickness;
  if (seat !== undefined && housingOutside !== undefined && housingOutside <= seat)
    throw misfit("housing outside", "above the bush's outside", seat, housingOutside, system);
  for (const key of fitFields) {
    const zone = given[key];
    const { heading, feature, of } = zoneOf[key];
    if (zone === undefined) continue;
    checkFeature(heading, zone, feature);
    const size = of === "bore" ? bore : seat;
    if (size !== undefined) limitsIn(zone, size, { zone: heading, size: of });
  }
  if (given.housing !== undefined) findMetal("housing", given.housing);
}
const zoneOf = {
  boreZone: { heading: "bore zone", feature: "hole", of: "bore" },
  shaftZone: { heading: "shaft zone", feature: "shaft", of: "bore" },
  outsideZone: { heading: "outside zone", feature: "shaft", of: "outside" },
  housingZone: { heading: "housing zone", feature: "hole", of: "outside" },
} as const satisfies Record<(typeof fitFields)[number], object>;
