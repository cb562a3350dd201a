/** A day so many years after another, ISO 8601. The 29th of February gives way to the 1st of March: never sooner. */
export function yearsAfter(day: string, years: number): string {
  const year = Number(day.slice(0, 4)) + years;
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  const rest = day.slice(4, 10) === '-02-29' && !leap ? '-03-01' : day.slice(4, 10);
  return `${String(year).padStart(4, '0')}${rest}`;
}
