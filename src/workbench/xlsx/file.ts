/** What opens and saves files, loaded when first needed. */
export { checkFile } from "./left";
export { readFile } from "./read";
export { writeFile } from "./write";
