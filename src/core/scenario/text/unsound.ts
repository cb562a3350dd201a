import type { Problem } from '../problem.ts';
import { DEPTH_MOST } from './readText.ts';

/**
 * What cannot stand in a document that was taken out of its text elsewhere. Minus zero prints as zero, so a document
 * that holds one would not read back as itself.
 */
export function unsoundIn(value: unknown, where = '', depth = 0): Problem | null {
  if (typeof value === 'number')
    return Object.is(value, -0) ? { where, says: 'Minus zero is not a number a rule can show.' } : null;
  if (typeof value !== 'object' || value === null) return null;
  if (depth >= DEPTH_MOST) return { where, says: 'The document is nested too deeply.' };
  for (const [key, inner] of Object.entries(value)) {
    const found = unsoundIn(inner, placeIn(value, where, key), depth + 1);
    if (found) return found;
  }
  return null;
}

/** The place of a member, as a person would point at it. */
export function placeIn(whole: object, where: string, key: string): string {
  if (Array.isArray(whole)) return `${where}[${key}]`;
  return where === '' ? key : `${where}.${key}`;
}
