// Judges mutants in child processes, since one of them may run on for ever.
import { fork } from "node:child_process";
import { ROOT } from "./groups.js";

/**
 * One child that judges mutants in turn, and is begun anew after one that runs on for ever.
 * `judge(mutant, tests, longest)` gives { seen, times }; without a mutant the source as it is. What takes longer than `longest` ms is seen.
 */
export function startJudge() {
  let child;
  const start = () => {
    child = fork(`${ROOT}test/mutants/judge.js`, { cwd: ROOT, detached: true, stdio: "ignore" });
    return new Promise((resolve) => child.once("message", resolve));
  };
  const end = () => {
    if (child) process.kill(-child.pid, "SIGKILL");
    child = undefined;
  };
  const judge = async (mutant, tests, longest) => {
    if (!child) await start();
    let clock;
    const answer = new Promise((resolve) => {
      child.once("message", resolve);
      clock = setTimeout(() => resolve(undefined), longest);
    });
    child.send({ mutant, tests });
    const judgement = await answer;
    clearTimeout(clock);
    if (!judgement) end();
    return judgement ?? { seen: true, times: {} };
  };
  return { judge, end };
}

/**
 * The tests of each group by its name, the quick ones first, since most mutants are seen by the first test that runs.
 * A group of which a test fails without any mutant judges nothing: it is printed and left out.
 */
export async function orderTests(groups, testsOf) {
  const { judge, end } = startJudge();
  const ordered = new Map();
  for (const group of groups) {
    const { seen, times } = await judge(undefined, testsOf(group), 3_600_000);
    const whole = Object.values(times).reduce((sum, each) => sum + each, 0);
    console.log(`${group.name}: ${Object.keys(times).length} test files in ${(whole / 1000).toFixed(0)} s`);
    if (seen) console.log(`${group.name} is LEFT OUT: ${Object.keys(times).at(-1)} fails without any mutant`);
    else
      ordered.set(group.name, {
        tests: Object.keys(times).sort((a, b) => times[a] - times[b]),
        longest: 60_000 + 4 * whole,
      });
  }
  end();
  return ordered;
}

/** Judges a sample, `atOnce` at a time, until `until` by the clock; `report(judged, count)` hears of each. */
export async function judgeSample(sample, { ordered, atOnce, until, report }) {
  const [queue, done] = [[...sample], []];
  const work = async () => {
    const { judge, end } = startJudge();
    let lastSeen;
    for (let mutant = queue.shift(); mutant && Date.now() < until; mutant = queue.shift()) {
      const { tests, longest } = ordered.get(mutant.group);
      const { path, start, end: to, text } = mutant;
      const { seen, times } = await judge({ path, start, end: to, text }, tests, longest);
      if (seen) lastSeen = Object.keys(times).at(-1) ?? lastSeen;
      done.push({ ...mutant, seen });
      report(done.at(-1), done.length);
    }
    if (lastSeen && (await judge(undefined, [lastSeen], 600_000)).seen)
      throw new Error(`${lastSeen}: fails on the source as it is, after mutants; nothing was judged`);
    end();
  };
  await Promise.all(Array.from({ length: atOnce }, work));
  return done;
}
