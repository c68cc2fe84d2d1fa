import { createJiti } from "jiti";
import { loadFunctions } from "../scripts/lib/host.mjs";
import { best } from "./timing.mjs";

/** @type {{ catalogue: any[] }} */
const { catalogue } = await createJiti(import.meta.url).import("../src/core/index.ts");
const { call } = loadFunctions();

/** Rows of a spilled table multiply with what each row answers, so those are asked for fewer. */
const sizesFor = ({ result }) => (result.shape === "table" ? [1, 100, 1000] : [1, 1000, 10_000, 100_000]);

/** Every function at growing numbers of rows: its example, the first of its own arguments made a column. */
export function everyFunction() {
  return catalogue.flatMap(({ spec }) => {
    const at = Object.values(spec.args).findIndex((arg) => !["list", "table", "rest"].includes(arg.kind));
    const repeats = at >= 0 && !Object.values(spec.args).some((arg) => arg.kind === "rest");
    const sizes = repeats && spec.example[at] !== undefined ? sizesFor(spec) : [1];
    const times = sizes.map((count) => {
      const given = [...spec.example];
      if (count > 1) given[at] = Array.from({ length: count }, () => [spec.example[at]]);
      return { count, ms: best(() => call(spec.id, ...given), { rounds: 3, least: count > 1000 ? 60 : 30 }) };
    });
    return [{ id: spec.id, times }];
  });
}
