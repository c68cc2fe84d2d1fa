import { finding, full, line, on, resting, said, without } from "../support";

test("material: among those suited it passes, else it is care and named", () => {
  expect(finding("shaft", full, on({ shaft: "hardened steel" }))).toMatchObject({ word: "fits", property: "shafts" });
  expect(said("shaft", full, on({ shaft: "chromed" }))).toBe("care, shaft of chromed not among those suited");
  expect(finding("shaft", { ...full, shafts: ["Hardened Steel"] }, on({ shaft: "hardened steel" })).word).toBe("fits");
  expect(said("shaft", without("shafts"), on({ shaft: "chromed" }))).toBe("no data, shaft: shafts suited");
  // no list of shafts says nothing against any
  expect(finding("shaft", { ...full, shafts: [] }, on({ shaft: "chromed" })).word).toBe("care");
});

test("hardness: below the least it is care, with both figures", () => {
  for (const [hardness, word] of [
    [250, "fits"],
    [200, "fits"],
    [199.9, "care"],
    [150, "care"],
  ] as const)
    expect(finding("shaft", full, on({ hardness }))).toMatchObject({ word, value: hardness, limit: 200 });
  expect(said("shaft", full, on({ hardness: 150 }))).toBe("care, shaft 150 HB, at least 200 HB wanted");
  expect(line(full, on({ hardness: 150 }))).toBe("care, shaft 150 HB, at least 200 HB wanted; PV 50 %");
  expect(said("shaft", without("shaftHardness"), on({ hardness: 250 }))).toBe("no data, shaft: least shaft hardness");
});

test("softer than 200 HB, or of soft steel, the soft-shaft rating is asked (common practice, no source)", () => {
  const undemanding = { ...full, shaftHardness: 100, shafts: ["soft steel", "hardened steel"] };
  const rated = (softShaft: "poor" | "fair" | "good") => ({ ...undemanding, softShaft });
  for (const soft of [on({ hardness: 199.9 }), on({ shaft: "soft steel" })]) {
    expect(finding("shaft", rated("good"), soft).word).toBe("fits");
    expect(said("shaft", rated("fair"), soft)).toBe("care, soft shaft: fair");
    expect(said("shaft", rated("poor"), soft)).toBe("fails, soft shaft: poor");
    const { softShaft: _, ...unknown } = undemanding;
    expect(said("shaft", unknown, soft)).toBe("no data, shaft: soft shaft");
  }
  for (const hard of [on({ hardness: 200 }), on({ shaft: "hardened steel" })])
    expect(finding("shaft", rated("poor"), hard).word).toBe("fits");
});

test("rougher than Ra 0.8 µm the rough-shaft rating is asked (common practice, no source)", () => {
  const rated = (roughShaft: "poor" | "fair" | "good") => ({ ...full, roughShaft });
  expect(said("shaft", rated("poor"), on({ roughness: 0.81 }))).toBe("fails, rough shaft: poor");
  expect(said("shaft", rated("fair"), on({ roughness: 0.81 }))).toBe("care, rough shaft: fair");
  expect(finding("shaft", rated("good"), on({ roughness: 0.81 })).word).toBe("fits");
  expect(said("shaft", without("roughShaft"), on({ roughness: 0.81 }))).toBe("no data, shaft: rough shaft");
  // up to it nothing is asked, and a roughness is never told as a hardness
  const smooth = finding("shaft", without("roughShaft"), on({ roughness: 0.8 }));
  expect([smooth.word, smooth.value, smooth.limit]).toEqual(["fits", undefined, undefined]);
});

test("the worst of all governs, and all reasons that are as bad are told", () => {
  const soft = { ...full, softShaft: "fair", roughShaft: "fair" } as const;
  expect(said("shaft", soft, on({ hardness: 150, shaft: "chromed", roughness: 2 }))).toBe(
    "care, shaft 150 HB, at least 200 HB wanted; shaft of chromed not among those suited; soft shaft: fair; rough shaft: fair",
  );
  expect(said("shaft", { ...soft, softShaft: "poor" }, on({ hardness: 150, roughness: 2 }))).toBe(
    "fails, soft shaft: poor",
  );
  expect(said("shaft", without("shaftHardness", "shafts"), on({ hardness: 150, shaft: "chromed" }))).toBe(
    "no data, shaft: least shaft hardness; shaft: shafts suited",
  );
  expect(finding("shaft", soft, on({ hardness: 150, shaft: "chromed" })).figures).toEqual([
    "shaftHardness",
    "shafts",
    "softShaft",
  ]);
});

test("a shaft that passes in all it says shows its hardness", () => {
  const passed = finding("shaft", full, on({ hardness: 250, shaft: "hardened steel", roughness: 0.4 }));
  expect(passed).toMatchObject({ word: "fits", value: 250, limit: 200 });
});

test("edge load: poor fails without more; the pressure itself needs the clearance, which is named", () => {
  expect(said("edgePressure", { ...full, edgeLoad: "poor" }, on({ slope: 0.1 }))).toBe("fails, edge load poor");
  expect(finding("edgePressure", without("edgeLoad"), on({ slope: 0.1 }))).toMatchObject({
    word: "no data",
    property: "edgeLoad",
  });
  expect(finding("edgePressure", full, on({ slope: 0.1 })).word).toBe("no data");
  expect(line({ ...full, edgeLoad: "poor" }, on({ slope: 0.1 }, resting))).toMatch(/^fails, edge load poor/);
});

test("a shaft that its load bends beyond small slopes fails, whatever else is known", () => {
  // two bushes of 600 N: 1200·400²/(16·E·π·d⁴/64) rad; hardened steel 207000 MPa: 6.77° at 10 mm, 4.62° at 11 mm
  const bent = { span: 400, shaft: "hardened steel" } as const;
  const steep = on({ ...bent, spanDiameter: 10 });
  for (const id of ["edgePressure", "tilt"])
    expect(said(id, full, steep)).toMatch(/the load bends the shaft by \d+(\.\d+)? ° at the bush, above 5 °/);
  expect(finding("tilt", full, steep).word).toBe("fails");
  expect(finding("tilt", full, on({ ...bent, spanDiameter: 11 })).word).toBe("no data");
});
