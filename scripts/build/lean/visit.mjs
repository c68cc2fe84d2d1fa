/**
 * Shows each node of acorn's tree, the outer before the inner; a node that `isLeftOut` is passed over with all that is in it.
 * @param {any} node
 * @param {(node: any) => void} see
 * @param {(node: any) => boolean} [isLeftOut]
 */
export function visit(node, see, isLeftOut) {
  if (isLeftOut?.(node)) return;
  see(node);
  for (const part of Object.values(node).flat()) if (typeof part?.type === "string") visit(part, see, isLeftOut);
}
