import misses from "../../../../data/misses.json";
import type { PropertyKey, Values } from "../../grades/model/properties";
import { statedAt } from "../../heat/derating";
import type { System } from "../../kinds";
import { measureText } from "../../measure";
import { present } from "../../present";
import {
  criterion,
  figure,
  holds,
  inFigures,
  isMissing,
  joined,
  lacking,
  rounding,
  withoutData,
  worse,
} from "../judging/criterion";
import type { Finding } from "../judging/criterion";
import type { Duty } from "../model/duty";
import { pathFields, pathRises, pathWorking } from "../model/heatPaths";
import type { Ends } from "../model/heatPaths";
import { impliedRise } from "../model/temperatures";

/** Above this highest temperature, °C, friction that falls with heat makes the straight line err on the unsafe side. */
const straightUpTo = 150;
/** How many times the line's rise it may then be, as measured at half of the limit and 250 °C. */
const bent = misses.halfLimitRise.at250;

export const boreTemperature = criterion(
  {
    id: "boreTemperature",
    heading: "bore temperature",
    kind: "temperature",
    text: "Surroundings plus the rise that the PV implies, against the grade's highest temperature; above 150 °C care is told where friction that falls with heat may take it beyond. With the housing's conductance or the exposed length of the shaft's ends also by these ways out, and the higher counts; where the conductance is not known, care if the grade bears the lower end only. Of a flanged bush the hotter of sleeve and flange",
    asked: "in motion",
    fields: [
      ...([
        "temperature",
        "load",
        "axialLoad",
        "motion",
        "wall",
        "outside",
        "flangeOutside",
        "flangeThickness",
        "shaft",
      ] as const),
      ...pathFields,
    ],
    properties: ["pvLimit", "highestTemperature", "frictionHigh", "conductivity"],
    source: [
      { key: "own", at: "steady heat balance: the limit drove the bore to its highest temperature at 23 °C" },
      { key: "incropera", at: "radial conduction in a cylinder; extended surfaces" },
      { key: "own", at: "sleeve and flange as two nodes of one shaft" },
    ],
    asks: ({ isMoving }) => isMoving,
    working: (values, duty) => {
      const { pvLimit, highestTemperature: most } = values;
      const surroundings = duty.temperature.high;
      if (pvLimit === undefined || most === undefined || surroundings >= most) return undefined;
      const known = {
        T: figure(surroundings, "temperature", "Surroundings"),
        T_max: figure(most, "temperature", "Highest temperature", "highestTemperature"),
        PV: figure(duty.pv, "pv", "Pressure times speed of the duty"),
      };
      const stated = {
        T_ref: figure(statedAt, "temperature", "Temperature at which the limit is stated"),
        PV_ref: figure(pvLimit, "pv", "PV limit as stated", "pvLimit"),
      };
      const byPv = "T + (T_max - T_ref) * PV / PV_ref";
      const end = { lines: ["Z = T_max", "u = (V - T) / (T_max - T)"], known: { ...known, ...stated } };
      const paths = byPaths(values, duty);
      const isByPaths = paths !== undefined && worse(byLimit(values, duty), paths) === paths;
      const isGreatest = paths?.word === "fits";
      if (!paths || paths.value === undefined || paths.value === surroundings)
        return isByPaths ? undefined : joined({ lines: [`V = ${byPv}`], known: {} }, end);
      return joined(
        pathWorking(values, duty, isGreatest ? "greatest" : "least"),
        {
          lines: [`T_a = ${byPv}`, "T_b = T + ΔT", `V = ${isByPaths ? "T_b" : "T_a"}`],
          known: {},
          between: {
            T_a: { unit: "°C", text: "Bore temperature that the PV limit implies" },
            T_b: { unit: "°C", text: "Bore temperature by the ways out for the heat" },
          },
        },
        end,
      );
    },
  },
  (values, duty) => {
    const implied = byLimit(values, duty);
    const paths = byPaths(values, duty);
    if (!paths) return implied;
    const found = worse(implied, paths);
    return {
      ...found,
      room: () => [-greatestRise(values, duty)],
      notes: (system, finding) => [...(found.notes?.(system, finding) ?? []), ...both(system, implied, values, duty)],
    };
  },
);

