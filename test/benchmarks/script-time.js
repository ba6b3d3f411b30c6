// What a page's scripts take of the processor, whatever else the machine does: read off Chromium's own trace, by thread.

/** Whatever runs a script, lays the page out or styles it; what stands inside another of them is not counted twice. */
const WORK = new Set([
  "EvaluateScript",
  "EventDispatch",
  "FireAnimationFrame",
  "FunctionCall",
  "HandlePostMessage",
  "Layout",
  "RunMicrotasks",
  "TimerFire",
  "UpdateLayoutTree",
]);
const CATEGORIES = ["devtools.timeline", "blink.user_timing"];

/** Does something to the page while its browser traces; the trace's events. */
export async function traced(browser, page, act) {
  await browser.startTracing(page, { categories: CATEGORIES });
  await act();
  return JSON.parse((await browser.stopTracing()).toString()).traceEvents;
}

/** Stretches of work on any thread of the page: [from, to] in µs of the wall clock, and ms of the processor. */
function workOf(events) {
  const stretches = [];
  const ends = new Map(); // by thread: where the last outermost stretch ends
  const whole = events.filter(({ ph, name, tdur }) => ph === "X" && WORK.has(name) && tdur !== undefined);
  for (const { pid, tid, ts, dur, tdur } of whole.sort((a, b) => a.ts - b.ts || b.dur - a.dur)) {
    const thread = `${pid}:${tid}`;
    if (ts < (ends.get(thread) ?? 0)) continue;
    ends.set(thread, ts + dur);
    stretches.push({ thread, from: ts, to: ts + Math.max(dur, 1), cost: tdur / 1000 });
  }
  return stretches;
}

/** The page's own measures of a name: from the change to what is drawn, µs. A begin stands just before its end. */
function measuresOf(events, name) {
  const marks = events.filter((event) => event.name === name && (event.ph === "b" || event.ph === "e"));
  return marks.flatMap(({ ph, ts }, i) =>
    ph === "e" && marks[i - 1]?.ph === "b" ? [{ from: marks[i - 1].ts, to: ts }] : [],
  );
}

/**
 * ms of the processor within each measure of a name; of work that goes on after it, its share of the time.
 * @param worker whose thread counts beside the page's own: 0 for the one that was started first
 */
export function scriptTimes(events, name, worker) {
  const [page] = events.filter((event) => event.name === name);
  if (!page) return [];
  const others = [...new Set(events.filter(isWorkerName).map(({ tid }) => tid))].sort((a, b) => a - b);
  const threads = [page.tid, others[worker]].map((tid) => `${page.pid}:${tid}`);
  const work = workOf(events).filter(({ thread }) => threads.includes(thread));
  return measuresOf(events, name).map(({ from, to }) =>
    work.reduce((sum, each) => {
      const within = Math.min(to, each.to) - Math.max(from, each.from);
      return within > 0 ? sum + (each.cost * within) / (each.to - each.from) : sum;
    }, 0),
  );
}

const isWorkerName = ({ name, args }) => name === "thread_name" && args.name === "DedicatedWorker thread";

/** ms of the processor that the page's thread and the workers' threads took until a measure of a name ended. */
export function timeUntil(events, name) {
  const { to } = measuresOf(events, name)[0];
  return workOf(events).reduce((sum, { from, cost }) => (from < to ? sum + cost : sum), 0);
}

/** ms of the processor that the busiest thread took. */
export function busiestTime(events) {
  const by = new Map();
  for (const { thread, cost } of workOf(events)) by.set(thread, (by.get(thread) ?? 0) + cost);
  return Math.max(...by.values());
}

/** Names of the files that were asked for until a measure of a name ended. */
export function fetchedUntil(events, name) {
  const { to } = measuresOf(events, name)[0];
  const requests = events.filter((event) => event.name === "ResourceSendRequest" && event.ts < to);
  return requests.map(({ args }) => args.data.url.split("?")[0].split("/").at(-1));
}
