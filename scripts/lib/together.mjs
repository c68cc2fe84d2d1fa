/** Commands that need nothing of each other, run side by side: one on each core at a time. */
import { spawn } from "node:child_process";
import os from "node:os";
import { root } from "./root.mjs";

/**
 * Runs the commands, the first of them first; each one's words are given in one piece at its end to `tell`. Answers those that failed.
 * @template {string | string[]} Command a script and its arguments for Node, or a line for the shell, which finds the packages' commands where npm put them on the path
 * @param {Command[]} commands
 * @param {(command: Command, ended: { code: number | null, said: string }) => void} tell
 */
export async function together(commands, tell) {
  const waiting = [...commands];
  /** @type {Command[]} */
  const failed = [];
  const work = async () => {
    for (let command = waiting.shift(); command; command = waiting.shift()) {
      const ended = await run(command, commands.length === 1);
      if (ended.code !== 0) failed.push(command);
      tell(command, ended);
    }
  };
  await Promise.all(Array.from({ length: os.availableParallelism() }, work));
  return failed;
}

/**
 * What runs alone is heard as it speaks.
 * @type {(command: string | string[], alone: boolean) => Promise<{ code: number | null, said: string }>}
 */
function run(command, alone) {
  const [program, args, shell] =
    typeof command === "string" ? [command, [], true] : [process.execPath, command, false];
  const output = alone ? "inherit" : "pipe";
  const child = spawn(program, args, { cwd: root, shell, stdio: ["ignore", output, output] });
  let said = "";
  for (const stream of [child.stdout, child.stderr]) stream?.on("data", (text) => (said += text));
  return new Promise((resolve) => child.on("close", (code) => resolve({ code, said })));
}
