import { Activity, useDeferredValue, useMemo, useState } from "react";
import type { ReactNode } from "react";
import type { System } from "../core/kinds";
import type { TabName } from "./app";
import { CellNote } from "./cell/CellNote";
import { DutyForm } from "./duty/DutyForm";
import { emptyTexts } from "./duty/fields";
import { keepUnits } from "./duty/quantity";
import { readDuty } from "./duty/readDuty";
import { keepStepUnits } from "./duty/spectrum";
import type { DutyState } from "./duty/state";
import type { PaneHost } from "./host";
import { Insert } from "./insert/Insert";
import { Own } from "./own/Own";
import { useLibrary } from "./own/useLibrary";
import { DutyLine } from "./parts/DutyLine";
import { Notice } from "./parts/Notice";
import { Shortlist } from "./shortlist/Shortlist";
import { listOf } from "./shortlist/list";
import { firstFit, keepFitUnits } from "./window/fit";
import { Window } from "./window/Window";

interface Props {
  tab: TabName;
  onTab(tab: TabName): void;
  host: PaneHost;
}

/** Everything of the pane that needs the core. One duty, one library and one choice of grades serve all parts. */
export default function Pane({ tab, onTab, host }: Props) {
  const { port } = host;
  const [texts, setTexts] = useState(emptyTexts);
  const [system, setSystem] = useState<System>("metric");
  const [steps, setSteps] = useState("");
  const [fit, setFit] = useState(firstFit);
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const [shown, setShown] = useState<readonly string[]>([]);
  const own = useLibrary(port, system);
  const read = useMemo(() => readDuty(texts, steps, system), [texts, steps, system]);
  const changeSystem = (wanted: System) => {
    setTexts(keepUnits(texts, system));
    setSteps(keepStepUnits(steps, system));
    setFit(keepFitUnits(fit, system));
    setSystem(wanted);
  };
  const state: DutyState = { texts, system, read, steps, fit, setTexts, setSystem: changeSystem, setSteps, setFit };
  const { duty } = read;
  // typing goes before judging
  const settled = useDeferredValue(duty);
  const ranked = useMemo(() => (settled ? listOf(settled, own.library) : []), [settled, own.library]);
  const known = chosen.filter((name) => own.library.grades.some((grade) => grade.name === name));
  const showList = () => {
    setShown([]);
    onTab("shortlist");
  };
  // all parts stay, so that nothing typed in one is lost by a look at another
  const panels: readonly (readonly [TabName, ReactNode])[] = [
    ["duty", <DutyForm state={state} port={port} onShortlist={showList} />],
    [
      "shortlist",
      <Shortlist
        duty={settled}
        ranked={ranked}
        library={own.library}
        system={system}
        chosen={known}
        setChosen={setChosen}
        shown={shown}
        setShown={setShown}
        onDuty={() => onTab("duty")}
      />,
    ],
    ["window", <Window state={state} duty={settled} ranked={ranked} chosen={known} onTab={onTab} />],
    ["insert", <Insert state={state} ranked={ranked} own={own} chosen={known} host={host} onTab={onTab} />],
    ["own", <Own own={own} system={system} host={host} />],
  ];
  return (
    <>
      {tab !== "duty" && <DutyLine duty={duty} system={system} />}
      {own.faults[0] && tab !== "own" && (
        <Notice intent="error" title="Own grades are not used.">
          {own.faults[0]}
        </Notice>
      )}
      {panels.map(([name, panel]) => (
        <Activity key={name} mode={tab === name ? "visible" : "hidden"}>
          {panel}
        </Activity>
      ))}
      {!host.explainsCells && <CellNote port={port} />}
    </>
  );
}
