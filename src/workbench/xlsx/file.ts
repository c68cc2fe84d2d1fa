/** What opens and saves files, loaded when first needed. */
export { writeHandedOver } from "./handOver";
export { checkFile } from "./left";
export { readFile } from "./read";
export { readText } from "./text";
export { writeFile } from "./write";
