import { FluentProvider, Tab, TabList, makeStyles, tokens } from "@fluentui/react-components";
import { Suspense, lazy, useEffect, useState } from "react";
import type { PaneHost } from "./host/host";
import { Guard } from "./parts/states";
import { tabNames, tabs } from "./state/tabs";
import type { TabName } from "./state/tabs";
import { themes } from "./host/theme";

const useStyles = makeStyles({
  root: {
    display: "flex",
    flexDirection: "column",
    height: "100%",
    minHeight: 0,
    backgroundColor: tokens.colorNeutralBackground1,
  },
  tabs: {
    flexShrink: 0,
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    justifyContent: "space-between",
    overflowX: "auto",
  },
  // six names fit in 320 px
  tab: {
    paddingLeft: "3px",
    paddingRight: "3px",
    "& .fui-Tab__content": { fontSize: tokens.fontSizeBase200, padding: 0 },
    // the room of the chosen name's bold letters
    "& .fui-Tab__content--reserved-space": { fontSize: tokens.fontSizeBase200 },
  },
  body: { flexGrow: 1, minHeight: 0, display: "flex", flexDirection: "column" },
  wait: { padding: "12px", display: "grid", gap: "14px" },
  line: { height: "32px", borderRadius: tokens.borderRadiusMedium, backgroundColor: tokens.colorNeutralBackground3 },
});

const Pane = lazy(() => import("./pane"));

/** The shell paints at once; forms, core and library come after it. */
export function App({ host }: { host: PaneHost }) {
  const s = useStyles();
  const [tab, setTab] = useState<TabName>("duty");
  const [theme, setTheme] = useState(host.theme);
  useEffect(() => host.watchTheme?.(() => setTheme(host.theme())), [host]);
  return (
    <FluentProvider
      theme={themes[theme]}
      className={s.root}
      style={{ colorScheme: theme === "dark" ? "dark" : "light" }}
    >
      <TabList
        className={s.tabs}
        size="small"
        selectedValue={tab}
        onTabSelect={(_, { value }) => setTab(value as TabName)}
        aria-label="Parts of the pane"
      >
        {tabNames.map((name) => (
          <Tab key={name} value={name} id={`tab-${name}`} className={s.tab}>
            {tabs[name]}
          </Tab>
        ))}
      </TabList>
      <div className={s.body} role="tabpanel" aria-labelledby={`tab-${tab}`}>
        <Guard>
          <Suspense fallback={<Waiting />}>
            <Pane tab={tab} onTab={setTab} host={host} />
          </Suspense>
        </Guard>
      </div>
    </FluentProvider>
  );
}

function Waiting() {
  const s = useStyles();
  return (
    <div className={s.wait} role="status" aria-label="The pane is loading">
      {Array.from({ length: 6 }, (_, i) => (
        <div key={i} className={s.line} />
      ))}
    </div>
  );
}
