import { Button } from "@fluentui/react-components";
import { useId, useMemo } from "react";
import { assess, rank, verdictOf, verdictText } from "../../core/grade";
import type { Duty, Grade, Library } from "../../core/grade";
import { kinds } from "../../core/kinds";
import type { System } from "../../core/kinds";
import type { TabName } from "../app";
import type { DutyState } from "../duty/DutyForm";
import { bareNumber, quantityText } from "../duty/fields";
import type { Spectrum } from "../duty/spectrum";
import { Notice } from "../parts/Notice";
import { useShared } from "../parts/styles";
import { mostChosen } from "../shortlist/Shortlist";
import { Clearance } from "./Clearance";
import { PvChart, letters } from "./PvChart";
import { boundsOf, pointOf, pvOf } from "./outline";
import type { Bounds } from "./outline";

interface Props {
  state: DutyState;
  library: Library;
  chosen: readonly string[];
  onTab(tab: TabName): void;
}

/** Where the duty stands inside the limits of the chosen grades; without a choice, of the first ones of the list. */
export function Window({ state, library, chosen, onTab }: Props) {
  const s = useShared();
  const { system, spectrum, read } = state;
  const { duty } = read;
  const grades = useMemo(() => {
    if (!duty) return [];
    if (chosen.length > 0) return chosen.flatMap((name) => library.grades.filter((g) => g.name === name));
    return rank(duty, library)
      .slice(0, mostChosen)
      .map(({ grade }) => grade);
  }, [duty, library, chosen]);
  if (!duty)
    return (
      <section className={s.panel} aria-label="Window">
        <Notice
          intent="info"
          title="No duty yet."
          actions={<Button onClick={() => onTab("duty")}>State the duty</Button>}
        >
          The chart shows where a duty stands inside a grade's limits.
        </Notice>
      </section>
    );
  return (
    <section className={s.panel} aria-label="Window">
      <p className={s.quiet}>
        {chosen.length > 0
          ? "The grades that you chose to compare."
          : "The first of the shortlist; choose others there to compare."}
      </p>
      <h2 className={s.heading}>Pressure and speed</h2>
      {duty.motion === "static" ? (
        <AtRest duty={duty} grades={grades} system={system} />
      ) : (
        <Moving duty={duty} grades={grades} spectrum={spectrum} system={system} />
      )}
      <h2 className={s.heading}>Clearance</h2>
      <Clearance state={state} library={library} grades={grades} />
    </section>
  );
}

function AtRest({ duty, grades, system }: { duty: Duty; grades: readonly Grade[]; system: System }) {
  const s = useShared();
  return (
    <>
      <p className={s.text}>At rest only the static pressure counts: there is no speed to draw.</p>
      <ul className={s.list}>
        {grades.map((grade) => (
          <li key={grade.name}>
            {grade.name}: {verdict(grade, duty, system)}
          </li>
        ))}
      </ul>
    </>
  );
}

const verdict = (grade: Grade, duty: Duty, system: System): string =>
  verdictText(verdictOf(assess(grade, duty)), system);

interface MovingProps {
  duty: Duty;
  grades: readonly Grade[];
  spectrum: Spectrum;
  system: System;
}

function Moving({ duty, grades, spectrum, system }: MovingProps) {
  const s = useShared();
  const id = useId();
  const curves = grades.map((grade) => ({ name: grade.name, bounds: boundsOf(grade, duty) }));
  const point = pointOf(duty);
  const steps = spectrum.steps.map((step) => pointOf(step.duty));
  const said = (kind: "pressure" | "speed" | "pv", value: number) => quantityText(kind, value, system);
  const number = (kind: "pressure" | "speed" | "pv", value: number | undefined) =>
    value === undefined ? "no data" : bareNumber(kind, value, system);
  const headings = [
    "what",
    ...(["pressure", "speed", "pv"] as const).map((kind) => `${kinds[kind].name}, ${kinds[kind][system]}`),
    "verdict",
  ];
  return (
    <>
      <PvChart curves={curves} point={point} steps={steps} system={system} summaryId={id} />
      <p id={id} className={s.text}>
        The duty (filled mark) runs at {said("pressure", point.pressure)} and {said("speed", point.speed)}, PV{" "}
        {said("pv", pvOf(point))}.{" "}
        {grades.map((grade, i) => `${letters[i]}, ${grade.name}: ${verdict(grade, duty, system)}.`).join(" ")}
        {spectrum.pv !== undefined && ` ${meanText(spectrum.pv, curves, system)}`}
        {point.speed === 0 && " A speed of 0 lies at the left edge of the chart."}
      </p>
      <details>
        <summary className={s.summary}>Numbers behind the chart</summary>
        <div className={s.wide}>
          <table className={s.table}>
            <thead>
              <tr>
                {headings.map((text) => (
                  <th key={text} scope="col">
                    {text}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              <tr>
                <th scope="row">duty</th>
                <td>{number("pressure", point.pressure)}</td>
                <td>{number("speed", point.speed)}</td>
                <td>{number("pv", pvOf(point))}</td>
                <td />
              </tr>
              {spectrum.steps.map((step, i) => (
                <tr key={i}>
                  <th scope="row">step {i + 1}</th>
                  <td>{number("pressure", steps[i]!.pressure)}</td>
                  <td>{number("speed", steps[i]!.speed)}</td>
                  <td>{number("pv", pvOf(steps[i]!))}</td>
                  <td>{grades.map((grade, g) => `${letters[g]}: ${verdict(grade, step.duty, system)}`).join("; ")}</td>
                </tr>
              ))}
              {curves.map(({ name, bounds }, i) => (
                <tr key={name}>
                  <th scope="row">
                    {letters[i]}, limits of {name}
                  </th>
                  <td>{number("pressure", bounds.pressure)}</td>
                  <td>{number("speed", bounds.speed)}</td>
                  <td>{number("pv", bounds.pv)}</td>
                  <td>{verdict(grades[i]!, duty, system)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </details>
    </>
  );
}

function meanText(pv: number, curves: readonly { bounds: Bounds }[], system: System): string {
  const against = curves.map(({ bounds }, i) => {
    if (bounds.pv === undefined) return `${letters[i]} no data`;
    return `${letters[i]} ${pv <= bounds.pv ? "holds it" : "does not"}`;
  });
  return `The steps (open marks) have a mean PV of ${quantityText("pv", pv, system)}: ${against.join(", ")}.`;
}
