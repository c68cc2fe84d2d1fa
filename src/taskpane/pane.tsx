import { Activity, useMemo, useState } from "react";
import type { ReactNode } from "react";
import type { System } from "../core/kinds";
import type { TabName } from "./app";
import { CellNote } from "./cell/CellNote";
import { DutyForm } from "./duty/DutyForm";
import type { DutyState } from "./duty/DutyForm";
import { emptyTexts, readDuty } from "./duty/fields";
import { readSpectrum } from "./duty/spectrum";
import type { PaneHost } from "./host";
import { Insert } from "./insert/Insert";
import { Own } from "./own/Own";
import { useLibrary } from "./own/useLibrary";
import { DutyLine } from "./parts/DutyLine";
import { Notice } from "./parts/Notice";
import { Shortlist } from "./shortlist/Shortlist";
import { firstFit } from "./window/fit";
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
  const read = useMemo(() => readDuty(texts, system), [texts, system]);
  const spectrum = useMemo(() => readSpectrum(steps, texts, read, system), [steps, texts, read, system]);
  const state: DutyState = { texts, system, read, steps, spectrum, fit, setTexts, setSystem, setSteps, setFit };
  const { duty } = read;
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
        duty={duty}
        library={own.library}
        system={system}
        chosen={known}
        setChosen={setChosen}
        shown={shown}
        setShown={setShown}
        onDuty={() => onTab("duty")}
      />,
    ],
    ["window", <Window state={state} library={own.library} chosen={known} onTab={onTab} />],
    ["insert", <Insert state={state} own={own} chosen={known} host={host} onTab={onTab} />],
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
