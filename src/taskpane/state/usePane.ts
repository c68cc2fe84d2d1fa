import { useMemo, useState } from "react";
import type { Dispatch, SetStateAction } from "react";
import type { FieldKey } from "../../core/duties";
import type { System } from "../../core/kinds";
import type { PaneHost } from "../host/host";
import type { DutyState } from "./dutyState";
import { emptyForm, filledOf } from "./form";
import type { Form } from "./form";
import { keepUnits } from "./quantity";
import { readDuty } from "./readDuty";
import type { Origin } from "./origin";
import type { TabName } from "./tabs";
import { useLibrary } from "./useLibrary";
import type { OwnGrades } from "./useLibrary";
import { useRanking } from "./useRanking";
import type { Ranking } from "./useRanking";

/** Everything that the parts of the pane share: one duty, one library, one choice of grades. */
export interface PaneState extends Ranking {
  readonly host: PaneHost;
  readonly duty: DutyState;
  readonly own: OwnGrades;
  /** Names of the grades that charts and inserted tables are of: those to compare, else the duty's own, else the best. */
  readonly subjects: readonly string[];
  /** Names of the grades to compare. */
  readonly chosen: readonly string[];
  /** Grades that the shortlist shows in full in place of its list. */
  readonly shown: readonly string[];
  readonly setChosen: Dispatch<SetStateAction<readonly string[]>>;
  setShown(names: readonly string[]): void;
  goTo(tab: TabName): void;
  /** The field that the form is to show, until it does. */
  readonly wanted: FieldKey | undefined;
  /** Shows the form at a field. */
  askFor(key: FieldKey): void;
  /** The field is in view. */
  onShown(): void;
}

export function usePane(host: PaneHost, goTo: (tab: TabName) => void): PaneState {
  const [form, setForm] = useState<Form>(emptyForm);
  const [system, setSystem] = useState<System>("metric");
  const [stated, setOrigin] = useState<Origin>();
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const [shown, setShown] = useState<readonly string[]>([]);
  const [wanted, setWanted] = useState<FieldKey>();
  const own = useLibrary(host.port, system);
  const read = useMemo(() => readDuty(form, system), [form, system]);
  const changeSystem = (next: System) => {
    const kept = keepUnits(form, system);
    // what stands in cells stands there in either system
    if (origin) setOrigin({ ...origin, form: kept });
    setForm(kept);
    setSystem(next);
  };
  const origin = stated && filledOf(stated.form) === filledOf(form) ? stated : undefined;
  const duty: DutyState = { form, system, read, origin, setForm, setSystem: changeSystem, setOrigin };
  const { judged, ranked, judging } = useRanking(read.duty, own.library);
  const known = chosen.filter((name) => own.library.grades.some((grade) => grade.name === name));
  const single = judged?.grade ?? ranked[0]?.grade.name;
  const subjects = known.length > 0 ? known : single === undefined ? [] : [single];
  const askFor = (key: FieldKey) => {
    setWanted(key);
    goTo("duty");
  };
  const onShown = () => setWanted(undefined);
  const choice = { subjects, chosen: known, shown, setChosen, setShown };
  return { host, duty, own, judged, ranked, judging, ...choice, goTo, wanted, askFor, onShown };
}
