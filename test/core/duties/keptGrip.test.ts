import { functions } from "../../../src/core";
import { call, pressedBush } from "../../support";

const gripOf = (kept: string) =>
  call(functions.DUTYCHECKS, [
    pressedBush({ "outside zone": "+0.15/+0.20", "share of grip kept": kept }),
    "",
    "Demo Sorrel",
  ]).find(([name]) => name === "grip")!;

test("where the share kept is not told, care says at which share the grip is lost: less fails, more holds", () => {
  const untold = gripOf("");
  expect(untold[5]).toBe("care");
  const said = /^grip: lost where less than (\d+) % of the press fit is kept; /.exec(String(untold[6]));
  const share = Number(said?.[1]);
  expect([gripOf(`${share - 1} %`)[5], gripOf(`${share + 1} %`)[5]]).toEqual(["fails", "fits"]);
});
