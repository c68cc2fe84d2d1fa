import { sleevePressure } from "../../src/core";
import { answer } from "../../src/edge/sheet";

const host = { error: (code: string, message?: string) => ({ code, message }) };

test("smoke", () => {
  expect(answer(sleevePressure, [800, [[20]], "15 mm", null], host)).toEqual([[800 / 300]]);
  expect(answer(sleevePressure, [[[800], [null], ["x"]], 20, 15, null], host)).toMatchInlineSnapshot(`
   [
     [
       2.6666666666666665,
     ],
     [
       "",
     ],
     [
       {
         "code": "#VALUE!",
         "message": "load must be a number or text like "12.5 N", got "x"",
       },
     ],
   ]
  `);
  expect(answer(sleevePressure, [800, -5, 15, "inch"], host)).toMatchInlineSnapshot(`
   [
     [
       {
         "code": "#VALUE!",
         "message": "bore must be above 0 in, got -5",
       },
     ],
   ]
  `);
  expect(answer(sleevePressure, [[[1], [2], [3]], [[1], [2], [3], [4]], 15], host)).toMatchInlineSnapshot(`
   [
     [
       {
         "code": "#VALUE!",
         "message": "bore (4×1) and load (3×1) cannot combine: give equal sizes",
       },
     ],
   ]
  `);
});
