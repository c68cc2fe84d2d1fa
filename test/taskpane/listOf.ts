import type { NamedDuty, Ranked } from "../../src/core/duties";
import type { Library } from "../../src/core/grades/model";
import { inOrder, judgedFor } from "../../src/taskpane/state/list";

/** All grades judged for a duty, as the pane lists them. */
export const listOf = (duty: NamedDuty, { grades }: Library): Ranked[] =>
  inOrder(grades.map((grade) => judgedFor(duty, grade)));
