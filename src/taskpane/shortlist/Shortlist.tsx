import { Button, makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { Fragment, memo, useDeferredValue, useMemo, useState } from "react";
import { verdictText } from "../../core/duties";
import type { NamedDuty, Ranked } from "../../core/duties";
import { kindText } from "../../core/grades/model";
import type { GradeKind, Library, PropertyKey } from "../../core/grades/model";
import type { System } from "../../core/kinds";
import { standingCautions } from "../../core/grades/cautionsOf";
import { Choice, TextBox } from "../parts/fields";
import { Notice } from "../parts/Notice";
import { useShared } from "../parts/styles";
import { counted } from "../parts/words";
import type { PaneState } from "../state/usePane";
import { boundUnit, filterRanked, noFilter, numberProperties } from "./filter";
import type { Filter, Order } from "./filter";
import { GradeSheet } from "./GradeSheet";
import { NotAsked } from "./NotAsked";
import { UseBar } from "./UseBar";
import { kindsInOrder, mostChosen } from "../state/list";
import { countWords, dataText, ownCautions, reasonsOf } from "./words";

const useStyles = makeStyles({
  filters: { display: "grid", gap: "8px" },
  bound: { display: "grid", gridTemplateColumns: "minmax(0, 1fr) minmax(0, 1fr)", gap: "8px" },
  list: { listStyle: "none", margin: 0, padding: 0, display: "flex", flexDirection: "column", flexShrink: 0 },
  item: {
    // rows outside the view cost neither layout nor paint, so that 500 of them scroll smoothly
    contentVisibility: "auto",
    containIntrinsicSize: "auto 96px",
    padding: "10px 0",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    display: "grid",
    gap: "4px",
  },
  top: { display: "flex", alignItems: "baseline", gap: "8px" },
  name: {
    flexGrow: 1,
    minWidth: 0,
    textAlign: "left",
    font: "inherit",
    fontWeight: tokens.fontWeightSemibold,
    color: tokens.colorBrandForegroundLink,
    background: "none",
    border: 0,
    padding: 0,
    cursor: "pointer",
    overflowWrap: "anywhere",
    textDecorationLine: "underline",
    textUnderlineOffset: "2px",
  },
  choose: { display: "flex", alignItems: "center", gap: "4px", fontSize: tokens.fontSizeBase200, whiteSpace: "nowrap" },
  box: { accentColor: tokens.colorBrandForeground1, margin: 0, width: "16px", height: "16px" },
  // sticks at the very top, above the panel's padding, so that nothing scrolls past over it
  chosen: {
    position: "sticky",
    top: "-12px",
    zIndex: 1,
    backgroundColor: tokens.colorNeutralBackground1,
    marginTop: "-12px",
    padding: "12px 0 4px",
  },
});

export function Shortlist({ pane }: { pane: PaneState }) {
  const { judged: duty, ranked, chosen, setChosen, shown, setShown, goTo } = pane;
  const { library } = pane.own;
  const { system } = pane.duty;
  const s = useShared();
  const own = useStyles();
  const [filter, setFilter] = useState(noFilter);
  const [order, setOrder] = useState<Order>("rank");
  const wanted = useDeferredValue(filter);
  const { list, fault } = useMemo(() => filterRanked(ranked, wanted, order, system), [ranked, wanted, order, system]);

  if (!duty)
    return (
      <section className={s.panel} aria-label="Shortlist">
        <Notice
          intent="info"
          title="No duty yet."
          actions={<Button onClick={() => goTo("duty")}>State the duty</Button>}
        >
          The grades are judged for a load, a size, a motion and a temperature.
        </Notice>
      </section>
    );

  const sheet = shown.flatMap((name) => ranked.filter(({ grade }) => grade.name === name));
  if (sheet.length > 0)
    return <GradeSheet ranked={sheet} duty={duty} library={library} system={system} onBack={() => setShown([])} />;

  const toggle = (name: string) =>
    setChosen(chosen.includes(name) ? chosen.filter((other) => other !== name) : [...chosen, name].slice(-mostChosen));
  return (
    <section className={s.panel} aria-label="Shortlist">
      <Filters filter={filter} setFilter={setFilter} order={order} setOrder={setOrder} system={system} />
      {fault && <Notice intent="error">{fault}</Notice>}
      <div className={mergeClasses(s.row, own.chosen)}>
        <span role="status" className={s.quiet}>
          {countText(list, ranked.length)}
        </span>
        {chosen.length > 1 && (
          <Button size="small" appearance="primary" onClick={() => setShown(chosen)}>
            Compare {chosen.length}
          </Button>
        )}
      </div>
      <NotAsked checks={ranked[0]!.checks} duty={duty} />
      {list.length === 0 && <p className={s.text}>No grade passes the filter. Widen it, or clear it.</p>}
      {groupsOf(list, order).map(({ name, grades }) => (
        <Fragment key={name}>
          {name && (
            <h2 className={s.minor}>
              {name}: {countWords(grades)}
            </h2>
          )}
          <ol className={own.list} aria-label={name || "Grades"}>
            {grades.map((one) => (
              <Item
                key={one.grade.name}
                one={one}
                duty={duty}
                library={library}
                system={system}
                isChosen={chosen.includes(one.grade.name)}
                toggle={toggle}
                show={setShown}
              />
            ))}
          </ol>
        </Fragment>
      ))}
      <Standing />
    </section>
  );
}

/** By kind where the list is ranked, since each kind is ranked for itself; else in one. */
function groupsOf(list: readonly Ranked[], order: Order): readonly { name: string; grades: readonly Ranked[] }[] {
  if (order !== "rank") return [{ name: "", grades: list }];
  return kindsInOrder
    .map((kind) => ({ name: capital(kindText[kind]), grades: list.filter(({ grade }) => grade.kind === kind) }))
    .filter(({ grades }) => grades.length > 0);
}
const capital = (text: string): string => `${text[0]!.toUpperCase()}${text.slice(1)}`;

const countText = (list: readonly Ranked[], all: number): string =>
  `${list.length === all ? `${all} grades` : `${list.length} of ${all} grades`}, ${countWords(list)}`;

interface ItemProps {
  one: Ranked;
  duty: NamedDuty;
  library: Library;
  system: System;
  isChosen: boolean;
  toggle(name: string): void;
  show(names: readonly string[]): void;
}

const Item = memo(
  function Item({ one, duty, library, system, isChosen, toggle, show }: ItemProps) {
    const s = useShared();
    const own = useStyles();
    const { grade, checks, word, use } = one;
    const reasons = reasonsOf(one, system);
    const cautions = ownCautions(one, duty, system, library);
    return (
      <li className={own.item}>
        <div className={own.top}>
          <button type="button" className={own.name} onClick={() => show([grade.name])}>
            {grade.name}
          </button>
          <label className={own.choose}>
            <input
              type="checkbox"
              className={own.box}
              checked={isChosen}
              onChange={() => toggle(grade.name)}
              aria-label={`Choose ${grade.name} to compare`}
            />
            compare
          </label>
        </div>
        <p className={s.quiet}>
          {kindText[grade.kind]}
          {grade.values.family && ` · ${grade.values.family}`} · {dataText(one)}
        </p>
        <p className={s.text}>
          <strong>{word}</strong>
          {verdictText(checks, system, one).slice(word.length)}
        </p>
        <UseBar use={use} word={word} />
        {reasons.length > 0 && (
          <ul className={s.list}>
            {reasons.map((reason) => (
              <li key={reason}>{reason}</li>
            ))}
          </ul>
        )}
        {cautions.length > 0 && (
          <details>
            <summary className={s.summary}>{counted(cautions.length, "caution")}</summary>
            <ul className={mergeClasses(s.list, s.quiet)}>
              {cautions.map((caution) => (
                <li key={caution}>{caution}</li>
              ))}
            </ul>
          </details>
        )}
      </li>
    );
  },
  (a, b) =>
    a.one === b.one && a.isChosen === b.isChosen && a.system === b.system && (a.isChosen || a.toggle === b.toggle),
);

/** What every verdict carries. */
export function Standing() {
  const s = useShared();
  return (
    <aside aria-label="Cautions that always hold">
      <ul className={mergeClasses(s.list, s.quiet)}>
        {standingCautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </aside>
  );
}

interface FilterProps {
  filter: Filter;
  setFilter(filter: Filter): void;
  order: Order;
  setOrder(order: Order): void;
  system: System;
}

function Filters({ filter, setFilter, order, setOrder, system }: FilterProps) {
  const s = useShared();
  const own = useStyles();
  const set = (part: Partial<Filter>) => setFilter({ ...filter, ...part });
  const unit = filter.property ? boundUnit(filter.property, system) : "";
  return (
    <div className={own.filters} role="search" aria-label="Sort and filter">
      <TextBox
        type="search"
        placeholder="Find by name, family or word"
        aria-label="Find by name, family or word"
        value={filter.text}
        onChange={(_, { value }) => set({ text: value })}
      />
      <details>
        <summary className={s.summary}>Sort and filter</summary>
        <div className={own.filters} style={{ marginTop: 8 }}>
          <div className={own.bound}>
            <Choice aria-label="Sort by" value={order} onChange={(_, { value }) => setOrder(value as Order)}>
              <option value="rank">by verdict</option>
              <option value="name">by name</option>
              {numberProperties.map((p) => (
                <option key={p.key} value={p.key}>
                  by {p.heading}
                </option>
              ))}
            </Choice>
            <Choice
              aria-label="Kind of grade"
              value={filter.kind}
              onChange={(_, { value }) => set({ kind: value as GradeKind | "" })}
            >
              <option value="">all kinds</option>
              {Object.entries(kindText).map(([kind, text]) => (
                <option key={kind} value={kind}>
                  {text}
                </option>
              ))}
            </Choice>
          </div>
          <Choice
            aria-label="Property to bound"
            value={filter.property}
            onChange={(_, { value }) => set({ property: value as PropertyKey | "" })}
          >
            <option value="">any property</option>
            {numberProperties.map((p) => (
              <option key={p.key} value={p.key}>
                {p.heading}
              </option>
            ))}
          </Choice>
          {filter.property !== "" && (
            <div className={own.bound}>
              <Choice
                aria-label="Side of the bound"
                value={filter.side}
                onChange={(_, { value }) => set({ side: value as Filter["side"] })}
              >
                <option value="least">at least</option>
                <option value="most">at most</option>
              </Choice>
              <TextBox
                aria-label="Bound"
                value={filter.bound}
                onChange={(_, { value }) => set({ bound: value })}
                unit={unit}
              />
            </div>
          )}
        </div>
      </details>
    </div>
  );
}
