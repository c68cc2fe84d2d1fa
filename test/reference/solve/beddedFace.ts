/**
 * Length over which a tilted flat face of stiff cells has been worn, mm: in each step the whole load wears an even depth off all cells that touch, the
 * shaft following. Cells join one by one as the deepest level sinks past them. s in m.
 */
export function beddedFace(
  rate: number,
  pressure: number,
  length: number,
  slope: number,
  s: number,
  cells = 3000,
): number {
  const wide = length / cells;
  let left = s;
  for (let touching = 1; touching < cells; touching++) {
    // until the next cell touches the level must sink by one cell's rise, at the pressure of the load on those that touch
    const needed = (slope * wide) / (rate * ((pressure * length) / (touching * wide)));
    if (needed > left) return touching * wide;
    left -= needed;
  }
  return length;
}
