import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { catalogue } from "../../src/core";
import { parametersOf } from "../../src/core/describe";
import { root } from "../package/run";

/** The documentation as `npm run build` wrote it, and the Markdown of the repository. */
const dist = path.join(root, "dist");
const site = path.join(dist, "docs");
const under = (folder: string, ending: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(ending))
    .map((name) => path.join(folder, name));
const pages = under(site, ".html").map((file) => [path.relative(site, file), readFileSync(file, "utf8")] as const);
const idsIn = (html: string): string[] => [...html.matchAll(/ id="([^"]+)"/g)].map((m) => m[1]!);

test("every function has its page, and functions.json names it as its help", () => {
  const { functions } = JSON.parse(readFileSync(path.join(dist, "functions.json"), "utf8")) as {
    functions: { id: string; helpUrl: string }[];
  };
  expect(functions.map((f) => f.id).sort()).toEqual(catalogue.map((f) => f.spec.id).sort());
  for (const { id, helpUrl } of functions) {
    const { protocol, pathname } = new URL(helpUrl);
    expect(protocol).toBe("https:");
    expect([id, existsSync(path.join(dist, pathname))]).toEqual([id, true]);
    expect(readFileSync(path.join(dist, pathname), "utf8")).toContain(`<h1>${id}</h1>`);
  }
});

test.each(pages)("%s: its links lead somewhere, to headings too", (name, html) => {
  for (const [, target] of html.matchAll(/(?:href|src)="([^"]+)"/g)) {
    const [file = "", anchor] = target!.split("#");
    const place = file === "" ? path.join(site, name) : path.join(site, path.dirname(name), file);
    expect([target, existsSync(place)]).toEqual([target, true]);
    if (anchor) expect(idsIn(readFileSync(place, "utf8"))).toContain(anchor);
  }
});

test.each(pages)(
  "%s: one title, one heading of the first order, its policy, no value that was not computed",
  (name, html) => {
    expect(html.match(/<h1[ >]/g)).toHaveLength(1);
    expect(html).toMatch(/<title>[^<]+ – Bushcell<\/title>/);
    expect(html).toContain("default-src 'none'; style-src 'self'; img-src 'self'");
    expect(html).not.toMatch(/style="|undefined|NaN|Infinity|\[object/);
    // the page of the search alone has a script, its own
    const scripts = [...html.matchAll(/<script[^>]*>[^<]*/g)].map(([tag]) => tag);
    expect(scripts).toEqual(name === "search.html" ? ['<script defer src="find.js">'] : []);
    expect(html).toContain("have a licensed engineer decide");
  },
);

test("every executed example answers, and every function shows what its errors say", () => {
  for (const [name, html] of pages)
    for (const [, answer] of html.matchAll(/<\/code> answers ([^<]*)/g))
      expect([name, answer]).not.toEqual([name, expect.stringMatching(/^#|^\.$/)]);
  const told = pages.filter(([name, html]) => name.startsWith("functions/") && html.includes('<h2 id="errors">'));
  expect(told.length).toBeGreaterThanOrEqual(catalogue.length - 3);
});

test("every argument of every function has its anchor, under which stand the messages that name it", () => {
  const pageOf = (id: string) => pages.find(([name]) => name === `functions/${id.toLowerCase()}.html`)![1];
  for (const { spec } of catalogue)
    for (const { name } of parametersOf(spec))
      expect([spec.id, idsIn(pageOf(spec.id))]).toEqual([spec.id, expect.arrayContaining([`error-${name}`])]);
  const [, ofBore = ""] = pageOf("PRESSURE").split('<dt id="error-bore">');
  const [told] = ofBore.split("<dt");
  expect(told).toContain("#VALUE! bore must be above 0 mm, got -5");
  expect(told).not.toContain("length must");
});

const markdown = [
  path.join(root, "README.md"),
  path.join(root, "DEVELOPERS.md"),
  ...under(path.join(root, "docs"), ".md"),
];
test.each(markdown.map((file) => [path.relative(root, file), file]))("%s: its links lead somewhere", (_, file) => {
  const text = readFileSync(file, "utf8");
  for (const [, target] of text.matchAll(/\]\((?!https?:|#)([^)#\s]+)(?:#[^)]*)?\)/g))
    expect([target, existsSync(path.join(path.dirname(file), target!))]).toEqual([target, true]);
});
