import { speedLimit } from "../../grades/model/limits";
import type { Motion } from "../../grades/model/limits";
import type { Values } from "../../grades/model/properties";
import { criterion, figure, lacking, ratio, worse } from "../judging/criterion";
import type { Finding } from "../judging/criterion";
import type { Duty } from "../model/duty";

/** The greatest speed of each motion; a washer's and a flange's faces run faster than their bore. */
function speedsOf({ steps }: Duty): readonly (readonly [Exclude<Motion, "static">, number])[] {
  const speeds: [Exclude<Motion, "static">, number][] = [];
  for (const { motion, bore, face } of steps) {
    if (motion === "static") continue;
    const speed = Math.max(bore?.speed ?? 0, face?.speed ?? 0);
    const known = speeds.find(([other]) => other === motion);
    if (known) known[1] = Math.max(known[1], speed);
    else speeds.push([motion, speed]);
  }
  return speeds;
}

function findingOf(values: Values, motion: Exclude<Motion, "static">, speed: number): Finding {
  const limit = speedLimit(values, motion);
  return limit.state === "known" ? ratio(figuresOf[motion], speed, limit.value, limit.key) : lacking(limit.key, speed);
}
const figuresOf = {
  turning: ["speedTurning"],
  swinging: ["speedSwinging"],
  linear: ["speedLinear"],
} as const;

/** The motion that comes nearest to its limit. */
const worstOf = (values: Values, duty: Duty) =>
  speedsOf(duty)
    .map(([motion, speed]) => ({ motion, speed, finding: findingOf(values, motion, speed) }))
    .reduce((a, b) => (worse(a.finding, b.finding) === a.finding ? a : b));

export const speed = criterion(
  {
    id: "speed",
    heading: "speed",
    kind: "speed",
    text: "The greatest sliding speed against the limit of its motion",
    asked: "in motion",
    fields: ["motion", "rpm", "swing", "stroke", "cycles", "bore", "inner", "outer", "flangeOutside"],
    properties: ["speedTurning", "speedSwinging", "speedLinear"],
    source: { key: "shigley", at: "lubrication and journal bearings: boundary-lubricated bearings" },
    asks: ({ isMoving }) => isMoving,
    working: (values, duty) => {
      const { motion, speed: fastest } = worstOf(values, duty);
      const limit = speedLimit(values, motion);
      if (limit.state !== "known") return undefined;
      return {
        lines: ["V = v", "Z = v_a", "u = V / Z"],
        known: {
          v: figure(fastest, "speed", "Sliding speed"),
          v_a: figure(limit.value, "speed", `Limit of ${motion} speed`, limit.key),
        },
      };
    },
  },
  (values, duty) => {
    const [only] = duty.steps;
    // the usual case, without a list in between
    if (only && duty.steps.length === 1 && only.motion !== "static")
      return findingOf(values, only.motion, Math.max(only.bore?.speed ?? 0, only.face?.speed ?? 0));
    return worstOf(values, duty).finding;
  },
);
