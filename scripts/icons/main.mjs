/** `npm run icons`: draws assets/icon.svg as PNG in the sizes that Excel asks for, with the Chromium of the tests. */
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { chromium } from "playwright-core";
import { browserPath } from "../lib/browser.mjs";
import { root } from "../lib/root.mjs";

const folder = path.join(root, "assets");
const sizes = [16, 32, 64, 80, 128];
const svg = readFileSync(path.join(folder, "icon.svg"), "utf8");

const browser = await chromium.launch({ executablePath: browserPath(), args: ["--no-sandbox"] });
for (const size of sizes) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(`<style>body{margin:0}svg{display:block;width:100vw;height:100vh}</style>${svg}`);
  const picture = await page.screenshot({ omitBackground: true });
  writeFileSync(path.join(folder, `icon-${size}.png`), picture);
  await page.close();
}
await browser.close();
