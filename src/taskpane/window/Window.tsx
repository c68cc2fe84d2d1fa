import { Button } from "@fluentui/react-components";
import { useId } from "react";
import { verdictText } from "../../core/duties";
import type { NamedDuty, Ranked } from "../../core/duties";
import { kinds } from "../../core/kinds";
import type { System } from "../../core/kinds";
import { figuresOf, isMoving } from "../state/figures";
import { bareNumber } from "../state/quantity";
import type { PaneState } from "../state/usePane";
import { ColumnHeadings } from "../parts/ColumnHeadings";
import { Notice } from "../parts/Notice";
import { useShared } from "../parts/styles";
import { mostChosen } from "../state/list";
import { Clearance } from "./Clearance";
import { PvChart, letters } from "./PvChart";
import { bearsNothing, boundsOf, hardest, pointsOf, pvOf } from "./outline";

/** Where the duty stands inside the limits of the chosen grades; without a choice, of the first ones of the list. */
export function Window({ pane }: { pane: PaneState }) {
  const { duty: state, judged: duty, ranked, chosen, goTo } = pane;
  const s = useShared();
  const { system } = state;
  const shown =
    chosen.length > 0
      ? chosen.flatMap((name) => ranked.filter(({ grade }) => grade.name === name))
      : ranked.slice(0, mostChosen);
  if (!duty)
    return (
      <section className={s.panel} aria-label="Window">
        <Notice
          intent="info"
          title="No duty yet."
          actions={<Button onClick={() => goTo("duty")}>State the duty</Button>}
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
      {isMoving(duty) ? <Moving duty={duty} shown={shown} system={system} /> : <AtRest shown={shown} system={system} />}
      <h2 className={s.heading}>Clearance</h2>
      <Clearance system={system} duty={duty} grades={shown.map(({ grade }) => grade)} />
    </section>
  );
}

const verdict = (one: Ranked, system: System): string => verdictText(one.checks, system, one);

function AtRest({ shown, system }: { shown: readonly Ranked[]; system: System }) {
  const s = useShared();
  return (
    <>
      <p className={s.text}>At rest only the static pressure counts: there is no speed to draw.</p>
      <ul className={s.list}>
        {shown.map((one) => (
          <li key={one.grade.name}>
            {one.grade.name}: {verdict(one, system)}
          </li>
        ))}
      </ul>
    </>
  );
}

function Moving({ duty, shown, system }: { duty: NamedDuty; shown: readonly Ranked[]; system: System }) {
  const s = useShared();
  const id = useId();
  const corner = hardest(duty);
  const points = pointsOf(corner);
  const curves = shown.map(({ grade }) => ({ name: grade.name, bounds: boundsOf(grade.values, corner) }));
  const { impactFactor } = corner;
  const drawn = curves.map(({ name, bounds }) => ({
    name,
    bounds: { ...bounds, pressure: bounds.pressure === undefined ? undefined : bounds.pressure / impactFactor },
  }));
  const bare = curves.flatMap(({ bounds }, i) => (bearsNothing(bounds) ? [letters[i]!] : []));
  const number = (kind: "pressure" | "speed" | "pv", value: number | undefined) =>
    value === undefined ? "no data" : value === 0 ? "none" : bareNumber(kind, value, system);
  const headings = [
    "what",
    ...(["pressure", "speed", "pv"] as const).map((kind) => `${kinds[kind].name}, ${kinds[kind][system]}`),
    "verdict",
  ];
  return (
    <>
      <PvChart curves={drawn} points={points} system={system} summaryId={id} />
      <p id={id} className={s.text}>
        {standsAt(duty, points.length, system)}{" "}
        {shown.map((one, i) => `${letters[i]}, ${one.grade.name}: ${verdict(one, system)}.`).join(" ")}
      </p>
      <p className={s.quiet}>
        Pressure in motion, speed and PV are drawn; the verdict looks at every criterion.
        {impactFactor > 1 && ` The limits of pressure are drawn divided by the impact factor of ${impactFactor}.`}
        {duty.bands.length > 0 && " Of each band the end with the greatest PV is drawn, the design factor counted."}
        {points.some(({ speed }) => speed === 0) &&
          " A speed of 0 lies at the left edge; there the static limit counts."}
        {bare.length > 0 && ` No limits are drawn for ${bare.join(" and ")}: too warm, so that nothing is borne.`}
      </p>
      <details>
        <summary className={s.summary}>Numbers behind the chart</summary>
        <div className={s.wide}>
          <table className={s.table}>
            <ColumnHeadings texts={headings} />
            <tbody>
              {points.map((point, i) => (
                <tr key={i}>
                  <th scope="row">{point.mark || "duty"}</th>
                  <td>
                    {bareNumber("pressure", point.pressure, system)}
                    {impactFactor > 1 && ` × ${impactFactor}`}
                  </td>
                  <td>{bareNumber("speed", point.speed, system)}</td>
                  <td>{bareNumber("pv", pvOf(point), system)}</td>
                  <td />
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
                  <td>{verdict(shown[i]!, system)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </details>
    </>
  );
}

/** Where the marks stand, in a sentence. */
function standsAt(duty: NamedDuty, steps: number, system: System): string {
  const { pressure, speed, pv } = figuresOf(duty, system);
  if (steps > 1) return `The ${steps} steps (numbered marks) reach ${pressure} and ${speed}, PV ${pv}.`;
  // the ends of bands do not come together: pressure and speed here need not be those of the mark
  return duty.bands.length > 0
    ? `The duty (filled mark at one end of its bands) reaches at most ${pressure} and ${speed}, PV ${pv}.`
    : `The duty (filled mark) runs at ${pressure} and ${speed}, PV ${pv}.`;
}
