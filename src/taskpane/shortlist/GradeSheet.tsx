import { Button, makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { useEffect, useRef } from "react";
import type { ReactNode } from "react";
import { Measure } from "../../core/formula";
import { criteria, found, reasonOf, verdictText } from "../../core/duties";
import type { Check, NamedDuty, Ranked } from "../../core/duties";
import { propertyCell, kindText, originText, properties } from "../../core/grades/model";
import type { Grade, Library, Property } from "../../core/grades/model";
import type { System } from "../../core/kinds";
import { measureText, percentText } from "../../core/measure";
import { present } from "../../core/present";
import { quantityText } from "../state/quantity";
import { ColumnHeadings } from "../parts/ColumnHeadings";
import { useShared } from "../parts/styles";
import { checkScores, scoreOf, sideWords } from "./better";
import { NotAsked } from "./NotAsked";
import { UseBar } from "./UseBar";
import { dataText, ownCautions } from "./words";

const useStyles = makeStyles({
  table: { tableLayout: "fixed" },
  heading: { color: tokens.colorNeutralForeground2, paddingTop: "8px !important", borderBottom: "0 !important" },
  none: { fontStyle: "italic", color: tokens.colorNeutralForeground2 },
});

interface Props {
  /** One grade with its sources, or up to three side by side. */
  ranked: readonly [Ranked, ...Ranked[]];
  duty: NamedDuty;
  library: Library;
  system: System;
  onBack(): void;
}

/** All properties of a grade, or of grades side by side. */
export function GradeSheet({ ranked, duty, library, system, onBack }: Props) {
  const s = useShared();
  const own = useStyles();
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => title.current?.focus(), []);
  const alone = ranked.length === 1 ? ranked[0] : undefined;
  // the duty alone asks, so that every grade answers the same criteria
  const asked = new Set(ranked[0].checks.map(({ criterion }) => criterion.id));
  return (
    <section className={s.panel} aria-label="Grades in full">
      <div className={s.row}>
        <Button size="small" onClick={onBack}>
          Back to the list
        </Button>
      </div>
      <h2 className={s.heading} tabIndex={-1} ref={title}>
        {alone ? alone.grade.name : "Side by side"}
      </h2>
      {alone && (
        <ul className={mergeClasses(s.list, s.quiet)}>
          {ownCautions(alone, duty, system, library).map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      )}
      <table className={mergeClasses(s.table, own.table)}>
        <caption className={s.quiet} style={{ textAlign: "left" }}>
          How the duty uses {alone ? "it" : "them"}
        </caption>
        <Names ranked={ranked} />
        <Line
          heading="verdict"
          cells={ranked.map((one) => `${verdictText(one.checks, system, one)} (${dataText(one)})`)}
        />
        {criteria
          .filter(({ id }) => asked.has(id))
          .map(({ id, heading, text }) => {
            const checks = ranked.map((one) => present(found(one.checks, id)));
            const sides = sideWords(checkScores(checks));
            return (
              <Line
                key={id}
                heading={heading}
                title={text}
                cells={checks.map((check, i) => (
                  <>
                    <Checked check={check} system={system} />
                    <Side word={present(sides[i])} />
                  </>
                ))}
              />
            );
          })}
      </table>
      <NotAsked checks={ranked[0].checks} duty={duty} />
      <table className={mergeClasses(s.table, own.table)}>
        <caption className={s.quiet} style={{ textAlign: "left" }}>
          Properties
        </caption>
        <Names ranked={ranked} />
        <Line heading="kind" cells={ranked.map(({ grade }) => kindText[grade.kind])} />
        {properties
          .filter((p) => p.key !== "grade" && p.key !== "kind")
          .map((p) => {
            const sides = sideWords(ranked.map(({ grade }) => scoreOf(grade, p)));
            return (
              <Line
                key={p.key}
                heading={p.heading}
                title={p.text}
                cells={ranked.map(({ grade }, i) => (
                  <>
                    <Value grade={grade} property={p} system={system} />
                    <Side word={present(sides[i])} />
                  </>
                ))}
              />
            );
          })}
        {alone?.grade.extra.map(([name, text]) => (
          <Line key={name} heading={`${name} (own column, not used)`} cells={[text]} />
        ))}
      </table>
    </section>
  );
}

function Names({ ranked }: { ranked: readonly Ranked[] }) {
  return ranked.length === 1 ? null : <ColumnHeadings texts={ranked.map(({ grade }) => grade.name)} />;
}

function Line({ heading, title, cells }: { heading: string; title?: string; cells: readonly ReactNode[] }) {
  const own = useStyles();
  return (
    <tbody>
      <tr>
        <th colSpan={cells.length} scope="rowgroup" className={own.heading} title={title}>
          {heading}
        </th>
      </tr>
      <tr>
        {cells.map((cell, i) => (
          <td key={i}>{cell}</td>
        ))}
      </tr>
    </tbody>
  );
}

/** Which of the grades side by side is better in this line. */
const Side = ({ word }: { word: string }) =>
  word && (
    <>
      {" "}
      <strong>{word}</strong>
    </>
  );

/** Word, numbers and reason of one criterion. */
function Checked({ check, system }: { check: Check; system: System }) {
  const { criterion, word, say, value, limit, use } = check;
  const said = (x: number) => quantityText(criterion.kind, x, system);
  const numbers = value !== undefined && limit !== undefined ? `: ${said(value)}, limit ${said(limit)}` : "";
  const reason = say || word === "no data" ? ` (${reasonOf(check, system)})` : "";
  return (
    <>
      <UseBar use={use} word={word} />
      {`${use === undefined ? "" : `${percentText(use)}, `}${word}${numbers}${reason}`}
    </>
  );
}

function Value({ grade, property, system }: { grade: Grade; property: Property; system: System }) {
  const own = useStyles();
  const s = useShared();
  const cell = propertyCell(grade, property, system);
  if (cell === undefined) return <span className={own.none}>no data</span>;
  const text = cell instanceof Measure ? measureText(cell.kind, cell.value, system) : String(cell);
  const hasSource = property.group !== "identity";
  return (
    <>
      {text}
      {hasSource && <p className={s.quiet}>{originText(grade, property.key)}</p>}
    </>
  );
}
