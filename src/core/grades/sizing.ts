import { noDatum } from "../errors";
import type { Lookup, Span } from "../formula";
import { Measure } from "../formula";
import { endsOf } from "./model/curve";
import { findGrade } from "./model/find";
import { lacks } from "./grade";
import type { Grade, Library } from "./model/library";
import { pressureLimit, pvLimit, speedLimit } from "./model/limits";
import { property } from "./model/properties";
import { halved } from "./halved";
import { boreAt, statedAt } from "../heat/derating";
import type { System } from "../kinds";
import { measureText } from "../measure";
import { present } from "../present";
import { numberOf, requireTemperature } from "./allowable";

export interface Asked {
  readonly grade: string;
  readonly temperature: Span;
  readonly grades?: Library | undefined;
}

export const sizingTemperature = {
  kind: "span",
  text: "Temperature of the surroundings; that of the bore is computed",
} as const;

/** The grade in these surroundings, its running pressure limit at the temperature that a PV gives the bore, and the greatest PV. */
export class Bounds {
  readonly grade: Grade;
  /** The lower of the PV limit and the PV that brings the bore to the highest temperature. */
  readonly pv: number;
  readonly speed: number;
  /** The bore's upper temperature where a PV warms it. */
  private readonly boreAt: (pv: number) => number;

  constructor(
    private readonly asked: Asked,
    private readonly system: System,
  ) {
    this.grade = findGrade(asked.grade, asked.grades);
    const { values } = this.grade;
    requireTemperature(this.grade, asked.temperature, system);
    this.speed = numberOf(speedLimit(values, "turning"), this.grade, system);
    const limit = numberOf(pvLimit(values, asked.temperature), this.grade, system);
    if (limit === 0) throw noDatum("temperature", "temperature leaves no room for friction heat");
    const most = values.highestTemperature;
    if (most === undefined || most <= statedAt) throw lacks(this.grade, property("highestTemperature").heading);
    const stated = present(values.pvLimit);
    this.boreAt = (pv) => boreAt(pv, stated, most, asked.temperature.high);
    this.pv = Math.min(limit, (stated * (most - asked.temperature.high)) / (most - statedAt));
    this.pressure(0);
  }

  /** The running pressure limit where a PV warms the bore. */
  pressure(pv: number): number {
    const span = { low: this.asked.temperature.low, high: this.boreAt(pv) };
    return numberOf(pressureLimit(this.grade.values, "runningPressure", span), this.grade, this.system);
  }

  /** The greatest pressure that a speed allows: below its limit at the bore's temperature, and below PV_a/v. */
  greatestPressure(speed: number): number {
    if (speed > this.speed * (1 + 1e-9)) {
      const [found, limit] = [speed, this.speed].map((v) => measureText("speed", v, this.system));
      throw noDatum("speed", `speed ${found} is above its limit ${limit}: no size holds`);
    }
    const cold = this.pressure(0);
    if (speed === 0) return cold;
    const most = Math.min(cold, this.pv / speed);
    return greatestThat((pressure) => this.bears(pressure, pressure * speed), most);
  }

  /** The greatest PV that a pressure allows: the pressure limit falls as the bore warms. */
  greatestPv(pressure: number): number {
    return greatestThat((pv) => this.bears(pressure, pv), this.pv);
  }

  bears(pressure: number, pv: number): boolean {
    const { pressureCurve } = this.grade.values;
    if (!pressureCurve) return pressure <= this.pressure(0);
    return this.boreAt(pv) <= endsOf(pressureCurve).high && pressure <= this.pressure(pv);
  }
}

/** The greatest value up to `most` for which something holds that, once lost, stays lost. */
const greatestThat = (isHeld: (value: number) => boolean, most: number): number =>
  isHeld(most) ? most : halved(isHeld, 0, most)[0];

/** The limits at the answer as symbols of a working. */
export const limitLookups = (pressure: number, pv: number | undefined): Record<string, Lookup> => ({
  p_a: { value: new Measure(pressure, "pressure"), text: "Limit of running pressure at the bore's temperature" },
  ...(pv === undefined ? {} : { PV_a: { value: new Measure(pv, "pv"), text: "Limit of PV in these surroundings" } }),
});
