#!/usr/bin/env node
import { main } from "../bundle/lamplane.js";

process.exitCode = await main(process.argv.slice(2));
