import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { books } from "../../scripts/workbooks/books";
import { handedOver } from "../../scripts/workbooks/handedOver";
import { writeBook } from "../../scripts/workbooks/write";
import { greenhouse } from "../../src/book/greenhouse/book";
import { root, run, temporaryFolder } from "./run";
import { partsOf } from "./xlsx";

/**
 * The manifests and every part of every workbook against the published schemas: Microsoft's of manifests, ECMA-376
 * transitional of workbooks. They belong to others and are not part of this repository: OFFICE_SCHEMAS names a folder with
 * `manifest` and `ooxml`. Without it, or without xmllint, the manifest's rules and the readers of workbooks remain.
 */
const folder = process.env["OFFICE_SCHEMAS"];
const canCheck = folder !== undefined && run("xmllint", ["--version"]).code === 0;
if (!canCheck)
  console.log("No OFFICE_SCHEMAS, or no xmllint: manifests and workbooks are not held to the published schemas.");

function faultsOf(schema: string, files: readonly string[]): string[] {
  const { err } = run("xmllint", ["--nonet", "--noout", "--schema", path.join(folder!, schema), ...files]);
  return err.split("\n").filter((line) => line !== "" && !line.endsWith(" validates"));
}

/** By the namespace of a part's root; Dublin Core's schemas, which the core properties need, and Office's web extensions are published elsewhere. */
const schemas: Readonly<Record<string, string>> = {
  "http://schemas.openxmlformats.org/spreadsheetml/2006/main": "ooxml/sml.xsd",
  "http://schemas.openxmlformats.org/package/2006/content-types": "ooxml/opc-xsd/opc-contentTypes.xsd",
  "http://schemas.openxmlformats.org/package/2006/relationships": "ooxml/opc-xsd/opc-relationships.xsd",
  "http://schemas.openxmlformats.org/officeDocument/2006/extended-properties":
    "ooxml/shared-documentPropertiesExtended.xsd",
  "http://schemas.openxmlformats.org/drawingml/2006/main": "ooxml/dml-main.xsd",
};
const elsewhere = [/core-properties$/, /webextensions?\//];

(canCheck ? describe : describe.skip)("the published schemas", () => {
  test("hold for the manifest, and for the one that a build wrote", () => {
    const files = [path.join(root, "manifest.xml"), path.join(root, "dist/manifest.xml")];
    expect(files.map((file) => existsSync(file))).toEqual([true, true]);
    expect(faultsOf("manifest/OfficeAppManifestV1_1.xsd", files)).toEqual([]);
    const broken = path.join(temporaryFolder(), "manifest.xml");
    writeFileSync(broken, readFileSync(files[0]!, "utf8").replace("<Hosts>", "<Guests/><Hosts>"));
    expect(faultsOf("manifest/OfficeAppManifestV1_1.xsd", [broken])).not.toEqual([]);
  });

  test("hold for every part of every workbook: plain, with the add-in's offer, handed over", async () => {
    const bySchema = new Map<string, string[]>();
    const place = temporaryFolder();
    const written = [
      ...books.flatMap((book) => [{ offerAddIn: true }, { plain: true }].map((settings) => ({ book, settings }))),
      { book: handedOver(greenhouse, "handed-over").book, settings: {} },
    ];
    for (const { book, settings } of written) {
      const name = path.join(place, `${book.file}-${Object.keys(settings)[0] ?? ""}`);
      writeFileSync(`${name}.xlsx`, await writeBook(book, settings));
      const parts = partsOf(`${name}.xlsx`);
      for (const part of parts.names.filter((one) => /\.(xml|rels)$/.test(one))) {
        const space = parts.xml(part).documentElement!.namespaceURI ?? "";
        if (elsewhere.some((pattern) => pattern.test(space))) continue;
        expect([part, space, schemas[space]]).toEqual([part, space, expect.any(String)]);
        const file = path.join(name, part);
        mkdirSync(path.dirname(file), { recursive: true });
        writeFileSync(file, parts.text(part));
        bySchema.set(schemas[space]!, [...(bySchema.get(schemas[space]!) ?? []), file]);
      }
    }
    for (const [schema, files] of bySchema) expect([schema, faultsOf(schema, files)]).toEqual([schema, []]);
    const count = [...bySchema.values()].flat().length;
    console.log(`${count} parts of ${written.length} workbooks hold to the published schemas.`);
    expect(count).toBeGreaterThan(60);
  });
});
