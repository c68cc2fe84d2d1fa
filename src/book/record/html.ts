import { present } from "../../core/present";

const signs: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** Text inside a page. */
export const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => present(signs[sign]));

export const element = (tag: string, inner: string, className = ""): string =>
  `<${tag}${className && ` class="${className}"`}>${inner}</${tag}>`;
