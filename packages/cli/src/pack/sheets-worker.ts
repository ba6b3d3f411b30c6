// A worker thread of a build: makes the sheets of one design and gives back their files.
import { parentPort, workerData } from "node:worker_threads";
import { asBuiltPlane } from "@lamplane/bench";
import { makeSheets, type PackInput } from "@lamplane/export/content";

const { design, version } = workerData as Pick<PackInput, "design" | "version">;
parentPort!.postMessage(await makeSheets({ design, plane: asBuiltPlane(design), version }));
