import { capital, words, type Voice } from '../../text/index.ts';
import type { Scenario } from '../../core/scenario/index.ts';
import { word } from '../words/word.svelte.ts';
import { sectionOf, fieldAt } from './fields.ts';
import { plainPath, stepsOf } from './path.ts';

/** What a place of the document is called: a field, a piece, a fault, a hold point, or the part it belongs to. */
export function labelAt(place: string, { job, faults, holdPoints }: Scenario, voice: Voice): string {
  const path = plainPath(place);
  const field = fieldAt(path);
  if (field !== undefined) return word(`field.${field.path}`);
  const index = stepsOf(path).find((step) => typeof step === 'number');
  if (typeof index === 'number') {
    const piece = job.kit[index];
    if (path.startsWith('job.kit[') && piece !== undefined) return voice.piece(piece.id);
    const fault = faults[index];
    if (path.startsWith('faults[') && fault !== undefined) return faultName(fault.fault);
    const point = holdPoints[index];
    if (path.startsWith('holdPoints[') && point !== undefined) return point.id;
  }
  return word(`section.${sectionOf(path)}`);
}

/** What a fault is called: `A seat ring whose stamp lies`. */
export function faultName(fault: Scenario['faults'][number]['fault']): string {
  return capital(words().conditions[fault]);
}
