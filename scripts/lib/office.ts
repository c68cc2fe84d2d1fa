/** LibreOffice as a second opinion: it opens and recalculates files without a window. */
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";

const places = [
  process.env.LIBREOFFICE,
  "/usr/bin/soffice",
  "/usr/local/bin/soffice",
  "/Applications/LibreOffice.app/Contents/MacOS/soffice",
];

/** Its program, or undefined where it is not installed. */
export const officePath = (): string | undefined => places.find((place) => place !== undefined && existsSync(place));

let profile: string | undefined;
/** A profile of this process's own lets several run at once; it is kept to its end, as most of a short run is the first start of a profile. */
function ownProfile(): string {
  if (profile) return profile;
  const folder = mkdtempSync(path.join(os.tmpdir(), "bushcell-office-"));
  process.on("exit", () => rmSync(folder, { recursive: true, force: true }));
  return (profile = folder);
}

/** Converts files into a folder; throws where LibreOffice has not written one of them. */
export function convert(files: readonly string[], to: string, folder: string): string[] {
  const program = officePath();
  if (!program)
    throw new Error("LibreOffice is not installed (Debian: apt-get install --no-install-recommends libreoffice-calc)");
  const { stderr } = spawnSync(
    program,
    [`-env:UserInstallation=file://${ownProfile()}`, "--headless", "--convert-to", to, "--outdir", folder, ...files],
    { encoding: "utf8" },
  );
  const extension = to.split(":")[0]!;
  const written = files.map((file) => path.join(folder, `${path.basename(file, path.extname(file))}.${extension}`));
  for (const file of written) if (!existsSync(file)) throw new Error(`LibreOffice did not write ${file}: ${stderr}`);
  return written;
}
