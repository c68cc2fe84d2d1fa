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

/** Converts files into a folder; throws where LibreOffice has not written one of them. A profile of its own lets several run at once. */
export function convert(files: readonly string[], to: string, folder: string): string[] {
  const program = officePath();
  if (!program)
    throw new Error("LibreOffice is not installed (Debian: apt-get install --no-install-recommends libreoffice-calc)");
  const profile = mkdtempSync(path.join(os.tmpdir(), "bushcell-office-"));
  const { stderr } = spawnSync(
    program,
    [`-env:UserInstallation=file://${profile}`, "--headless", "--convert-to", to, "--outdir", folder, ...files],
    { encoding: "utf8" },
  );
  rmSync(profile, { recursive: true, force: true });
  const extension = to.split(":")[0]!;
  const made = files.map((file) => path.join(folder, `${path.basename(file, path.extname(file))}.${extension}`));
  for (const file of made) if (!existsSync(file)) throw new Error(`LibreOffice did not write ${file}: ${stderr}`);
  return made;
}
