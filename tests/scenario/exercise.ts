import { readFileSync } from 'node:fs';
import type { Scenario } from '../../src/core/scenario/index.ts';

const place = new URL('../../scenarios/abandon-1in-tee-on-4in-main/scenario.json', import.meta.url);

/** The shipped exercise as text, and as a value that a test may change. */
export const exerciseText = readFileSync(place, 'utf8');
export const exercise = (): Scenario => JSON.parse(exerciseText) as Scenario;
