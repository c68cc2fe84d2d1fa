import { useEffect, useRef, useState } from "react";
import type { System } from "../../core/kinds";
import { readLists } from "./readLists";
import type { ReadLists } from "./readLists";
import type { Sort } from "./sort";
import { OpenList } from "./source";
import type { Taken } from "./taken";

export interface Reading {
  /** Share read so far; nothing once it has ended. */
  readonly share?: number | undefined;
  readonly result?: ReadLists | undefined;
  /** What keeps the lists from being read. */
  readonly problem?: string | undefined;
  /** The list that does not tell its decimals. */
  readonly openAt?: number | undefined;
  stop(): void;
  again(): void;
}

type State = Omit<Reading, "stop" | "again"> & { readonly lists: readonly Taken[]; readonly system: System };

/** Reads lists whenever they, or what is said of their columns, change; `fault` keeps it from starting. */
export function useReading(lists: readonly Taken[], sort: Sort, system: System, fault: string | undefined): Reading {
  const [state, setState] = useState<State>({ lists: [], system });
  const running = useRef<AbortController>(undefined);
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    if (lists.length === 0 || fault !== undefined) return;
    const controller = new AbortController();
    const { signal } = controller;
    let isOld = false;
    const say = (part: Omit<State, "lists" | "system">) => {
      if (!isOld) setState({ lists, system, ...part });
    };
    running.current = controller;
    readLists(lists, sort, system, { report: (share) => say({ share }), signal }).then(
      (result) => say({ result }),
      (error: Error) => say({ problem: error.message, ...(error instanceof OpenList ? { openAt: error.at } : {}) }),
    );
    return () => {
      isOld = true;
      controller.abort();
    };
  }, [lists, sort, system, fault, turn]);
  const isNow = state.lists === lists && state.system === system;
  const now = fault !== undefined ? { problem: fault } : isNow ? state : { share: 0 };
  return { ...now, stop: () => running.current?.abort(), again: () => setTurn(turn + 1) };
}
