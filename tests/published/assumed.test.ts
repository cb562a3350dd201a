import { describe, expect, it } from 'vitest';
import { constants } from '../../src/core/catalogue/index.ts';
import { readSensitivity } from '../../src/core/physics/index.ts';
import { leave } from './compare.ts';

/* No document: what the range of each number of our own does, for the model card to show beside the published checks. */
describe('the assumed numbers', () => {
  it('are each read at both ends of their range, and what they move is left for the model card', () => {
    const sensitivity = readSensitivity();
    const assumed = Object.values(constants).filter(({ source }) => source === 'assumed');
    expect(sensitivity.rows.length + sensitivity.still.length).toBe(assumed.length);
    for (const value of Object.values(sensitivity.base)) expect(value).toBeGreaterThan(0);
    leave('assumed', sensitivity);
  });
});
