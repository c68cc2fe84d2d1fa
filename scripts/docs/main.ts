/** `npm run docs [-- --out=folder]`: the documentation as plain pages, into dist/docs. Its examples are executed as it is written. */
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { options, outFolder } from "../lib/command.mjs";
import { root } from "../lib/root.mjs";

const { out: asked } = options({ out: { type: "string", default: "dist/docs" } });
const out = outFolder(root, asked, "site.css");
// after the options, since it reads the whole core and its data
const [{ pages }, { pageText }] = await Promise.all([import("./pages"), import("./page")]);

rmSync(out, { recursive: true, force: true });
const written = pages();
for (const page of written) {
  mkdirSync(path.dirname(path.join(out, page.file)), { recursive: true });
  writeFileSync(path.join(out, page.file), pageText(page));
}
const own = (name: string): string => path.join(root, "scripts/docs", name);
// what holds on paper stands at the end of the site's own
writeFileSync(path.join(out, "site.css"), ["pictures.css", "site.css"].map((name) => readFileSync(own(name))).join(""));
cpSync(own("find.js"), path.join(out, "find.js"));
cpSync(path.join(root, "assets/icon-32.png"), path.join(out, "icon-32.png"));
console.log(`${written.length} pages written: ${path.relative(root, out)}`);
