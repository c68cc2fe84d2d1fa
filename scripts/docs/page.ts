const policy = "default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'";
/** Of a page that has a script of its own. */
const withScript = `${policy}; script-src 'self'`;

/** A page before its Markdown becomes HTML. */
export interface MarkdownPage {
  readonly file: string;
  readonly title: string;
  readonly text: string;
}

export interface Page {
  /** Path inside the site: "functions/pressure.html". */
  readonly file: string;
  readonly title: string;
  /** HTML of the page's own part, its heading included. */
  readonly body: string;
  /** A script beside the page. */
  readonly script?: string;
}

/** The site's own links, by file. */
const places: readonly [string, string][] = [
  ["index.html", "Start"],
  ["functions/index.html", "Functions"],
  ["duties.html", "Duties"],
  ["criteria/index.html", "Criteria"],
  ["families/index.html", "Families"],
  ["engineer.html", "For engineers"],
  ["buyer.html", "For buyers"],
  ["trainer.html", "For trainers"],
  ["own-data.html", "Own data"],
  ["limits.html", "Limits"],
  ["measured/index.html", "Measured"],
  ["glossary.html", "Words"],
  ["search.html", "Search"],
];

/** A whole page; every link is relative, so that the site stands in any folder. */
export function pageText({ file, title, body, script }: Page): string {
  const up = "../".repeat(file.split("/").length - 1);
  const links = places.map(
    ([target, words]) =>
      `<li><a href="${up}${target}"${target === file ? ' aria-current="page"' : ""}>${words}</a></li>`,
  );
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${script ? withScript : policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title} – Bushcell</title>
<link rel="icon" href="${up}icon-32.png">
<link rel="stylesheet" href="${up}site.css">${script ? `\n<script defer src="${up}${script}"></script>` : ""}
</head>
<body>
<a class="skip" href="#content">To the page</a>
<header>
<p class="name"><a href="${up}index.html"><img src="${up}icon-32.png" alt="" width="24" height="24"> Bushcell</a></p>
<nav aria-label="Pages"><ul>${links.join("")}</ul></nav>
</header>
<main id="content">
${body}
</main>
<footer>
<p>Preliminary sizing. Figures of materials are typical, not guaranteed; demo grades are invented. Test in the application, follow local codes, and where a failure can hurt someone have a licensed engineer decide.</p>
</footer>
</body>
</html>
`;
}
