/**
 * The Content-Security-Policy of a page: scripts come from the page's own address and from those given; styles are also set by
 * the components.
 * @param {string[]} scripts
 */
const policyOf = (scripts) =>
  [
    "default-src 'none'",
    ["script-src 'self'", ...scripts].join(" "),
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "font-src 'self' data:",
    "connect-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");

/**
 * The page with its policy as the first thing in its head, so that it holds for everything behind it.
 * @param {string} html
 * @param {string[]} scripts
 */
export const withPolicy = (html, ...scripts) =>
  html.replace("<head>", `<head><meta http-equiv="Content-Security-Policy" content="${policyOf(scripts)}">`);
