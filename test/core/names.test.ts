import fc from "fast-check";
import { nearest } from "../../src/core/names";

/** The textbook's table of the fewest insertions, deletions and replacements (Wagner and Fischer, 1974 (memory)). */
function editDistance(a: string, b: string): number {
  const table = Array.from({ length: a.length + 1 }, (_, i) => Array.from({ length: b.length + 1 }, (__, j) => i + j));
  for (let i = 1; i <= a.length; i++)
    for (let j = 1; j <= b.length; j++)
      table[i]![j] = Math.min(
        table[i - 1]![j]! + 1,
        table[i]![j - 1]! + 1,
        table[i - 1]![j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1),
      );
  return table[a.length]![b.length]!;
}

const word = fc.string({ unit: fc.constantFrom(..."abp1qr2"), minLength: 1, maxLength: 9 });

test("a name is near within a third of its letters in keystrokes, or as a part", () => {
  fc.assert(
    fc.property(word, word, (wanted, name) => {
      const isPart = wanted.length > 1 && name.length > 1 && (wanted.includes(name) || name.includes(wanted));
      const isNear = isPart || editDistance(wanted, name) <= Math.max(1, Math.floor(wanted.length / 3));
      expect(nearest(wanted, [name])).toEqual(isNear ? [name] : []);
    }),
    { numRuns: 5000, seed: 3 },
  );
});

test("the nearest come first, three at most, and equals in the list's order", () => {
  expect(nearest("Bold fern", ["Cold fir", "Cold fern", "Bald ferns", "Gold fern", "Oak"])).toEqual([
    "Cold fern",
    "Gold fern",
    "Bald ferns",
  ]);
});
