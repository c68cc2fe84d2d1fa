import { Activity } from "react";
import type { ReactNode } from "react";
import { CellNote } from "./cell/CellNote";
import { DutyForm } from "./duty/DutyForm";
import { DutyLine } from "./duty/DutyLine";
import type { PaneHost } from "./host/host";
import { Insert } from "./insert/Insert";
import { Offers } from "./offers/Offers";
import { Own } from "./own/Own";
import { Notice } from "./parts/Notice";
import { Shortlist } from "./shortlist/Shortlist";
import { tabNames } from "./state/tabs";
import type { TabName } from "./state/tabs";
import { usePane } from "./state/usePane";
import type { PaneState } from "./state/usePane";
import { Charts } from "./charts/Charts";

interface Props {
  tab: TabName;
  onTab(tab: TabName): void;
  host: PaneHost;
}

/** One panel for each tab; what they share they find in the pane's state. */
const panels: Readonly<Record<TabName, (pane: PaneState) => ReactNode>> = {
  duty: (pane) => <DutyForm pane={pane} />,
  shortlist: (pane) => <Shortlist pane={pane} />,
  charts: (pane) => <Charts pane={pane} />,
  insert: (pane) => <Insert pane={pane} />,
  own: ({ own, duty, host }) => <Own own={own} system={duty.system} host={host} />,
  offers: (pane) => <Offers pane={pane} />,
};

/** Everything of the pane that needs the core. */
export default function Pane({ tab, onTab, host }: Props) {
  const pane = usePane(host, onTab);
  const { duty, own } = pane;
  return (
    <>
      {tab !== "duty" && <DutyLine duty={duty.read.duty} system={duty.system} />}
      {own.faults[0] && tab !== "own" && (
        <Notice intent="error" title="Own grades are not used.">
          {own.faults[0]}
        </Notice>
      )}
      {/* all panels stay, so that nothing typed in one is lost by a look at another */}
      {tabNames.map((name) => (
        <Activity key={name} mode={tab === name ? "visible" : "hidden"}>
          {panels[name](pane)}
        </Activity>
      ))}
      {!host.explainsCells && <CellNote port={host.port} />}
    </>
  );
}
