import { useDeferredValue, useMemo, useState } from "react";
import type { NamedDuty, Ranked } from "../../core/duties";
import type { System } from "../../core/kinds";
import type { PaneHost } from "../host/host";
import type { DutyState } from "./dutyState";
import { emptyTexts } from "./fields";
import { firstFit, keepFitUnits } from "./fit";
import { listOf } from "./list";
import { keepUnits } from "./quantity";
import { readDuty } from "./readDuty";
import { keepStepUnits } from "./spectrum";
import type { TabName } from "./tabs";
import { useLibrary } from "./useLibrary";
import type { OwnGrades } from "./useLibrary";

/** Everything that the parts of the pane share: one duty, one library, one choice of grades. */
export interface PaneState {
  readonly host: PaneHost;
  readonly duty: DutyState;
  readonly own: OwnGrades;
  /** The duty that was judged last: typing goes before judging. */
  readonly judged: NamedDuty | undefined;
  /** All grades judged for it, best first. */
  readonly ranked: readonly Ranked[];
  /** Names of the grades to compare. */
  readonly chosen: readonly string[];
  /** Grades that the shortlist shows in full in place of its list. */
  readonly shown: readonly string[];
  setChosen(names: readonly string[]): void;
  setShown(names: readonly string[]): void;
  goTo(tab: TabName): void;
}

export function usePane(host: PaneHost, goTo: (tab: TabName) => void): PaneState {
  const [texts, setTexts] = useState(emptyTexts);
  const [system, setSystem] = useState<System>("metric");
  const [steps, setSteps] = useState("");
  const [fit, setFit] = useState(firstFit);
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const [shown, setShown] = useState<readonly string[]>([]);
  const own = useLibrary(host.port, system);
  const read = useMemo(() => readDuty(texts, steps, system), [texts, steps, system]);
  const changeSystem = (wanted: System) => {
    setTexts(keepUnits(texts, system));
    setSteps(keepStepUnits(steps, system));
    setFit(keepFitUnits(fit, system));
    setSystem(wanted);
  };
  const duty: DutyState = { texts, system, read, steps, fit, setTexts, setSystem: changeSystem, setSteps, setFit };
  const judged = useDeferredValue(read.duty);
  const ranked = useMemo(() => (judged ? listOf(judged, own.library) : []), [judged, own.library]);
  const known = chosen.filter((name) => own.library.grades.some((grade) => grade.name === name));
  return { host, duty, own, judged, ranked, chosen: known, shown, setChosen, setShown, goTo };
}
