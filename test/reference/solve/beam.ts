/** A load on a beam: force at a place, mm from the first support. */
interface PointLoad {
  readonly force: number;
  readonly at: number;
}

/**
 * Slopes at the two supports of a beam, rad, by integrating its bending moment twice in small steps and turning the curve so that both
 * supports lie on it. It knows no table of beams.
 */
export function slopesOf(loads: readonly PointLoad[], span: number, bending: number): [number, number] {
  const total = loads.reduce((sum, { force }) => sum + force, 0);
  const far = loads.reduce((sum, { force, at }) => sum + (force * at) / span, 0);
  const reactions = [
    { force: -(total - far), at: 0 },
    { force: -far, at: span },
  ];
  const moment = (x: number) =>
    [...loads, ...reactions].reduce((sum, { force, at }) => sum + (at < x ? force * (x - at) : 0), 0);
  // what stands left of the first support bends the span too: its moment at x is counted above, as at < x
  const n = 40_000;
  const h = span / n;
  let [slope, height] = [0, 0];
  for (let i = 0; i < n; i++) {
    const bend = moment((i + 0.5) * h) / bending;
    height += slope * h + (bend * h * h) / 2;
    slope += bend * h;
  }
  const turn = -height / span;
  return [turn, slope + turn];
}
