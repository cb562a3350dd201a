import { spoken } from '../../text/index.ts';

/** Simulated seconds as hours, minutes and seconds: `1:04:09`, `0:00:30`. */
export function clockFigure(atS: number): string {
  const whole = Math.max(0, Math.floor(atS));
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${Math.floor(whole / 3600)}:${two(Math.floor(whole / 60) % 60)}:${two(whole % 60)}`;
}

/** A wall-clock moment (ISO 8601) as the language of the moment writes it. */
export function momentFigure(iso: string): string {
  const moment = new Date(iso);
  return Number.isNaN(moment.getTime())
    ? iso
    : moment.toLocaleString(spoken(), { dateStyle: 'medium', timeStyle: 'short' });
}
