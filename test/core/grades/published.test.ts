import { gradeProperty, gradeSource, mediaResistance, verdictLine } from "../../../src/core";
import { standardLibrary } from "../../../src/core/grades/model";
import { one } from "../host";

test("each published value says where it comes from and how well it is founded", () => {
  expect(one(gradeSource, "PA66", "PV limit")).toMatch(
    /^M\. J\. Neale.*A4, thermoplastics without filler; 1000 of 1000 to 3000 psi·ft\/min, memory; dry, continuous/,
  );
  expect(one(gradeSource, "PTFE", "PV limit")).toMatch(/Shigley.*Table 12-7; 1000 psi·ft\/min, memory; limit of/);
  expect(one(gradeSource, "PA66", "density")).toMatch(
    /Plastics Engineering.*Table 1.8, p. 31; 1.14 of 1.13 to 1.15 g\/cm³, read$/,
  );
  expect(one(gradeSource, "PTFE + glass", "static pressure limit")).toMatch(
    /3.5 of 3.5 to 7 MPa, derived; half of the 7 MPa of A4, rubbing bearings; the class is printed as 2 to 7 MPa/,
  );
  expect(one(gradeSource, "PA66", "wear rate high")).toMatch(
    /^Literature on the friction and wear of polymers.*; 0.00001 of 0.000001 to 0.00001 mm³\/\(N·m\), memory, band only$/,
  );
  expect(one(gradeSource, "PA66", "shock")).toBe("Common practice of the trade; good, common practice");
  expect(one(gradeSource, "PA66", "family")).toBe("wording of this library");
  expect(one(gradeSource, "Demo Tansy", "PV limit")).toBe("invented for the demo");
  const own = [
    ["grade", "PV limit", "density", "source"],
    ["A", 1, null, "supplier list 7"],
    ["B", 1, null, null],
  ];
  expect(one(gradeSource, "A", "PV limit", own)).toBe("supplier list 7");
  expect(one(gradeSource, "B", "PV limit", own)).toBe("own row, no source given");
  expect(one(gradeSource, "A", "density", own)).toBe('#N/A grade "A" has no data on density');
});

test("SOURCE of media names each source once, with what it rates", () => {
  const said = String(one(gradeSource, "PA66", "media"));
  expect(said).toMatch(/General handbooks of plastics .*, memory, band only: water, hot water and steam, sea water/);
  expect(said).toMatch(/Tribology Handbook[^;]*A5, p\. A5\.2, read: mineral oil and grease;/);
  expect(said.match(/General handbooks/g)).toHaveLength(1);
});

test("the woven liner: the greatest load that is printed is a static one, the bond bounds the temperature", () => {
  expect(one(gradeProperty, "PTFE fabric", "static pressure limit")).toBeCloseTo(60_000 * 0.006894757293168361, 9);
  expect(one(verdictLine, "PTFE fabric", 400, 0, 25, "static")).toMatch(/^fits/);
  expect(one(verdictLine, "PTFE fabric", 400, 0.002, 25)).toBe("fails, running pressure 400 %");
  expect(one(verdictLine, "PTFE fabric", 50, 0.002, 161)).toMatch(/^fails, temperature/);
  expect(one(gradeSource, "PTFE fabric", "running pressure limit")).toMatch(
    /100 of 100 to 207 MPa, common practice; slow oscillation/,
  );
  expect(one(gradeSource, "PTFE fabric", "PV limit")).toMatch(/memory; oscillation only/);
  expect(one(gradeSource, "PTFE fabric", "expansion")).toMatch(
    /0.00003 of 0.000012 to 0.00003 1\/K, memory, band only/,
  );
});

test("unfilled polyamide and acetal: the PV limit is a dry one, not that of boundary-lubricated bearings", () => {
  for (const grade of ["PA66", "POM homopolymer", "POM copolymer"])
    expect(one(gradeProperty, grade, "PV limit")).toBeCloseTo(0.035, 4);
});

describe("MEDIA", () => {
  test("answers the rating and how hot it holds, in the sheet's units", () => {
    expect(one(mediaResistance, "PTFE", "strong acids")).toBe("resistant to 23 °C");
    expect(one(mediaResistance, "PTFE", "Strong Acids", null, "inch")).toBe("resistant to 73.4 °F");
    expect(one(mediaResistance, "POM copolymer", "UV and weather")).toBe("attacked");
    expect(one(mediaResistance, "PA66", "food contact")).toBe("note");
    expect(one(mediaResistance, "Demo Sorrel", "water")).toBe("limited");
  });
  test("of own rows, and errors that name what is wrong", () => {
    const own = [
      ["grade", "media"],
      ["A", "water: resistant to 60 °C; fuels: limited to 104 °F"],
    ];
    expect(one(mediaResistance, "A", "water", own)).toBe("resistant to 60 °C");
    expect(one(mediaResistance, "A", "fuels", own)).toBe("limited to 40 °C");
    expect(one(mediaResistance, "A", "alcohols", own)).toBe('#N/A grade "A" has no data on alcohols');
    expect(one(mediaResistance, "PA66", "beer")).toMatch(
      /^#VALUE! medium "beer" is unknown; a class is "sea water", say/,
    );
    expect(one(mediaResistance, "PA66", "weak acid")).toMatch(
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
