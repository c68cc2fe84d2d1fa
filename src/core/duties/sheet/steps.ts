import { PVVALUE } from "../../loading/pvValue";
import { present } from "../../present";
import type { Work } from "../../teach/worksheet";
import { callsOf, restCall } from "../model/faces";
import type { Call, FaceCalls } from "../model/faces";
import type { Part } from "../model/fields";
import type { NamedDuty } from "../model/namedDuty";
import { callWork, sourcesText } from "./rows";
import type { Line, RecordWorkings } from "./rows";

/** Pressure, sliding speed and PV of every face of every step at a corner of the duty's bands; then the static load's pressure. */
export function stepLines(
  duty: NamedDuty,
  corner: number,
  record: RecordWorkings,
): readonly (readonly [string, Line[]])[] {
  const given = duty.givenAt(corner);
  const steps = duty.steps.flatMap(({ motion }, i) => {
    const { bore, face } = callsOf(duty.part, motion, present(given[i]));
    const name = duty.steps.length > 1 ? `step ${i + 1}` : "load and motion";
    return [
      ...(bore ? [[name, faceLines(bore, undefined, record)] as const] : []),
      ...(face ? [[bore ? `${name}, flange` : name, faceLines(face, duty.part, record)] as const] : []),
    ];
  });
  const rest = restCall(duty.part, present(given[0]));
  return rest ? [...steps, ["static load", record.formula(rest)]] : steps;
}

/** `part` where the face is a ring. */
function faceLines({ pressure, speed }: FaceCalls, part: Part | undefined, record: RecordWorkings): Line[] {
  const lines = record.formula(pressure);
  if (!speed) return lines;
  const [p, v] = [pressure, speed].map(({ f, values }) => f.calc(values) as number) as [number, number];
  const work = callWork(speed, record.system);
  return [
    ...lines,
    ...record.worked(part ? onRing(work, part, pressure) : work, sourcesText(speed.f.spec.source)),
    ...record.formula({ f: PVVALUE, values: { pressure: p, speed: v } }),
  ];
}

/** Diameters at which the speed of a ring counts: half way, or of a flange where its friction acts. */
const ringDiameter = {
  washer: { line: "d = (Di + Do) / 2", text: "Mean diameter of the face" },
  flange: {
    line: "d = 2 * (Do^2 + Do * Di + Di^2) / (3 * (Do + Di))",
    text: "Diameter at the friction radius of the face",
  },
} as const;

/** The work of a speed whose diameter follows from those of the ring. */
function onRing(work: Work, part: Part, pressure: Call): Work {
  if (!work.known.some(({ symbol }) => symbol === "d")) return work;
  const { line, text } = part === "washer" ? ringDiameter.washer : ringDiameter.flange;
  const ring = callWork(pressure, "metric").known.filter(({ symbol }) => symbol === "Di" || symbol === "Do");
  return {
    ...work,
    known: [...ring, ...work.known.filter(({ symbol }) => symbol !== "d")],
    lines: [line, ...work.lines],
    between: { ...work.between, d: { unit: "mm", text } },
  };
}
