import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { catalogue, familyList } from "../../src/core";
import type { Formula } from "../../src/core/formula";
import { functionPage } from "../../src/core/helpPage";
import { descriptionOf, seeAlso } from "../lib/functionPages";
import { criterionPages } from "./criteria";
import { errorSection } from "./errors";
import { familyPages } from "./families";
import { html, withAnswers } from "./markdown";
import { measuredLine, measuredPages } from "./measured";
import type { MarkdownPage, Page } from "./page";
import { pictureOf } from "./pictures";
import { searchPage } from "./search";
import { root } from "../lib/root.mjs";
import { table } from "../reference/tables";
import { referenceCases } from "../../test/reference/cases";
import { modelErrors } from "../../test/reference/measured/compare";

const guide = path.join(root, "docs/guide");
/** From a page of its own folder. */
const functionFile = (id: string): string => path.posix.basename(functionPage(id));

/** Every page of the site. */
export function pages(): Page[] {
  const texts = [
    ...guidePages(),
    functionIndex(),
    ...catalogue.map(pageOf),
    ...criterionPages(),
    ...measuredPages(),
    ...familyPages(),
  ];
  return [...texts.map(({ text, ...page }) => ({ ...page, body: html(text) })), searchPage(texts)];
}

/** The hand-written pages; they link to each other and to functions.md as the repository's readers see them. */
function guidePages(): MarkdownPage[] {
  return readdirSync(guide)
    .filter((name) => name.endsWith(".md"))
    .map((name) => {
      const text = readFileSync(path.join(guide, name), "utf8");
      const linked = text
        .replace(/\]\(\.\.\/functions\.md#([a-z]+)\)/g, "](functions/$1.html)")
        .replace(/\]\(\.\.\/reference-checks\.md#measured\)/g, "](measured/index.html)")
        .replace("](../functions.md)", "](functions/index.html)")
        .replace(/\]\(([a-z-]+)\.md(#[^)]*)?\)/g, "]($1.html$2)");
      return { file: name.replace(/\.md$/, ".html"), title: titleIn(text), text: withAnswers(linked) };
    });
}

const titleIn = (markdown: string): string => /^# (.*)$/m.exec(markdown)![1]!;

function functionIndex(): MarkdownPage {
  const sections = familyList.map(
    ({ title, functions }) =>
      `## ${title}\n\n${Object.values(functions)
        .map(({ spec }) => `- [${spec.id}](${functionFile(spec.id)}): ${spec.text}`)
        .join("\n")}`,
  );
  const text = `# Functions\n\nWritten as \`BUSH.NAME\` in Excel and the local sheet, \`BUSH_NAME\` in Google Sheets. Every argument takes one value or a range.\n\n${sections.join("\n\n")}`;
  return { file: "functions/index.html", title: "Functions", text };
}

/** The models that the function computes by, with what was measured of them. */
function measuredOf(id: string): string[] {
  const own = modelErrors().filter(({ model }) => model.functions.includes(id));
  return own.length === 0 ? [] : ["## Measured", own.map((one) => `- ${measuredLine(one, "../measured/")}`).join("\n")];
}

/** The reference checks that name the function. */
function checksOf(id: string): string[] {
  const own = referenceCases.filter(({ what }) => new RegExp(`\\b${id}\\b`).test(what));
  const rows = own.map(({ what, source, kind }) => [what, kind, source]);
  return own.length === 0 ? [] : ["## Checks", table(["what", "kind", "held against"], rows)];
}

function pageOf(f: Formula): MarkdownPage {
  const { id } = f.spec;
  const paragraphs = [
    ...[`# ${id}`, ...descriptionOf(f), ...pictureOf(id), ...measuredOf(id), ...checksOf(id), ...errorSection(f)],
    ...seeAlso(f, functionFile),
  ];
  return { file: functionPage(id), title: id, text: paragraphs.join("\n\n") };
}
