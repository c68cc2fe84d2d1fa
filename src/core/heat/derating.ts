/** Temperature at which PV limits are stated, °C (room temperature of laboratories, ISO 291). */
export const statedAt = 23;

/**
 * PV limit in surroundings of a temperature: PV_ref·((T_max − T)/(T_max − T_ref))^m above T_ref, PV_ref up to it, 0 from
 * T_max on. The heat balance: PV_ref drove the bore to T_max at T_ref, and the same path carries the heat away.
 */
export function pvAt(limit: number, highest: number, ambient: number, reference = statedAt, exponent = 1): number {
  if (ambient >= highest) return 0;
  if (ambient <= reference) return limit;
  const share = (highest - ambient) / (highest - reference);
  return limit * (exponent === 1 ? share : share ** exponent);
}

/** Temperature of the bore that a PV implies: T + (T_max − T_ref)·(PV/PV_ref)^(1/m). */
export function boreAt(
  pv: number,
  limit: number,
  highest: number,
  ambient: number,
  reference = statedAt,
  exponent = 1,
): number {
  const share = pv / limit;
  return ambient + (highest - reference) * (exponent === 1 ? share : share ** (1 / exponent));
}
