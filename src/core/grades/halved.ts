/** Two neighbours between which something ceases to hold, the first of them holding: halves until no double lies between, or nothing that counts. */
export function halved(
  isHeld: (value: number) => boolean,
  inside: number,
  outside: number,
  finest = 0,
): [number, number] {
  while (Math.abs(outside - inside) > finest) {
    const middle = inside + (outside - inside) / 2;
    if (middle === inside || middle === outside) break;
    if (isHeld(middle)) inside = middle;
    else outside = middle;
  }
  return [inside, outside];
}
