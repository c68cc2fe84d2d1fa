import { Field as FieldBox } from "@fluentui/react-components";
import { useState } from "react";
import type { NamedDuty, Ranked } from "../../core/duties";
import { kinds } from "../../core/kinds";
import { Find } from "../find/Find";
import { Choice } from "../parts/fields";
import { useShared } from "../parts/styles";
import { Unjudged } from "../parts/Unjudged";
import { mostChosen } from "../state/list";
import type { PaneState } from "../state/usePane";
import { BarChart } from "./BarChart";
import { boreFigure } from "../figures/bore";
import { edgeFigure } from "../figures/edge";
import { Figure } from "./Figure";
import { isUntold } from "../figures/told";
import type { Subject } from "../figures/told";
import { fitFigure } from "../figures/fit";
import { LineChart } from "./LineChart";
import { letters, pvFigure } from "../figures/pv";
import { PvChart } from "./PvChart";
import { roomFigure } from "../figures/room";
import { SweepChart } from "./SweepChart";
import { wearFigure } from "../figures/wear";

/** Pictures of the duty with a grade; there are no inputs of their own but what to draw. */
export function Charts({ pane }: { pane: PaneState }) {
  const s = useShared();
  const { judged: duty, ranked, subjects } = pane;
  const [name, setName] = useState("");
  const one = ranked.find(({ grade }) => grade.name === name) ?? ranked.find(({ grade }) => grade.name === subjects[0]);
  if (!duty || !one)
    return (
      <section className={s.panel} aria-label="Charts">
        <Unjudged pane={pane}>The charts show where a duty stands inside a grade's limits.</Unjudged>
      </section>
    );
  return (
    <section className={s.panel} aria-label="Charts">
      <FieldBox label="Grade of the bush">
        <Choice value={one.grade.name} onChange={(_, { value }) => setName(value)}>
          {ranked.map(({ grade }) => (
            <option key={grade.name}>{grade.name}</option>
          ))}
        </Choice>
      </FieldBox>
      <Pictures pane={pane} duty={duty} one={one} />
    </section>
  );
}

function Pictures({ pane, duty, one }: { pane: PaneState; duty: NamedDuty; one: Ranked }) {
  const s = useShared();
  const { system } = pane.duty;
  const subject: Subject = { duty, one, system, library: pane.own.library };
  const shared = { pane, grade: one.grade.name };
  const others = pane.ranked.filter(({ grade }) => pane.chosen.includes(grade.name) && grade !== one.grade);
  const pv = pvFigure(duty, [one, ...others].slice(0, mostChosen), system);
  const legend = isUntold(pv) ? undefined : pv.curves.map((curve, i) => `${letters[i]}: ${curve.name}`);
  const fit = fitFigure(subject);
  const bore = boreFigure(subject);
  const edge = edgeFigure(subject);
  const wear = wearFigure(subject);
  const room = roomFigure(subject);
  const length = kinds.length[system];
  return (
    <>
      <Figure {...shared} title="Pressure and speed" told={pv} legend={legend}>
        {(id) =>
          !isUntold(pv) && (
            <>
              <PvChart curves={pv.curves} points={pv.points} system={system} summaryId={id} />
              <p className={s.quiet}>{pv.notes.join(" ")}</p>
            </>
          )
        }
      </Figure>
      <Figure {...shared} title="Clearance and grip" told={fit}>
        {(id) =>
          !isUntold(fit) && (
            <>
              <BarChart bars={fit.clearance} axis={`running clearance, ${length}`} summaryId={id} />
              <BarChart bars={fit.grip} axis={`least interference left, ${length}`} summaryId={id} />
            </>
          )
        }
      </Figure>
      <Figure {...shared} title="Bore temperature" told={bore}>
        {(id) =>
          !isUntold(bore) && (
            <BarChart
              bars={bore.bars}
              axis={`${kinds.temperature[system]}; the dashed line is the grade's highest`}
              limit={bore.limit}
              summaryId={id}
            />
          )
        }
      </Figure>
      <Figure {...shared} title="Edge pressure and tilt" told={edge}>
        {(id) =>
          !isUntold(edge) && (
            <LineChart
              x={edge.tilts}
              xName="slope of the shaft, °"
              lines={edge.lines}
              yName={`edge pressure, ${kinds.pressure[system]}`}
              limit={edge.limit === undefined ? undefined : { name: "compressive strength", at: edge.limit }}
              mark={{ name: "duty", at: edge.slope }}
              summaryId={id}
            />
          )
        }
      </Figure>
      <Figure {...shared} title="Wear over the hours" told={wear}>
        {(id) =>
          !isUntold(wear) && (
            <LineChart
              x={wear.hours}
              xName="running hours"
              lines={wear.lines}
              yName={`wear depth, ${length}`}
              limit={wear.allowance === undefined ? undefined : { name: "allowance", at: wear.allowance }}
              mark={wear.wanted === undefined ? undefined : { name: "wanted", at: wear.wanted }}
              summaryId={id}
            />
          )
        }
      </Figure>
      <Figure {...shared} title="How far each number may move" told={room}>
        {(id) => (
          <BarChart
            bars={room.bars}
            axis="of its value; the ends are where the verdict turns"
            tickText={(share) => `${share > 0 ? "+" : ""}${Math.round(share * 100)} %`}
            summaryId={id}
          />
        )}
      </Figure>
      <SweepChart pane={pane} subject={subject} rooms={room.rooms} />
      <Find pane={pane} subject={subject} rooms={room.rooms} />
    </>
  );
}
