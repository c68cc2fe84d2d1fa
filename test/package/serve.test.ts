import { mkdirSync, mkdtempSync, symlinkSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { run } from "./run";

/** A folder as a build leaves it, and what a program with `serve` on it prints as JSON. */
function served<T>(program: string, shell = ""): T {
  const folder = mkdtempSync(path.join(os.tmpdir(), "bushcell-"));
  const built = path.join(folder, "built");
  mkdirSync(path.join(built, "docs"), { recursive: true });
  writeFileSync(path.join(built, "index.html"), "here");
  writeFileSync(path.join(built, "docs/index.html"), "guide");
  writeFileSync(path.join(built, "large.js"), "x".repeat(4_000_000));
  writeFileSync(path.join(built, "icon.png"), "");
  writeFileSync(path.join(folder, "secret.txt"), "secret");
  symlinkSync("../secret.txt", path.join(built, "link.txt"));
  symlinkSync("loop.txt", path.join(built, "loop.txt"));
  const code = `
    import { createConnection } from "node:net";
    import { request } from "node:http";
    import { once } from "node:events";
    import { renameSync } from "node:fs";
    import { serve } from "./scripts/lib/serve.mjs";
    const folder = process.argv[1];
    const one = await serve(folder, 43117);
    const ask = (at, { url = one.url, ...options } = {}) => new Promise((resolve, reject) =>
      request(url + at, options, async (answer) => {
        let text = "";
        for await (const part of answer) text += part;
        resolve({ status: answer.statusCode, text, headers: answer.headers });
      }).on("error", reject).end());
    const status = async (...given) => (await ask(...given)).status;
    ${program}`;
  const wrapped = `${shell} exec "$0" "$@"`;
  const {
    code: ended,
    out,
    err,
  } = run("bash", ["-c", wrapped, process.execPath, "--input-type=module", "-e", code, built]);
  expect([ended, err]).toEqual([0, ""]);
  return JSON.parse(out) as T;
}

test("a busy port gives way to the next, only this machine is served, and nothing outside the folder", () => {
  expect(
    served(`
    const two = await serve(folder, Number(new URL(one.url).port));
    console.log(JSON.stringify({
      apart: Number(new URL(two.url).port) > Number(new URL(one.url).port),
      hosts: [one, two].map(({ url }) => new URL(url).hostname),
      page: (await ask("", { url: two.url })).text,
      docs: [(await ask("docs/")).text, (await ask("docs")).headers.location],
      missing: await status("none.js"),
      above: await status("%2e%2e/%2e%2e/etc/passwd") >= 400,
      link: await status("link.txt"),
      unreadable: await status("loop.txt"),
      malformed: await status("%zz"),
    }));
    await Promise.all([one.close(), two.close()]);`),
  ).toEqual({
    apart: true,
    hosts: ["127.0.0.1", "127.0.0.1"],
    page: "here",
    docs: ["guide", "/docs/"],
    missing: 404,
    above: true,
    link: 403,
    unreadable: 500,
    malformed: 400,
  });
});

test("it answers to its own names, and to GET and HEAD alone", () => {
  expect(
    served(`
    const { port } = new URL(one.url);
    const called = (host) => status("", { headers: { host } });
    const head = await ask("large.js", { method: "HEAD" });
    console.log(JSON.stringify({
      own: [await called("localhost:" + port), await called("127.0.0.1:" + port)],
      others: [await called("elsewhere.example"), await called("127.0.0.1.elsewhere.example:" + port)],
      head: [head.status, head.text, head.headers["content-length"]],
      methods: await Promise.all(["POST", "PUT", "DELETE", "OPTIONS"].map((method) => status("", { method }))),
    }));
    await one.close();`),
  ).toEqual({
    own: [200, 200],
    others: [403, 403],
    head: [200, "", "4000000"],
    methods: [405, 405, 405, 405],
  });
});

test("it outlives 400 requests that are broken off with 256 files allowed, and a folder that goes and comes back", () => {
  const program = `
    const { port } = new URL(one.url);
    const breakOff = async () => {
      const socket = createConnection(Number(port), "127.0.0.1");
      socket.on("error", () => {});
      socket.write("GET /large.js HTTP/1.1\\r\\nHost: localhost\\r\\n\\r\\n");
      // a connection that the system resets is broken off as well
      await Promise.race([once(socket, "data"), once(socket, "close")]).catch(() => {});
      socket.destroy();
    };
    for (let round = 0; round < 4; round++) await Promise.all(Array.from({ length: 100 }, breakOff));
    const after = await status("");
    const reading = Promise.all(Array.from({ length: 40 }, () => status("large.js")));
    renameSync(folder, folder + ".old");
    const gone = await status("");
    renameSync(folder + ".old", folder);
    await reading;
    console.log(JSON.stringify({ after, gone, back: await status("") }));
    await one.close();`;
  expect(served(program, "ulimit -n 256;")).toEqual({ after: 200, gone: 404, back: 200 });
});
