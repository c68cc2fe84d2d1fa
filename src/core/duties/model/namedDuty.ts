import { Band } from "../../band";
import { clash } from "../../errors";
import type { System } from "../../kinds";
import { present } from "../../present";
import { cornerPicks } from "./corners";
import type { Pick } from "./corners";
import { dutyOf } from "./duty";
import type { Duty } from "./duty";
import { restPressure, stepOf } from "./faces";
import type { FieldKey, FieldValues, Given, Part } from "./fields";
import { checkWhole } from "./stepValues";
import type { StepValues } from "./stepValues";

/** Most bands of one duty: its corners are all tried. */
const mostBands = 6;

/** A described duty: its name, the grade chosen for it, and what it asks at every corner of its bands. */
export class NamedDuty {
  /** The values as read; those of the first step where steps differ. */
  readonly values: FieldValues;
  readonly grade: string | undefined;
  readonly part: Part;
  readonly bands: readonly Band[];
  /** What the bands are at in each corner. */
  readonly picks: readonly Pick[];
  /** One duty for each corner of the bands, as `cornerPicks` has them; one where there is none. */
  readonly corners: readonly Duty[];

  /** In the system of its sheet, in which its faults are told. With a corner's number that corner alone. */
  constructor(
    readonly name: string,
    readonly steps: readonly StepValues[],
    readonly system: System = "metric",
    corner?: number,
  ) {
    const first = present(steps[0]);
    this.values = first.values;
    this.grade = first.values.grade;
    this.part = first.part;
    this.bands = bandsOf(steps);
    if (this.bands.length > mostBands)
      throw clash("duty", `a duty may hold at most ${mostBands} bands, this one holds ${this.bands.length}`);
    this.picks = cornerPicks(this.bands, this.values);
    const picks = corner === undefined ? this.picks : [present(this.picks[corner])];
    this.corners = this.bands.length === 0 ? [this.at(asRead)] : picks.map((pick) => this.with(pick));
  }

  /** The duty with every band at one of its values. */
  with(pick: (band: Band) => number): Duty {
    return this.at(({ values }) => plain(values, pick));
  }

  /** What each step gives at a corner. */
  givenAt(corner: number): readonly Given[] {
    const pick = present(this.picks[corner]);
    return this.steps.map(({ values }) => plain(values, pick));
  }

  /** A corner in motion, where there is one: a band may begin at rest. */
  get moving(): Duty {
    return this.corners.find(({ isMoving }) => isMoving) ?? present(this.corners[0]);
  }

  private at(givenOf: (step: StepValues) => Given): Duty {
    const { part } = this;
    const rows = this.steps.map((step) => ({ motion: step.motion, given: givenOf(step) }));
    const { given: first } = present(rows[0]);
    let [low, high] = [Infinity, -Infinity];
    for (const { given } of rows) {
      const temperature = present(given.temperature);
      low = Math.min(low, temperature.low);
      high = Math.max(high, temperature.high);
    }
    checkWhole(first, { low, high }, this.system);
    const [one, ...more] = rows.map(({ motion, given }) => stepOf(part, motion, given));
    return dutyOf(part, [present(one), ...more], { low, high }, first, restPressure(part, first));
  }
}

/** Without bands what was read is what is given. */
const asRead = ({ values }: StepValues): Given => values as Given;

/** The bands of all steps; one that a step takes over counts once. */
function bandsOf(steps: readonly StepValues[]): readonly Band[] {
  let bands: Set<Band> | undefined;
  for (const { values } of steps)
    for (const key in values) {
      const value = values[key as FieldKey];
      if (value instanceof Band) (bands ??= new Set()).add(value);
    }
  return bands ? [...bands] : noBands;
}
const noBands: readonly Band[] = [];

function plain(values: FieldValues, pick: (band: Band) => number): Given {
  const given: Record<string, unknown> = { ...values };
  for (const key in values) {
    const value = values[key as FieldKey];
    if (value instanceof Band) given[key] = pick(value);
  }
  return given;
}