/** Both ways to the temperature, of which the worse is judged; of a flanged bush both its surfaces. */
function both(system: System, implied: Finding, values: Values, duty: Duty): string[] {
  const rises = pathRises(values, duty);
  if (rises === undefined || isMissing(rises)) return [];
  const at = ({ least, greatest }: Ends): string => endsText(duty.temperature.high, least, greatest, system);
  const { surfaces } = rises;
  const ways = surfaces ? `sleeve ${at(surfaces.sleeve)}, flange ${at(surfaces.flange)}` : at(rises);
  const limit =
    implied.value === undefined
      ? []
      : [`${measureText("temperature", implied.value, system, 4)} as the PV limit implies`];
  return [...limit, `${ways} by the ways out for the heat`];
}

/** Both ends of a bore temperature; nothing bounds that of a bush without any known way out for its heat. */
function endsText(surroundings: number, least: number, greatest: number, system: System): string {
  const [low, high] = [least, greatest].map((rise) => measureText("temperature", surroundings + rise, system, 4));
  if (greatest === Infinity) return `${low} or more`;
  return low === high ? present(low) : `${low} to ${high}`;
}

/** By the ways out for the heat, which are told also where the PV limit implies more. */
function greatestRise(values: Values, duty: Duty): number {
  const rises = pathRises(values, duty);
  return rises === undefined || isMissing(rises) ? 0 : rises.greatest;
}

/** By the PV limit of the grade. */
function byLimit(values: Values, duty: Duty): Finding {
  const rise = impliedRise(values, duty);
  if (typeof rise !== "number") return lacking(rise);
  const surroundings = duty.temperature.high;
  const limit = present(values.highestTemperature);
  const value = surroundings + rise;
  if (surroundings >= limit - rounding)
    return {
      word: "fails",
      figures,
      value,
      limit,
      property,
      say: () => "bore temperature: no room for friction heat",
    };
  const use = rise / (limit - surroundings);
  const { frictionLow, frictionHigh, pvLimit } = values;
  const share =
    frictionLow && frictionHigh ? Math.min(1, (duty.pv * frictionHigh) / (frictionLow * present(pvLimit))) : 0;
  // a PV that is allowed drives no bore beyond the temperature that it was stated for
  const most = holds(use) ? limit : Infinity;
  const upper = share > 0 ? Math.min(most, surroundings + Math.max(rise, (limit - statedAt) * share)) : undefined;
  if (!holds(use)) return inFigures("fails", figures, value, limit, use, property, tellUpper, upper);
  if (limit <= straightUpTo || surroundings + bent * rise <= limit + rounding)
    return inFigures("fits", figures, value, limit, use, property, tellUpper, upper);
  const say = (system: System) =>
    `bore ${measureText("temperature", value, system, 4)}: friction that falls with heat may take it above ${measureText("temperature", limit, system, 4)}`;
  return { word: "care", figures, value, limit, upper, use, property, notes: tellUpper, say };
}

/** By the duty's own ways out for the heat; nothing where it gives none. */
function byPaths(values: Values, duty: Duty): Finding | undefined {
  const rises = pathRises(values, duty);
  if (rises === undefined) return undefined;
  if (isMissing(rises)) return withoutData(rises);
  const limit = values.highestTemperature;
  if (limit === undefined) return lacking("highestTemperature");
  const surroundings = duty.temperature.high;
  const room = limit - surroundings;
  const counted = [property, ...rises.figures] as const;
  const [least, greatest] = [surroundings + rises.least, surroundings + rises.greatest];
  const found = { figures: counted, limit, upper: greatest, property } as const;
  if (room <= 0) return { word: "fails", ...found, value: least };
  const [use, most] = [rises.least / room, rises.greatest / room];
  if (holds(most)) return { word: "fits", ...found, value: greatest, use: most };
  if (!holds(use)) return { word: "fails", ...found, value: least, use };
  const say = (system: System) =>
    `bore ${endsText(surroundings, rises.least, rises.greatest, system)}: find out the housing's conductance`;
  return { word: "care", ...found, value: least, use, say };
}

const figures: readonly PropertyKey[] = ["pvLimit", "highestTemperature"];
const property = "highestTemperature";
const tellUpper: Finding["notes"] = (system, { upper }) =>
  upper === undefined
    ? []
    : [`up to ${measureText("temperature", upper, system, 4)} where friction is at its high figure`];
