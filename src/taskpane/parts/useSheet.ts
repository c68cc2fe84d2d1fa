import { useEffect, useRef, useState } from "react";
import type { Place, ReadCell, SheetPort } from "../../port/sheet";

/** Sheets report every keystroke of a recalculation. */
const pause = 150;

/** Calls back once at the start and, a moment later, after every change of the sheet. */
export function useWatch(port: SheetPort, changed: () => void): void {
  const latest = useRef(changed);
  useEffect(() => {
    latest.current = changed;
  });
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const soon = () => {
      clearTimeout(timer);
      timer = setTimeout(() => latest.current(), pause);
    };
    soon();
    const end = port.watch(soon);
    return () => {
      clearTimeout(timer);
      end();
    };
  }, [port]);
}

export interface Selected {
  readonly place: Place;
  /** Its upper left cell. */
  readonly cell?: ReadCell;
}

export function useSelection(port: SheetPort): Selected | undefined {
  const [selected, setSelected] = useState<Selected>();
  useWatch(port, () => {
    void (async () => {
      const place = await port.selection();
      const cell = place && (await port.read({ ...place, rows: 1, cols: 1 }))[0]?.[0];
      setSelected(place && { place, cell });
    })().catch(() => setSelected(undefined));
  });
  return selected;
}
