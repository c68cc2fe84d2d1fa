import { escaped } from "../../src/book/record/html";
import { anchorOf } from "./markdown";
import type { MarkdownPage, Page } from "./page";

interface Section {
  /** Page and heading: "BORETEMP, Errors". */
  readonly title: string;
  readonly href: string;
  readonly words: readonly string[];
}

/** A page that lists every section of the others; its script, which needs no server, leaves those that hold all words typed. */
export function searchPage(pages: readonly MarkdownPage[]): Page {
  const items = pages
    .flatMap(sectionsOf)
    .map(
      ({ title, href, words }) => `<li data-words="${words.join(" ")}"><a href="${href}">${escaped(title)}</a></li>`,
    );
  const body = [
    "<h1>Search</h1>",
    '<p><label for="search">Words, all of which a section must hold</label><br><input id="search" type="search" autocomplete="off" spellcheck="false"></p>',
    `<p role="status" id="found">${items.length} sections</p>`,
    `<ul id="sections">${items.join("\n")}</ul>`,
  ];
  return { file: "search.html", title: "Search", body: body.join("\n"), script: "find.js" };
}

function sectionsOf({ file, title, text }: MarkdownPage): Section[] {
  const [top, ...rest] = text.split(/^## /m);
  const whole = { title, href: file, words: wordsIn(top!) };
  const headed = rest.map((part) => {
    const heading = plain(part.slice(0, part.indexOf("\n") < 0 ? undefined : part.indexOf("\n")));
    return { title: `${title}, ${heading}`, href: `${file}#${anchorOf(heading)}`, words: wordsIn(`${title} ${part}`) };
  });
  return [whole, ...headed];
}

/** A heading without its links. */
const plain = (markdown: string): string => markdown.replace(/\[([^\]]*)\]\([^)]*\)/g, "$1").replaceAll("`", "");

/** The words of a text, each once, without marks; pictures and addresses of links are left out. */
function wordsIn(markdown: string): string[] {
  const text = markdown
    .replace(/<svg.*?<\/svg>/gs, "")
    .replace(/<!--.*?-->|<[^>]*>/gs, " ")
    .replace(/\]\([^)]*\)/g, "]")
    .toLowerCase();
  return [...new Set(text.match(/[\p{L}\p{N}][\p{L}\p{N}.'/·-]*/gu) ?? [])];
}
