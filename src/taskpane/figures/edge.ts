import { found, reasonOf, tilted } from "../../core/duties";
import { EDGEPRESSURE } from "../../core/loading/edgePressure";
import { kinds } from "../../core/kinds";
import { fromWorking } from "../../core/units/scale";
import { bareNumber, quantityText } from "../state/quantity";
import { spread } from "./told";
import type { Subject, Told, Untold } from "./told";
import type { Line } from "./told";
import { edgePiece } from "./pieces";

export interface EdgeFigure extends Told {
  readonly tilts: readonly number[];
  readonly lines: readonly Line[];
  readonly limit?: number | undefined;
  readonly slope: number;
}

const count = 13;

/** Lower and upper edge pressure against the slope of the shaft, up to twice that of the duty. */
export function edgeFigure({ one, system }: Subject): EdgeFigure | Untold {
  const { values, name } = one.grade;
  // of bands the corner at which the edge was judged
  const check = found(one.checks, "edgePressure");
  if (!check) return { why: "Edge pressure needs the slope of the shaft (or its span) and all fields of the fit." };
  const contact = tilted(values, check.duty);
  if (!contact) return { why: `${check.word}: ${reasonOf(check, system)}.` };
  const { layers, slope } = contact;
  const layer = layers.greatest;
  const tilts = spread(0, Math.max(2 * slope, 0.02), count);
  const points = tilts.flatMap((tilt) => {
    const answer = answerAt({ ...layer, tilt });
    return answer ? [{ tilt, ...answer }] : [];
  });
  const shown = (x: number) => fromWorking("pressure", x, system);
  const at = answerAt({ ...layer, tilt: slope });
  const limit = values.compressiveStrength;
  const said = (x: number) => quantityText("pressure", x, system);
  return {
    tilts: points.map(({ tilt }) => tilt),
    lines: [
      { name: "lower", values: points.map(({ low }) => shown(low)) },
      { name: "upper", values: points.map(({ high }) => shown(high)) },
    ],
    limit: limit === undefined ? undefined : shown(limit),
    slope,
    summary:
      at === undefined
        ? `${name}: at ${slope.toPrecision(3)}° both ends of the bush touch the shaft.`
        : `${name}: at ${Number(slope.toPrecision(3))}° the edge bears ${said(at.low)} to ${said(at.high)}${limit === undefined ? "" : `, compressive strength ${said(limit)}`}.`,
    numbers: {
      headings: ["slope, °", `lower, ${kinds.pressure[system]}`, `upper, ${kinds.pressure[system]}`, "contact"],
      rows: points.map(({ tilt, low, high, state }) => [
        String(tilt),
        bareNumber("pressure", low, system),
        bareNumber("pressure", high, system),
        state,
      ]),
    },
    piece: edgePiece(layer, tilts, name),
  };
}

/** Lower and upper pressure and how the shaft lies; nothing where both ends touch. */
function answerAt(
  values: Parameters<typeof EDGEPRESSURE.calc>[0],
): { low: number; high: number; state: string } | undefined {
  const [low, high, , contact] = EDGEPRESSURE.calc(values);
  return typeof low === "number" && typeof high === "number" ? { low, high, state: String(contact) } : undefined;
}
