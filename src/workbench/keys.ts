/** A part of the page and how the keyboard enters it. */
export interface Stop {
  readonly part: HTMLElement;
  enter(): void;
}

/** F6 goes round the parts, Shift+F6 back: inside the grid the Tab key goes from cell to cell and never leaves it. */
export function goRoundWithF6(stops: readonly Stop[]): void {
  const onKey = (event: KeyboardEvent): void => {
    if (event.key !== "F6") return;
    event.preventDefault();
    event.stopPropagation();
    const here = stops.findIndex(({ part }) => part.contains(document.activeElement));
    const next = here + (event.shiftKey ? stops.length - 1 : 1);
    stops[next % stops.length]?.enter();
  };
  globalThis.addEventListener("keydown", onKey, { capture: true });
}

/** The first control of a part. */
export const firstControl = (part: HTMLElement): HTMLElement =>
  part.querySelector<HTMLElement>("button, input, select, [role=tab][tabindex='0'], a[href]") ?? part;
