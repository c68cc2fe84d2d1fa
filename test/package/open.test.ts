import { chmodSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { node, run, temporaryFolder } from "./run";

const url = "http://127.0.0.1:8420/";

/** What a program with the module on it prints as JSON. */
function told(program: string, env: NodeJS.ProcessEnv = {}): unknown {
  const code = `import { opener, openAddress } from "./scripts/start/open.mjs"; ${program}`;
  const { code: ended, out, err } = run(process.execPath, ["--input-type=module", "-e", code], { env });
  expect([ended, err]).toEqual([0, ""]);
  return JSON.parse(out);
}

test("each system has its command, where a desktop is there and it is no server of builds", () => {
  const cases = [
    ["darwin", {}],
    ["win32", {}],
    ["linux", { DISPLAY: ":0" }],
    ["linux", { WAYLAND_DISPLAY: "wayland-0" }],
    ["linux", {}],
    ["linux", { DISPLAY: ":0", CI: "true" }],
    ["darwin", { CI: "1" }],
  ];
  const commands = `${JSON.stringify(cases)}.map(([platform, env]) => opener(platform, env)?.[0] ?? null)`;
  expect(told(`console.log(JSON.stringify(${commands}))`)).toEqual([
    ...["open", "rundll32", "xdg-open", "xdg-open"],
    ...[null, null, null],
  ]);
});

test("the desktop's command gets the address; one that is not there is no fault", () => {
  const folder = temporaryFolder();
  const opened = path.join(folder, "opened");
  writeFileSync(
    path.join(folder, "xdg-open"),
    `#!/bin/sh\nprintf '%s' "$1" > "${opened}.part" && mv "${opened}.part" "${opened}"\n`,
  );
  chmodSync(path.join(folder, "xdg-open"), 0o755);
  const wait = `for (let i = 0; i < 2000 && !existsSync("${opened}"); i++) await new Promise((done) => setTimeout(done, 5));`;
  const program = (until: string) =>
    `import { existsSync } from "node:fs"; openAddress("${url}"); ${until} console.log(true)`;
  const desktop = { DISPLAY: ":0", PATH: `${folder}:/bin:/usr/bin` };
  expect(told(program(wait), desktop)).toBe(true);
  expect(readFileSync(opened, "utf8")).toBe(url);
  expect(told(program(""), { DISPLAY: ":0", PATH: path.join(folder, "nothing") })).toBe(true);
});

test("an option that npm start does not know ends it before it builds", () => {
  const { code, out, err } = node("scripts/start/main.mjs", "--no-opne");
  expect([code, out]).toEqual([1, ""]);
  expect(err).toContain("--no-opne");
});
