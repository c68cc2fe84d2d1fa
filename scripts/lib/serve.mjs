/** Serves a built folder on this machine only; a busy port gives way to the next. */
import { createServer } from "node:http";
import handler from "serve-handler";

const host = "127.0.0.1";
const tries = 50;

/** @returns {Promise<{ url: string, close: () => Promise<void> }>} */
export async function serve(dir, port = 0) {
  const server = createServer((request, response) =>
    handler(request, response, {
      public: dir,
      directoryListing: false,
      // a page keeps the name that the manifest has for it
      cleanUrls: false,
      rewrites: [{ source: "/", destination: "/index.html" }],
      headers: [{ source: "**", headers: [{ key: "Cache-Control", value: "no-cache" }] }],
    }),
  );
  await listen(server, port, port === 0 ? 1 : tries);
  return {
    url: `http://${host}:${server.address().port}/`,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

function listen(server, port, left) {
  return new Promise((resolve, reject) => {
    const failed = (error) => {
      if (error.code !== "EADDRINUSE" || left <= 1) return reject(error);
      listen(server, port + 1, left - 1).then(resolve, reject);
    };
    server.once("error", failed);
    server.listen(port, host, () => {
      server.off("error", failed);
      resolve();
    });
  });
}
