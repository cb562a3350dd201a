/** The day it is here and now, ISO 8601. */
export const today = (): string => new Date().toISOString().slice(0, 10);

/** A day so many days after another, ISO 8601. */
export function daysAfter(day: string, days: number): string {
  const moment = new Date(`${day}T00:00:00Z`);
  moment.setUTCDate(moment.getUTCDate() + days);
  return moment.toISOString().slice(0, 10);
}
