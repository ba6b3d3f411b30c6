// Required by every thread of a command: ends its worker threads at one of their answers, as LAMPLANE_TEST_END says ("throw 2", "exit 1").
const { isMainThread, parentPort } = require("node:worker_threads");

const [how, at] = (process.env.LAMPLANE_TEST_END ?? "").split(" ");
if (!isMainThread) {
  const answer = parentPort.postMessage.bind(parentPort);
  let count = 0;
  parentPort.postMessage = (message) => {
    if (++count < Number(at)) return answer(message);
    if (how === "throw") throw new Error("broken off on purpose");
    process.exit(7);
  };
}
