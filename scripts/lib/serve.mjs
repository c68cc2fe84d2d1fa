/** Serves a built folder on this machine only, so that nothing is compressed; a busy port gives way to the next. */
import { realpath } from "node:fs/promises";
import { createServer } from "node:http";
import path from "node:path";
import send from "send";

const address = "127.0.0.1";
const tries = 50;

/** @returns {Promise<{ url: string, close: () => Promise<void> }>} */
export async function serve(dir, port = 0) {
  const server = createServer(answerer(dir, [address, "localhost"]));
  await listen(server, port, port === 0 ? 1 : tries);
  return {
    url: `http://${address}:${/** @type {import("node:net").AddressInfo} */ (server.address()).port}/`,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

/**
 * Answers GET and HEAD for the files of a folder. A page of another site can give its own name this machine's address;
 * so a request is answered only if it asks for a name of this server.
 */
export function answerer(dir, names, headers = {}) {
  const folder = path.resolve(dir);
  return async (request, response) => {
    if (!names.includes(nameAsked(request))) return refuse(response, 403);
    if (!["GET", "HEAD"].includes(request.method)) {
      response.setHeader("Allow", "GET, HEAD");
      return refuse(response, 405);
    }
    const [pathname] = request.url.split("?");
    if (await leadsOut(folder, pathname)) return refuse(response, 403);
    send(request, pathname, { root: folder, cacheControl: false })
      .on("headers", (_, file) => {
        const all = { ...headers, "X-Content-Type-Options": "nosniff", "Cache-Control": cacheOf(file) };
        for (const [name, value] of Object.entries(all)) response.setHeader(name, value);
      })
      .on("error", ({ status }) => refuse(response, status))
      .pipe(response);
  };
}

/**
 * A name with its content's hash is for ever. Other names stay the same from build to build, so they are asked for
 * again; Excel shows no icon that must not be kept.
 */
function cacheOf(file) {
  if (/\.[A-Z\d]{8}\.js$/.test(file)) return "public, max-age=31536000, immutable";
  return file.endsWith(".png") ? "public, max-age=86400" : "no-cache";
}

function nameAsked({ headers: { host = "" } }) {
  return URL.canParse(`http://${host}`) ? new URL(`http://${host}`).hostname : undefined;
}

/** Whether a link in the folder leads to a file outside it; what is not there is for the answer to say. */
async function leadsOut(folder, pathname) {
  try {
    const [root, file] = await Promise.all(
      [folder, path.join(folder, decodeURIComponent(pathname))].map((f) => realpath(f)),
    );
    return file !== root && !file.startsWith(root + path.sep);
  } catch {
    return false;
  }
}

/** A client may have gone, or have half of the file: then there is nobody to tell. */
function refuse(response, status) {
  if (response.headersSent) return response.destroy();
  response.writeHead(status, { "Content-Type": "text/plain" }).end(`${status}\n`);
}

function listen(server, port, left) {
  return new Promise((/** @type {(value?: unknown) => void} */ resolve, reject) => {
    const failed = (error) => {
      if (error.code !== "EADDRINUSE" || left <= 1) return reject(error);
      listen(server, port + 1, left - 1).then(resolve, reject);
    };
    server.once("error", failed);
    server.listen(port, address, () => {
      server.off("error", failed);
      resolve();
    });
  });
}
