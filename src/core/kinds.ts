/**
 * Every quantity the core knows, with its unit in the two unit systems.
 * The metric unit is the working unit: inside the core no number is in any other.
 * `name` is the word for it in messages and docs.
 */
export const kinds = {
  force: { name: "force", metric: "N", inch: "lbf" },
  length: { name: "length", metric: "mm", inch: "in" },
  pressure: { name: "pressure", metric: "MPa", inch: "psi" },
  speed: { name: "speed", metric: "m/s", inch: "ft/min" },
  pv: { name: "PV", metric: "MPa·m/s", inch: "psi·ft/min" },
  temperature: { name: "temperature", metric: "°C", inch: "°F" },
  rise: { name: "temperature difference", metric: "K", inch: "°F" },
  torque: { name: "torque", metric: "N·m", inch: "lbf·in" },
  power: { name: "power", metric: "W", inch: "W" },
  wearRate: { name: "specific wear rate", metric: "mm³/(N·m)", inch: "in³·min/(ft·lbf·h)" },
  expansion: { name: "thermal expansion", metric: "1/K", inch: "1/°F" },
  conductivity: { name: "thermal conductivity", metric: "W/(m·K)", inch: "BTU·in/(h·ft²·°F)" },
  film: { name: "heat transfer coefficient", metric: "W/(m²·K)", inch: "BTU/(h·ft²·°F)" },
  conductance: { name: "thermal conductance", metric: "W/K", inch: "W/K" },
  distance: { name: "sliding distance", metric: "km", inch: "mi" },
  density: { name: "density", metric: "g/cm³", inch: "lb/in³" },
  time: { name: "time", metric: "h", inch: "h" },
  days: { name: "lead time", metric: "d", inch: "d" },
  rate: { name: "rate", metric: "1/min", inch: "1/min" },
  angle: { name: "angle", metric: "°", inch: "°" },
  percent: { name: "percentage", metric: "%", inch: "%" },
  ratio: { name: "plain number", metric: "", inch: "" },
  count: { name: "number of pieces", metric: "", inch: "" },
  money: { name: "amount of money", metric: "", inch: "" },
  hardness: { name: "Brinell hardness", metric: "HB", inch: "HB" },
} as const;

export type Kind = keyof typeof kinds;
export type System = "metric" | "inch";
export const systems = ["metric", "inch"] as const;

declare const kindOf: unique symbol;
/** A number that remembers its kind at compile time only, so that swapped arguments do not compile. */
export type Quantity<K extends Kind> = number & { readonly [kindOf]?: K };

/** Whether a kind reads differently in the two unit systems. */
export const isDimensional = (kind: Kind): boolean => kinds[kind].metric !== kinds[kind].inch;
