/** How webpack and jest read TypeScript: esbuild strips the types, which `npm run lint` checks. */
import path from "node:path";
import { transform } from "esbuild";

/**
 * esbuild's settings for a file.
 * @type {(file: string) => { loader: import("esbuild").Loader, target: string, jsx: "automatic" }}
 */
export const reading = (file) => ({
  loader: { ".ts": "ts", ".tsx": "tsx" }[path.extname(file)] ?? "js",
  target: "es2022",
  jsx: "automatic",
});

/** webpack's loader; its options are esbuild's. */
export default function esbuildLoader(text) {
  const done = this.async();
  transform(text, { ...reading(this.resourcePath), ...this.getOptions() }).then(({ code }) => done(null, code), done);
}
