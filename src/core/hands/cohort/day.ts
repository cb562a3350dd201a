const monthDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** A morning so many days after the first of September 2026, ISO 8601 in UTC: a date for a run that nobody made. */
export function inventedMorning(days: number, minute: number): string {
  let [year, month, day] = [2026, 8, days];
  const length = (): number => monthDays[month] + (month === 1 && year % 4 === 0 && year % 100 !== 0 ? 1 : 0);
  while (day >= length()) {
    day -= length();
    month += 1;
    if (month === 12) [year, month] = [year + 1, 0];
  }
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${year}-${two(month + 1)}-${two(day + 1)}T${two(7 + Math.floor(minute / 60))}:${two(minute % 60)}:00Z`;
}
