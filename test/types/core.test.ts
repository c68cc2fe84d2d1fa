import { catalogue, functions } from "../../src/core";

/** What the library's types promise to a program. The compiler checks them (`npm run typecheck`), jest only runs what they promise. */
type Same<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;
const holds = <T extends true>(is: T): T => is;

test("a function of one number takes its arguments by name and answers a number", () => {
  const answer = functions.PRESSURE({ load: 800, bore: 20, length: 15 });
  holds<Same<typeof answer, number>>(true);
  // p = F/(d·L) = 800/(20·15)
  expect(answer).toBeCloseTo(800 / 300, 12);
});

test("a misspelt, missing or wrongly typed argument does not compile", () => {
  const refused = [
    // @ts-expect-error -- length, not lenght
    () => functions.PRESSURE({ load: 800, bore: 20, lenght: 15 }),
    // @ts-expect-error -- length is missing
    () => functions.PRESSURE({ load: 800, bore: 20 }),
    // @ts-expect-error -- units stand in a sheet's text alone
    () => functions.PRESSURE({ load: "800 N", bore: 20, length: 15 }),
    // @ts-expect-error -- a grade has a name
    () => functions.VERDICT({ grade: 5, pressure: 1, speed: 0.1, temperature: 23 }),
  ];
  expect(refused.length).toBe(4);
});

test("every entry of the catalogue describes itself", () => {
  const ids: readonly string[] = catalogue.map(({ spec }) => spec.id);
  expect(ids).toContain(functions.LIMITS.spec.id);
});
