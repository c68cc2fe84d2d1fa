/**
 * `npm run start:excel [-- --from=folder]`: serves the built add-in, dist or another folder, over https on this machine
 * and says how to load it into Excel.
 */
import { X509Certificate } from "node:crypto";
import { existsSync, readFileSync, rmSync } from "node:fs";
import { createServer } from "node:https";
import os from "node:os";
import path from "node:path";
import certificates from "office-addin-dev-certs";
import { options, stop } from "../lib/command.mjs";
import { localAddress, manifestFaults } from "../lib/manifest.mjs";
import { answerer } from "../lib/serve.mjs";
import { root } from "../lib/root.mjs";

const { from } = options({ from: { type: "string", default: "dist" } });
const folder = path.resolve(root, from);

const manifest = path.join(folder, "manifest.xml");
if (!existsSync(manifest)) stop(`${folder} holds no manifest.xml: run "npm run build" first.`);
const faults = manifestFaults(readFileSync(manifest, "utf8"));
if (faults.length > 0) stop(faults.join("\n"));
if (!readFileSync(manifest, "utf8").includes(`"${localAddress}/`))
  stop(`${manifest} is for another address: run "npm run build".`);

/** Excel takes nothing but https that the machine trusts; it fetches functions.json from another origin, hence CORS. */
const server = createServer(
  await certificate(),
  answerer(folder, ["localhost"], { "Access-Control-Allow-Origin": "*" }),
);
const { port } = new URL(localAddress);
server.once("error", (error) =>
  stop(`Cannot serve ${localAddress}: ${error.message}. The manifest names this port, so free it first.`),
);
server.listen(Number(port), "localhost", () => console.log(guide()));

/**
 * Windows and the Mac are asked to trust the certificate. Elsewhere there is no Excel but the one in a browser, and
 * browsers keep their own lists, so there the certificate is only made.
 */
async function certificate() {
  if (["win32", "darwin"].includes(process.platform)) return certificates.getHttpsServerOptions();
  const place = path.join(os.homedir(), ".office-addin-dev-certs");
  const [ca, cert, key] = ["ca.crt", "localhost.crt", "localhost.key"].map((name) => path.join(place, name));
  if (existsSync(cert) && new Date(new X509Certificate(readFileSync(cert)).validTo) < new Date())
    rmSync(place, { recursive: true });
  if (!existsSync(cert)) await certificates.generateCertificates(ca, cert, key);
  console.log(`Let the browser trust the authority ${ca}`);
  return { cert: readFileSync(cert), key: readFileSync(key) };
}

function guide() {
  return `
The add-in is served at ${localAddress}   (Ctrl+C ends it)
Its manifest: ${manifest}

Windows  Share the manifest's folder (its properties, Sharing) and note the path \\\\computer\\folder.
         Excel: File > Options > Trust Center > Trust Center Settings > Trusted Add-in Catalogs: add that path,
         tick "Show in Menu", start Excel again. Then Home > Add-ins > More Add-ins > Shared Folder > Bushcell.
Mac      Copy the manifest to ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef/ (make the folder if it is
         not there), start Excel again. Then Home > Add-ins > Bushcell.
Web      In a workbook: Home > Add-ins > More Add-ins > My Add-ins > Upload My Add-in, choose the manifest.

Then type =BUSH.VERSION() in a cell. docs/try-in-excel.md lists what to try next.`;
}
