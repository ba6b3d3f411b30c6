// Required by every thread of a command: ends its worker threads at their second answer, in the way that LAMPLANE_TEST_END names.
const { isMainThread, parentPort } = require("node:worker_threads");

if (!isMainThread) {
  const answer = parentPort.postMessage.bind(parentPort);
  let count = 0;
  parentPort.postMessage = (message) => {
    if (++count < 2) return answer(message);
    if (process.env.LAMPLANE_TEST_END === "throw") throw new Error("broken off on purpose");
    process.exit(7);
  };
}
