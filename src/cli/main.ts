#!/usr/bin/env node
import { command } from "./command";

// whoever reads the answer may have enough of it: `| head`
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
  process.exit();
});

process.exitCode = command(process.argv.slice(2), {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
});
