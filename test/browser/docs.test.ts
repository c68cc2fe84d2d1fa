import { readdirSync } from "node:fs";
import path from "node:path";
import { chromium } from "playwright-core";
import { browserPath, root } from "../package/run";
import { serveBuilt } from "./page";

/** Every page of the documentation in Chromium, narrow and wide, with its policy in force. */
const site = path.join(root, "dist/docs");

test("no page overflows at 320 px, complains, or asks for anything beyond its own address", async () => {
  const server = await serveBuilt();
  const address = new URL("docs/", server.url).href;
  const browser = await chromium.launch({ executablePath: browserPath(), args: ["--no-sandbox"] });
  const complaints: string[] = [];
  const outside: string[] = [];
  const names = readdirSync(site, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".html"));
  expect(names.length).toBeGreaterThan(45);
  // a page for each width: a window takes longer to resize than to load
  const walk = async (width: number) => {
    const page = await browser.newPage({ viewport: { width, height: 800 } });
    page.on("console", (message) => complaints.push(message.text()));
    page.on("pageerror", (error) => complaints.push(String(error)));
    page.on("request", (request) => request.url().startsWith(address) || outside.push(request.url()));
    for (const name of names) {
      await page.goto(address + name);
      const { reach, cut } = await page.evaluate(() => ({
        reach: document.documentElement.scrollWidth,
        cut: [...document.querySelectorAll("table, pre")].filter(
          (box) => box.scrollWidth > box.parentElement!.clientWidth,
        ),
      }));
      expect([name, width, reach <= width]).toEqual([name, width, true]);
      // what a sheet answers keeps its columns and scrolls; what is read as text is whole
      if (/^(criteria|families|measured)\//.test(name)) expect([name, width, cut.length]).toEqual([name, width, 0]);
    }
  };
  await Promise.all([320, 1200].map(walk));
  expect([complaints, outside]).toEqual([[], []]);
  await browser.close();
  server.stop();
}, 240_000);

test("the search leaves the sections that hold all words, from the files alone; on paper the links of the site are gone", async () => {
  const browser = await chromium.launch({ executablePath: browserPath(), args: ["--no-sandbox"] });
  const page = await browser.newPage();
  const complaints: string[] = [];
  page.on("console", (message) => complaints.push(message.text()));
  await page.goto(`file://${path.join(site, "search.html")}`);
  const shown = page.locator("#sections li:visible");
  const all = await shown.count();
  expect(all).toBeGreaterThan(300);
  await page.getByLabel(/Words/).pressSequentially("free expansion PTFE");
  await page
    .getByRole("status")
    .filter({ hasNotText: `${all}` })
    .waitFor();
  const titles = await shown.allTextContents();
  expect(titles).toContain("Free expansion, What explains it");
  expect(titles.length).toBeLessThan(40);
  await shown.filter({ hasText: "Free expansion, What explains it" }).getByRole("link").click();
  await page.getByRole("heading", { name: "Free expansion" }).waitFor();
  expect(page.url()).toMatch(/measured\/expansion\.html#what-explains-it$/);
  await page.emulateMedia({ media: "print" });
  expect(await page.getByRole("navigation").count()).toBe(0);
  expect(complaints).toEqual([]);
  await browser.close();
}, 60_000);
