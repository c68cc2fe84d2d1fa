import { spawn } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { get } from "node:https";
import path from "node:path";
import { chromium } from "playwright-core";
import { browserPath, node, root, run, temporaryFolder } from "./run";

const folder = temporaryFolder();
const read = (name: string) => readFileSync(path.join(folder, name), "utf8");

describe("a build for another address", () => {
  const beside = [".new", ".new-mine", ".old"].map((ending) => `${folder}${ending}`);
  beforeAll(() => {
    for (const other of beside) {
      mkdirSync(other);
      writeFileSync(path.join(other, "mine.txt"), "kept");
    }
    const { code, err } = node(
      "scripts/build/main.mjs",
      "--base=https://static.example/tools/bushcell/",
      "--office=node_modules/@microsoft/office-js/dist",
      "--contact=desk@static.example",
      "--only=functions,taskpane",
      `--out=${folder}`,
    );
    expect([code, err]).toEqual([0, ""]);
  }, 600_000);

  test("leaves what stands beside its folder, and leaves nothing there", () => {
    const { dir, base } = path.parse(folder);
    const found = readdirSync(dir).filter((name) => name.startsWith(base));
    expect(found.sort()).toEqual([folder, ...beside].map((one) => path.basename(one)).sort());
    for (const other of beside) expect(readFileSync(path.join(other, "mine.txt"), "utf8")).toBe("kept");
  });

  test("has a sound manifest that names that address and no other", () => {
    expect(node("scripts/manifest/main.mjs", path.join(folder, "manifest.xml")).code).toBe(0);
    const addresses = read("manifest.xml").match(/https:\/\/(?!static\.example\/tools\/bushcell\/)[^"<]*/g);
    expect(addresses).toEqual(["https://static.example"]);
  });

  test("holds every file that the manifest names", () => {
    const named = [...read("manifest.xml").matchAll(/https:\/\/static\.example\/tools\/bushcell\/([^"]*)/g)].map(
      (m) => m[1]!,
    );
    expect(named.length).toBeGreaterThan(8);
    for (const name of named) expect([name, existsSync(path.join(folder, name))]).toEqual([name, true]);
  });

  test("takes office.js from itself, and its policy allows itself alone", () => {
    const own = readFileSync(path.join(root, "node_modules/@microsoft/office-js/dist/office.js"), "utf8");
    expect(read("office/office.js")).toBe(own);
    expect(read("taskpane.html")).toContain("office/office.js");
    expect(scriptSources(read("taskpane.html"))).toBe("'self'");
  });

  test("its help page names the contact and the terms", () => {
    expect(read("help.html")).toContain('<a href="mailto:desk@static.example">desk@static.example</a>');
    expect(read("help.html")).toContain('href="licence.txt"');
    expect(read("licence.txt")).toBe(readFileSync(path.join(root, "LICENSE"), "utf8"));
  });

  test("its pane opens under that policy: nothing is refused, and no request leaves the address", async () => {
    const address = "https://static.example/tools/bushcell/";
    const browser = await chromium.launch({ executablePath: browserPath(), args: ["--no-sandbox"] });
    const page = await browser.newPage({ viewport: { width: 320, height: 700 } });
    const told: string[] = [];
    const asked: string[] = [];
    page.on("console", (message) => told.push(message.text()));
    page.on("request", (request) => asked.push(request.url()));
    await page.route(`${address}**`, (route) =>
      route.fulfill({ path: path.join(folder, route.request().url().slice(address.length)) }),
    );
    await page.goto(`${address}taskpane.html`);
    // what the pane says where no Excel answers; by then its scripts have run, the one of Excel's side too
    await page.getByText("This page belongs in a spreadsheet").waitFor();
    expect(told.filter((text) => /Content Security Policy/i.test(text))).toEqual([]);
    expect(asked.filter((url) => !url.startsWith(address) && !url.startsWith("data:"))).toEqual([]);
    expect(asked.filter((url) => url.endsWith(".js")).length).toBeGreaterThanOrEqual(3);
    await browser.close();
  });
});

test("the usual build takes office.js from Microsoft, and its policy allows that and itself", () => {
  const page = readFileSync(path.join(root, "dist/taskpane.html"), "utf8");
  expect(scriptSources(page)).toBe("'self' https://appsforoffice.microsoft.com");
  expect(scriptSources(readFileSync(path.join(root, "dist/index.html"), "utf8"))).toBe("'self'");
});

/** The policy must come before anything that it is to hold for. */
function scriptSources(page: string): string | undefined {
  return /<head><meta http-equiv="?Content-Security-Policy"? content="[^"]*script-src ([^;]*);/.exec(page)?.[1];
}

test("a wrong option is refused before anything is built", () => {
  for (const option of [
    "--base=http://static.example",
    "--base=here",
    "--base=https://static.example/?",
    "--base=https://static.example/#",
    "--base=https://:pw@static.example",
    "--base=https://me@static.example",
    "--base=https://static.example/$&",
    "--contact=nobody",
    "--contact=http://static.example",
    "--office=/nowhere",
    "--only=functions,pane",
    "--bass=https://static.example",
  ]) {
    const { code, err } = node("scripts/build/main.mjs", option, `--out=${path.join(folder, "none")}`);
    expect([option, code]).toEqual([option, 1]);
    expect(err).toContain(option.slice(0, option.indexOf("=")));
  }
  expect(existsSync(path.join(folder, "none"))).toBe(false);
});

test("each example of docs/hosting.md that sets a cache lets the icons be kept", () => {
  const guide = readFileSync(path.join(root, "docs/hosting.md"), "utf8");
  const examples = [...guide.matchAll(/^```\w*\n([^]*?)^```$/gm)]
    .map((m) => m[1]!)
    .filter((text) => text.includes("Cache-Control"));
  expect(examples.length).toBe(5);
  for (const text of examples) expect(text).toMatch(/assets[^]*?Cache-Control[":= value]*public, max-age=86400/);
});

test("npm start refuses a PORT that is none before it builds", () => {
  for (const port of ["abc", "-1", "65536", "80.5", ""]) {
    const { code, out, err } = run(process.execPath, ["scripts/start/main.mjs"], {
      env: { ...process.env, PORT: port },
    });
    expect([port, code, out, err]).toEqual([
      port,
      1,
      "",
      `PORT must be a whole number from 0 to 65535, got "${port}"\n`,
    ]);
  }
});

test.each([
  ["build", "scripts/build/main.mjs"],
  ["docs", "node_modules/jiti/lib/jiti-cli.mjs", "scripts/docs/main.ts"],
])("npm run %s empties no folder but its own", (_, script, ...args) => {
  const kept = temporaryFolder();
  writeFileSync(path.join(kept, "mine.txt"), "kept");
  for (const place of [kept, "", ".", "src"]) {
    const { code, err } = node(script, ...args, `--out=${place}`);
    expect([place, code, err]).toEqual([place, 1, expect.stringContaining(`--out must be a new or empty folder`)]);
  }
  expect(readFileSync(path.join(kept, "mine.txt"), "utf8")).toBe("kept");
});

describe("npm run start:excel", () => {
  const home = temporaryFolder();
  let server: ReturnType<typeof spawn>;
  let said = "";

  beforeAll(async () => {
    server = spawn(process.execPath, ["scripts/start/excel.mjs"], { cwd: root, env: { ...process.env, HOME: home } });
    await new Promise<void>((resolve, reject) => {
      server.stdout!.on("data", (text) => {
        said += text;
        if (said.includes("docs/try-in-excel.md")) resolve();
      });
      server.stderr!.on("data", (text) => reject(new Error(String(text))));
    });
  });
  afterAll(() => void server.kill());

  test("says how to load the add-in on Windows, the Mac and the web", () => {
    for (const word of ["Windows ", "Mac ", "Web ", "Trusted Add-in Catalogs", "Upload My Add-in", "/wef/"])
      expect(said).toContain(word);
  });

  test("serves https under a certificate for localhost, open to other origins; asked for again but for the icons", async () => {
    const ca = readFileSync(path.join(home, ".office-addin-dev-certs/ca.crt"));
    const asked = (file: string) =>
      new Promise<{ status?: number; headers: Record<string, unknown> }>((resolve, reject) =>
        get(`https://localhost:8443/${file}`, { ca }, (answer) => {
          answer.resume();
          resolve({ status: answer.statusCode, headers: answer.headers });
        }).on("error", reject),
      );
    expect(await asked("functions.json")).toMatchObject({
      status: 200,
      headers: { "access-control-allow-origin": "*", "cache-control": "no-cache" },
    });
    // Excel leaves out an icon that comes with no-cache or no-store (Microsoft's guide to icons of add-ins, memory)
    expect(await asked("assets/icon-32.png")).toMatchObject({
      status: 200,
      headers: { "content-type": "image/png", "cache-control": "public, max-age=86400" },
    });
  });

  test("the help page shows, its policy refuses nothing of it, and a script of another origin is refused", async () => {
    const browser = await chromium.launch({ executablePath: browserPath(), args: ["--no-sandbox"] });
    const page = await browser.newPage({ ignoreHTTPSErrors: true });
    const told: string[] = [];
    page.on("console", (message) => told.push(message.text()));
    await page.goto("https://localhost:8443/help.html");
    expect(await page.textContent("h1")).toContain("Bushcell");
    expect(told).toEqual([]);
    const refusal = page.waitForEvent("console", (message) => /Content Security Policy/.test(message.text()));
    await page.evaluate(() => {
      const script = document.createElement("script");
      script.src = "https://elsewhere.example/x.js";
      document.head.append(script);
    });
    expect((await refusal).text()).toContain("elsewhere.example");
    await browser.close();
  });
});
