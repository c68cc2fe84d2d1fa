/** Opens an address in the browser that the desktop calls its own. */
import { spawn } from "node:child_process";

const openers = { darwin: ["open"], win32: ["rundll32", "url.dll,FileProtocolHandler"] };

/** The command that opens an address; none where nobody would see it: without a desktop, or on a server of builds. */
export function opener(platform = process.platform, env = process.env) {
  if (env.CI) return undefined;
  if (platform in openers) return openers[platform];
  return env.DISPLAY || env.WAYLAND_DISPLAY ? ["xdg-open"] : undefined;
}

/** Lets a desktop open it; one that cannot is no fault, as the address is printed as well. */
export function openAddress(url) {
  const [command, ...args] = opener() ?? [];
  if (command)
    spawn(command, [...args, url], { stdio: "ignore", detached: true })
      .on("error", () => {})
      .unref();
}
