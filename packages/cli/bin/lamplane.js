#!/usr/bin/env node
import { setFlagsFromString } from "node:v8";
import { main } from "../bundle/lamplane.js";

// A command lives for a second or two, and the optimizing compiler of Node.js 20, left to itself, spends a third of that on functions
// that are soon done with. Here it begins on a function after four times as much of its work, and inlines a third as much.
if (Number.parseInt(process.versions.node, 10) < 22) {
  setFlagsFromString("--interrupt-budget=270000");
  setFlagsFromString("--max-inlined-bytecode-size-cumulative=300");
}

process.exitCode = await main(process.argv.slice(2));
