/** The median time of so many runs, in milliseconds, after two to warm up. */
export function timed(run: () => unknown, runs = 9): number {
  run();
  run();
  const times = Array.from({ length: runs }, () => {
    const began = performance.now();
    run();
    return performance.now() - began;
  }).sort((a, b) => a - b);
  return times[runs >> 1] ?? Number.NaN;
}
