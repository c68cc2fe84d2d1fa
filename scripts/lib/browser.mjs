import { existsSync } from "node:fs";

const places = [
  process.env.CHROMIUM,
  // without a browser's own windows: half the time of the whole one
  "/usr/bin/chromium-headless-shell",
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/** The Chromium that the browser tests use, or undefined. */
export const browserPath = () => places.find((place) => place && existsSync(place));
