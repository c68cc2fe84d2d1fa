import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { catalogue, familyList } from "../../src/core";
import type { Formula } from "../../src/core/formula";
import { descriptionOf, seeAlso } from "../lib/functionPages";
import { errorsOf } from "./errors";
import { html, withAnswers } from "./markdown";
import { measuredPages } from "./measured";
import type { Page } from "./page";
import { pictureOf } from "./pictures";
import { root } from "../lib/root.mjs";

const guide = path.join(root, "docs/guide");
const functionFile = (id: string): string => `${id.toLowerCase()}.html`;

/** Every page of the site. */
export function pages(): Page[] {
  return [
    ...guidePages(),
    functionIndex(),
    ...catalogue.map(functionPage),
    ...measuredPages().map(({ text, ...page }) => ({ ...page, body: html(text) })),
  ];
}

/** The hand-written pages; they link to each other and to functions.md as the repository's readers see them. */
function guidePages(): Page[] {
  return readdirSync(guide)
    .filter((name) => name.endsWith(".md"))
    .map((name) => {
      const text = readFileSync(path.join(guide, name), "utf8");
      const linked = text
        .replace(/\]\(\.\.\/functions\.md#([a-z]+)\)/g, "](functions/$1.html)")
        .replace(/\]\(\.\.\/reference-checks\.md#measured\)/g, "](measured/index.html)")
        .replace("](../functions.md)", "](functions/index.html)")
        .replace(/\]\(([a-z-]+)\.md(#[^)]*)?\)/g, "]($1.html$2)");
      return { file: name.replace(/\.md$/, ".html"), title: titleIn(text), body: html(withAnswers(linked)) };
    });
}

const titleIn = (markdown: string): string => /^# (.*)$/m.exec(markdown)![1]!;

function functionIndex(): Page {
  const sections = familyList.map(
    ({ title, functions }) =>
      `## ${title}\n\n${Object.values(functions)
        .map(({ spec }) => `- [${spec.id}](${functionFile(spec.id)}): ${spec.text}`)
        .join("\n")}`,
  );
  const text = `# Functions\n\nWritten as \`BUSH.NAME\` in Excel and the local sheet, \`BUSH_NAME\` in Google Sheets. Every argument takes one value or a range.\n\n${sections.join("\n\n")}`;
  return { file: "functions/index.html", title: "Functions", body: html(text) };
}

function functionPage(f: Formula): Page {
  const { id } = f.spec;
  const errors = errorsOf(f).map((text) => `- \`${text}\``);
  const told =
    errors.length > 0
      ? ["## Errors", "What the cell tells, from the example with one argument gone wrong:", errors.join("\n")]
      : [];
  const paragraphs = [`# ${id}`, ...descriptionOf(f), ...pictureOf(id), ...told, ...seeAlso(f, functionFile)];
  return { file: `functions/${functionFile(id)}`, title: id, body: html(paragraphs.join("\n\n")) };
}
