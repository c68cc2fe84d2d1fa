import { Button, makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { useEffect, useRef } from "react";
import { Measure } from "../../core/formula";
import { cellOf, kindText, measure, originText, percentText, properties, verdictText } from "../../core/grade";
import type { Duty, Grade, Library, Property, Ranked } from "../../core/grade";
import type { System } from "../../core/kinds";
import { quantityText } from "../duty/fields";
import { useShared } from "../parts/styles";
import { UseBar } from "./UseBar";
import { ownCautions } from "./words";

const useStyles = makeStyles({
  table: { tableLayout: "fixed" },
  heading: { color: tokens.colorNeutralForeground2, paddingTop: "8px !important", borderBottom: "0 !important" },
  none: { fontStyle: "italic", color: tokens.colorNeutralForeground2 },
});

interface Props {
  /** One grade with its sources, or up to three side by side. */
  ranked: readonly Ranked[];
  duty: Duty;
  library: Library;
  system: System;
  onBack(): void;
}

/** All properties of a grade, or of grades side by side. */
export function GradeSheet({ ranked, duty, library, system, onBack }: Props) {
  const s = useShared();
  const own = useStyles();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const alone = ranked.length === 1 ? ranked[0] : undefined;
  const criteria = [...new Set(ranked.flatMap(({ checks }) => checks.map((check) => check.criterion)))];
  return (
    <section className={s.panel} aria-label="Grades in full">
      <div className={s.row}>
        <Button size="small" onClick={onBack}>
          Back to the list
        </Button>
      </div>
      <h2 className={s.heading} tabIndex={-1} ref={heading}>
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
        <Line heading="verdict" cells={ranked.map((one) => verdictText(one, system))} />
        {criteria.map((criterion) => (
          <tbody key={criterion}>
            <tr>
              <th colSpan={ranked.length} scope="rowgroup" className={own.heading}>
                {criterion}
              </th>
            </tr>
            <tr>
              {ranked.map(({ grade, checks }) => {
                const check = checks.find((c) => c.criterion === criterion);
                return (
                  <td key={grade.name}>
                    {check && <UseBar check={check} />}
                    {checkWords(check, system)}
                  </td>
                );
              })}
            </tr>
          </tbody>
        ))}
      </table>
      <table className={mergeClasses(s.table, own.table)}>
        <caption className={s.quiet} style={{ textAlign: "left" }}>
          Properties
        </caption>
        <Names ranked={ranked} />
        <Line heading="kind" cells={ranked.map(({ grade }) => kindText[grade.kind])} />
        {properties
          .filter((p) => p.key !== "grade" && p.key !== "kind")
          .map((p) => (
            <tbody key={p.key}>
              <tr>
                <th colSpan={ranked.length} scope="rowgroup" className={own.heading} title={p.text}>
                  {p.heading}
                </th>
              </tr>
              <tr>
                {ranked.map(({ grade }) => (
                  <td key={grade.name}>
                    <Value grade={grade} property={p} system={system} />
                  </td>
                ))}
              </tr>
            </tbody>
          ))}
        {alone?.grade.extra.map(([name, text]) => (
          <Line key={name} heading={`${name} (own column, not used)`} cells={[text]} />
        ))}
      </table>
    </section>
  );
}

function Names({ ranked }: { ranked: readonly Ranked[] }) {
  if (ranked.length === 1) return null;
  return (
    <thead>
      <tr>
        {ranked.map(({ grade }) => (
          <th key={grade.name} scope="col">
            {grade.name}
          </th>
        ))}
      </tr>
    </thead>
  );
}

function Line({ heading, cells }: { heading: string; cells: readonly string[] }) {
  const own = useStyles();
  return (
    <tbody>
      <tr>
        <th colSpan={cells.length} scope="rowgroup" className={own.heading}>
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

function checkWords(check: Ranked["checks"][number] | undefined, system: System): string {
  if (!check) return "not asked";
  const { kind, value, limit, use, verdict } = check;
  if (verdict === "no data") return "no data";
  const said = (x: number) => quantityText(kind, x, system);
  const numbers = value !== undefined && limit !== undefined ? `: ${said(value)}, limit ${said(limit)}` : "";
  return `${use === undefined ? "" : `${percentText(use)}, `}${verdict}${numbers}`;
}

function Value({ grade, property, system }: { grade: Grade; property: Property; system: System }) {
  const own = useStyles();
  const s = useShared();
  const cell = cellOf(grade, property, system);
  if (cell === undefined) return <span className={own.none}>no data</span>;
  const text = cell instanceof Measure ? measure(cell.kind, cell.value, system) : String(cell);
  const hasSource = property.group !== "identity";
  return (
    <>
      {text}
      {hasSource && <p className={s.quiet}>{originText(grade, property.key)}</p>}
    </>
  );
}
