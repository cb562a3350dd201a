import type { FindingWords } from '../../../catalogue.ts';

/** What each finding of the judge says. */
export const findings: Readonly<Record<string, FindingWords>> = {};
