import { findGrade, findProperty, libraryOf, propertyNamed } from "../../../src/core/grades/model";
import { nearest } from "../../../src/core/names";
import { splitHeading } from "../../../src/core/table/heading";

test.each(["PA66", "pa66", " Pa 66 ", "PPSfilled", "pps  filled"])("%p finds a grade", (name) => {
  expect(["PA66", "PPS filled"]).toContain(findGrade(name).name);
});

test.each([
  ["PA67", 'grade "PA67" is unknown; nearest: PA66'],
  ["demo sorrle", 'grade "demo sorrle" is unknown; nearest: Demo Sorrel'],
  ["PTFE fabrics", 'grade "PTFE fabrics" is unknown; nearest: PTFE or PTFE fabric'],
  ["xyzzy", 'grade "xyzzy" is unknown; GRADES() lists the library'],
  ["", "grade nothing is unknown; GRADES() lists the library"],
])("%p is unknown and never picked", (name, message) => expect(() => findGrade(name)).toThrow(message));

test("of many names the nearest, the first of those as near, and none where none is", () => {
  const names = Array.from({ length: 100_000 }, (_, i) => `Own ${String(i).padStart(5, "0")}`);
  expect(nearest("Own 0421", names)).toEqual(["Own 00421", "Own 01421", "Own 02421"]);
  expect(nearest("Own 042x7", ["Own 99999", "Own 04217", "own-042x7", "Own 04227", "Own 04237"])).toEqual([
    "own-042x7",
    "Own 04217",
    "Own 04227",
  ]);
  expect(nearest("nothing like it", names)).toEqual([]);
});

test("an own grade comes before a built-in one of its name", () => {
  const own = { name: "pa 66", kind: "own", values: { pvLimit: 0.2 }, origins: {}, extra: [] } as const;
  const library = libraryOf([own]);
  expect(findGrade("PA66", library)).toBe(own);
  expect(library.grades[0]).toBe(own);
  expect(library.grades.filter((g) => /^pa ?66$/i.test(g.name))).toEqual([own]);
  expect(findGrade("PET", library).kind).toBe("generic");
});

test.each([
  ["PV limit", "pvLimit"],
  ["pv-limit [psi*ft/min]", "pvLimit"],
  ["PVLIMIT", "pvLimit"],
  ["pvLimit", "pvLimit"],
  ["PV Limit (MPa·m/s)", "pvLimit"],
  ["Poisson’s ratio", "poisson"],
  ["Short term highest temperature", "shortTermTemperature"],
  ["swelling at 50% RH", "swelling50"],
])("%p is the heading of %s", (heading, key) => expect(propertyNamed(heading)?.key).toBe(key));

test("a heading and its unit", () => {
  expect(splitHeading("PV limit [psi*ft/min]")).toEqual({ name: "PV limit", unit: "psi*ft/min" });
  expect(splitHeading("conductivity (W/(m·K))")).toEqual({ name: "conductivity", unit: "W/(m·K)" });
  expect(splitHeading("Poisson's ratio [-]")).toEqual({ name: "Poisson's ratio" });
  expect(splitHeading("density")).toEqual({ name: "density" });
  expect(splitHeading("duty %")).toEqual({ name: "duty", unit: "%" });
  expect(splitHeading("swelling at 50 % RH")).toEqual({ name: "swelling at 50 % RH" });
  expect(splitHeading("swelling at 50 % RH [1]")).toEqual({ name: "swelling at 50 % RH", unit: "ratio" });
});

test("an unknown property suggests", () => {
  expect(() => findProperty("PV limits")).toThrow('property "PV limits" is unknown; nearest: PV limit');
  expect(() => findProperty("colour")).toThrow('property "colour" is unknown; GRADES() shows the headings');
});

test("nearest names come nearest first, at most three", () => {
  expect(nearest("density", ["density", "densities", "dens", "den", "hardness"])).toHaveLength(3);
  expect(nearest("density", ["densitx", "density"])).toEqual(["density", "densitx"]);
});
