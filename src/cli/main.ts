#!/usr/bin/env node
import { command } from "./command";

process.exitCode = command(process.argv.slice(2), {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
});
