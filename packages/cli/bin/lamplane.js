#!/usr/bin/env node
import { setFlagsFromString } from "node:v8";
import { main } from "../bundle/lamplane.js";

// A command lives for a second or two: the engine's optimizing compiler, left to itself, spends a third of that on functions that
// are soon done with. Here it begins on a function after four times as much of its work, and inlines a third as much.
const [nodeVersion] = process.versions.node.split(".").map(Number);
setFlagsFromString(nodeVersion < 22 ? "--interrupt-budget=270000" : "--invocation-count-for-turbofan=12000");
setFlagsFromString("--max-inlined-bytecode-size-cumulative=300");

process.exitCode = await main(process.argv.slice(2));
