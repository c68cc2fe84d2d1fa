import { mkdtempSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { run } from "./run";

test("a busy port gives way to the next, only this machine is served, and nothing outside the folder", () => {
  const folder = mkdtempSync(path.join(os.tmpdir(), "bushcell-"));
  writeFileSync(path.join(folder, "index.html"), "here");
  const code = `
    import { serve } from "./scripts/lib/serve.mjs";
    const one = await serve(process.argv[1], 43117);
    const two = await serve(process.argv[1], Number(new URL(one.url).port));
    const status = async (at) => (await fetch(two.url + at)).status;
    console.log(JSON.stringify({
      apart: Number(new URL(two.url).port) > Number(new URL(one.url).port),
      hosts: [one, two].map(({ url }) => new URL(url).hostname),
      page: await (await fetch(two.url)).text(),
      missing: await status("none.js"),
      above: await status("%2e%2e/%2e%2e/etc/passwd"),
    }));
    await Promise.all([one.close(), two.close()]);`;
  const { code: ended, out } = run(process.execPath, ["--input-type=module", "-e", code, folder]);
  expect(ended).toBe(0);
  expect(JSON.parse(out)).toEqual({
    apart: true,
    hosts: ["127.0.0.1", "127.0.0.1"],
    page: "here",
    missing: 404,
    above: expect.any(Number),
  });
  expect(JSON.parse(out).above).toBeGreaterThanOrEqual(400);
});
