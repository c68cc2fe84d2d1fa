import { Button, mergeClasses } from "@fluentui/react-components";
import { Fragment, useCallback, useDeferredValue, useMemo, useState } from "react";
import { capitalised } from "../../core/capitalised";
import type { Ranked } from "../../core/duties";
import { standingCautions } from "../../core/grades/cautionsOf";
import { kindText } from "../../core/grades/model";
import { present } from "../../core/present";
import { Notice } from "../parts/Notice";
import { useShared } from "../parts/styles";
import { Unjudged } from "../parts/Unjudged";
import { kindsInOrder, mostChosen } from "../state/list";
import type { PaneState } from "../state/usePane";
import { filterRanked, noFilter } from "./filter";
import type { Order } from "./filter";
import { FilterBar } from "./FilterBar";
import { GradeSheet } from "./GradeSheet";
import { Item } from "./Item";
import { NeededNote } from "./NeededNote";
import { NotAsked } from "./NotAsked";
import { useStyles } from "./styles";
import { countWords } from "./words";

/** So many grades of a kind are drawn at a time. */
const portion = 200;

export function Shortlist({ pane }: { pane: PaneState }) {
  const { judged: duty, ranked, chosen, setChosen, shown, setShown } = pane;
  const { library } = pane.own;
  const { system } = pane.duty;
  const s = useShared();
  const own = useStyles();
  const [filter, setFilter] = useState(noFilter);
  const [order, setOrder] = useState<Order>("rank");
  const [most, setMost] = useState(portion);
  const wanted = useDeferredValue(filter);
  const { list, fault } = useMemo(() => filterRanked(ranked, wanted, order, system), [ranked, wanted, order, system]);

  // of what is chosen when the box is ticked, since an item that did not change is not drawn anew
  const toggle = useCallback(
    (name: string) =>
      setChosen((now) =>
        now.includes(name) ? now.filter((other) => other !== name) : [...now, name].slice(-mostChosen),
      ),
    [setChosen],
  );

  if (!duty)
    return (
      <section className={s.panel} aria-label="Shortlist">
        <Unjudged pane={pane}>The grades are judged for a load, a size, a motion and a temperature.</Unjudged>
      </section>
    );

  const [first, ...others] = shown.flatMap((name) => ranked.filter(({ grade }) => grade.name === name));
  if (first)
    return (
      <GradeSheet
        ranked={[first, ...others]}
        duty={duty}
        library={library}
        system={system}
        onBack={() => setShown([])}
      />
    );

  return (
    <section className={s.panel} aria-label="Shortlist">
      <FilterBar filter={filter} setFilter={setFilter} order={order} setOrder={setOrder} system={system} />
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
      <NeededNote pane={pane} />
      <NotAsked checks={present(ranked[0]).checks} duty={duty} />
      {list.length === 0 && <p className={s.text}>No grade passes the filter. Widen it, or clear it.</p>}
      {groupsOf(list, order).map(({ name, grades }) => (
        <Fragment key={name}>
          {name && (
            <h2 className={s.minor}>
              {name}: {countWords(grades)}
            </h2>
          )}
          <ol className={own.list} aria-label={name || "Grades"}>
            {grades.slice(0, most).map((one) => (
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
          {grades.length > most && (
            <Button size="small" onClick={() => setMost(most + portion)}>
              Show {Math.min(portion, grades.length - most)} more of {grades.length}
            </Button>
          )}
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
    .map((kind) => ({ name: capitalised(kindText[kind]), grades: list.filter(({ grade }) => grade.kind === kind) }))
    .filter(({ grades }) => grades.length > 0);
}

const countText = (list: readonly Ranked[], all: number): string =>
  `${list.length === all ? `${all} grades` : `${list.length} of ${all} grades`}, ${countWords(list)}`;

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
