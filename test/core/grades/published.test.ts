import { functions } from "../../../src/core";
import { standardLibrary } from "../../../src/core/grades/model";
import { one } from "../host";

test("each published value says where it comes from and how well it is founded", () => {
  expect(one(functions.SOURCE, "PA66", "PV limit")).toMatch(
    /^M\. J\. Neale.*A4, thermoplastics without filler; 1000 of 1000 to 3000 psi·ft\/min, memory; dry, continuous; 3000 psi·ft\/min only boundary-lubricated$/,
  );
  expect(one(functions.SOURCE, "PTFE", "PV limit")).toMatch(/Shigley.*Table 12-7; 1000 psi·ft\/min, memory; limit of/);
  expect(one(functions.SOURCE, "PA66", "density")).toMatch(
    /Plastics Engineering.*Table 1.8, p. 31; 1.14 of 1.13 to 1.15 g\/cm³, read$/,
  );
  expect(one(functions.SOURCE, "PTFE + glass", "static pressure limit")).toMatch(
    /3.5 of 3.5 to 7 MPa, derived; half of the 7 MPa of A4/,
  );
  expect(one(functions.SOURCE, "PA66", "wear rate high")).toMatch(
    /^Literature on the friction and wear of polymers.*; 0.00001 of 0.000001 to 0.00001 mm³\/\(N·m\), memory, band only$/,
  );
  expect(one(functions.SOURCE, "PA66", "shock")).toBe("Common practice of the trade; good, common practice");
  expect(one(functions.SOURCE, "PA66", "family")).toBe("wording of this library");
  expect(one(functions.SOURCE, "Demo Tansy", "PV limit")).toBe("invented for the demo");
  const own = [
    ["grade", "PV limit", "density", "source"],
    ["A", 1, null, "supplier list 7"],
    ["B", 1, null, null],
  ];
  expect(one(functions.SOURCE, "A", "PV limit", own)).toBe("supplier list 7");
  expect(one(functions.SOURCE, "B", "PV limit", own)).toBe("own row, no source given");
  expect(one(functions.SOURCE, "A", "density", own)).toBe('#N/A grade "A" has no data on density');
});

test("SOURCE of media names each source once, with what it rates", () => {
  const said = String(one(functions.SOURCE, "PA66", "media"));
  expect(said).toMatch(/General handbooks of plastics .*, memory, band only: water, hot water and steam, sea water/);
  expect(said).toMatch(/Tribology Handbook[^;]*A5, p\. A5\.2, read: mineral oil and grease;/);
  expect(said.match(/General handbooks/g)).toHaveLength(1);
});

test("the woven liner: the greatest load that is printed is a static one, the bond bounds the temperature", () => {
  expect(one(functions.GRADE, "PTFE fabric", "static pressure limit")).toBeCloseTo(60_000 * 0.006894757293168361, 9);
  expect(one(functions.VERDICT, "PTFE fabric", 400, 0, 25, "static")).toMatch(/^fits/);
  expect(one(functions.VERDICT, "PTFE fabric", 400, 0.002, 25)).toBe("fails, running pressure 400 %");
  expect(one(functions.VERDICT, "PTFE fabric", 50, 0.002, 161)).toMatch(/^fails, temperature/);
  expect(one(functions.SOURCE, "PTFE fabric", "running pressure limit")).toMatch(
    /100 of 100 to 207 MPa, common practice; slow oscillation/,
  );
  expect(one(functions.SOURCE, "PTFE fabric", "PV limit")).toMatch(/memory; oscillation only$/);
  expect(one(functions.SOURCE, "PTFE fabric", "expansion")).toMatch(
    /0.00003 of 0.000012 to 0.00003 1\/K, memory, band only/,
  );
});

test("unfilled polyamide and acetal: the PV limit is a dry one, not that of boundary-lubricated bearings", () => {
  for (const grade of ["PA66", "POM homopolymer", "POM copolymer"])
    expect(one(functions.GRADE, grade, "PV limit")).toBeCloseTo(0.035, 4);
});

describe("MEDIA", () => {
  test("answers the rating and how hot it holds, in the sheet's units", () => {
    expect(one(functions.MEDIA, "PTFE", "strong acids")).toBe("resistant to 23 °C");
    expect(one(functions.MEDIA, "PTFE", "Strong Acids", null, "inch")).toBe("resistant to 73.4 °F");
    expect(one(functions.MEDIA, "POM copolymer", "UV and weather")).toBe("attacked");
    expect(one(functions.MEDIA, "PA66", "food contact")).toBe("note");
    expect(one(functions.MEDIA, "Demo Sorrel", "water")).toBe("limited");
  });
  test("of own rows, and errors that name what is wrong", () => {
    const own = [
      ["grade", "media"],
      ["A", "water: resistant to 60 °C; fuels: limited to 104 °F"],
    ];
    expect(one(functions.MEDIA, "A", "water", own)).toBe("resistant to 60 °C");
    expect(one(functions.MEDIA, "A", "fuels", own)).toBe("limited to 40 °C");
    expect(one(functions.MEDIA, "A", "alcohols", own)).toBe('#N/A grade "A" has no data on alcohols');
    expect(one(functions.MEDIA, "PA66", "beer")).toMatch(
      /^#VALUE! medium "beer" is unknown; a class is "sea water", say/,
    );
    expect(one(functions.MEDIA, "PA66", "weak acid")).toMatch(
      /^#VALUE! medium "weak acid" is unknown; nearest: weak acids/,
    );
  });
});

test("a generic family rates every class of medium once", () => {
  for (const { name, kind, values } of standardLibrary().grades) {
    if (kind !== "generic") continue;
    expect([name, new Set(values.media!.map(({ medium }) => medium)).size]).toEqual([name, 19]);
  }
});
