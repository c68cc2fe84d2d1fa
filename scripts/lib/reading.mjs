/** How the pages, functions.js and jest read TypeScript: esbuild strips the types, which `npm run lint` checks. */
import path from "node:path";

/**
 * esbuild's settings for a file.
 * @type {(file: string) => { loader: import("esbuild").Loader, target: string, jsx: "automatic" }}
 */
export const reading = (file) => ({
  loader: { ".ts": "ts", ".tsx": "tsx" }[path.extname(file)] ?? "js",
  target: "es2022",
  jsx: "automatic",
});
