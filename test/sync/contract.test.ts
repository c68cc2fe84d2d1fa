import released from "../../data/released.json";
import { catalogue } from "../../src/core";
import { parametersOf, signatureOf } from "../../src/core/describe";
import sources from "../../data/sources.json";

/** A signature taken apart: id and arguments, optional ones in brackets. */
const parse = (signature: string) => {
  const [, id, list] = /^([A-Z]+)\((.*)\)$/.exec(signature)!;
  return { id: id!, list: list === "" ? [] : list!.split(", ") };
};

test.each(released.functions)("%s is still what it was", (signature) => {
  const { id, list } = parse(signature);
  const f = catalogue.find((candidate) => candidate.spec.id === id);
  expect(f).toBeDefined();
  const now = parse(signatureOf(f!.spec)).list;
  expect(now.slice(0, list.length)).toEqual(list);
  for (const added of now.slice(list.length)) expect(added).toMatch(/^\[.*\]$/);
});

test("every function is released under its signature", () => {
  const ids = released.functions.map((signature) => parse(signature).id);
  const unreleased = catalogue.map((f) => f.spec.id).filter((id) => !ids.includes(id));
  expect(unreleased.map((id) => `${id} is not in data/released.json: npm run release adds its signature`)).toEqual([]);
  expect(new Set(ids).size).toBe(ids.length);
});

test("ids are three letters or more, letters only, argument names plain words, no required one after an optional one", () => {
  for (const { spec } of catalogue) {
    expect(spec.id).toMatch(/^[A-Z]{3,}$/);
    const parameters = parametersOf(spec);
    parameters.forEach((p, i) => {
      expect(p.name).toMatch(/^[a-z]+$/);
      expect(p.text.length).toBeGreaterThan(3);
      if (!p.optional) expect(parameters.slice(0, i).every((before) => !before.optional)).toBe(true);
    });
  }
});

test("every source that a function names is in the list of sources", () => {
  for (const { spec } of catalogue)
    for (const { key } of [spec.source].flat()) expect(Object.keys(sources)).toContain(key);
});
