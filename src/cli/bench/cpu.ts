/** Least processor time of so many tries, ms: what the work costs when nothing disturbs it. */
export function leastMs(tries: number, work: () => void): number {
  let least = Infinity;
  for (let i = 0; i < tries; i += 1) {
    const before = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(before);
    least = Math.min(least, (user + system) / 1000);
  }
  return Math.max(least, 0.001);
}

export const whole = (value: number): number => Math.round(value);
export const tenth = (value: number): number => Math.round(value * 10) / 10;
