// Required by a sweep's process: sends itself a signal at one of its writes into the table, as LAMPLANE_TEST_STOP says ("SIGKILL 2").
const fs = require("node:fs");
const { isMainThread } = require("node:worker_threads");

const [signal, at] = (process.env.LAMPLANE_TEST_STOP ?? "").split(" ");
if (isMainThread && signal) {
  const write = fs.writeSync;
  let count = 0;
  fs.writeSync = (...args) => {
    if (++count === Number(at)) {
      if (signal === "SIGSTOP") write(1, "stopped\n");
      process.kill(process.pid, signal);
    }
    return write(...args);
  };
  require("node:module").syncBuiltinESMExports();
}
