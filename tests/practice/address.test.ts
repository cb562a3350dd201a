import { describe, expect, it } from 'vitest';
import { readAddress, writeAddress, type Address } from '../../src/practice/index.ts';

describe('the address bar', () => {
  it('names every view so that it can be linked and reloaded', () => {
    const views: readonly Exclude<Address, { page: 'lost' }>[] = [
      { page: 'home' },
      { page: 'model' },
      { page: 'parts' },
      { page: 'watch', scenarioId: 'abandon-1in-tee-on-4in-main', hand: null },
      { page: 'watch', scenarioId: 'abandon-1in-tee-on-4in-main', hand: 'hasty' },
      { page: 'practice', scenarioId: 'abandon-1in-tee-on-4in-main', runId: null },
      { page: 'practice', scenarioId: 'abandon-1in-tee-on-4in-main', runId: 'a1b2' },
      { page: 'assess', scenarioId: 'abandon-1in-tee-on-4in-main' },
      { page: 'debrief', runId: 'a1b2', atS: null },
      { page: 'debrief', runId: 'a1b2', atS: 754 },
      { page: 'desk', path: [] },
      { page: 'desk', path: ['run', 'a1b2'] },
      { page: 'bench', path: [] },
      { page: 'bench', path: ['edit', 'own-one'] },
    ];
    for (const view of views) expect(readAddress(writeAddress(view))).toEqual(view);
  });

  it('is the start page when it names nothing, and lost when it names what is not there', () => {
    expect(readAddress('')).toEqual({ page: 'home' });
    expect(readAddress('#/')).toEqual({ page: 'home' });
    for (const wrong of [
      '#/model/card',
      '#/practice',
      '#/practice/a/b/c',
      '#/assess',
      '#/assess/a/b',
      '#/watch',
      '#/watch/a/b/c',
      '#/parts/of',
      '#/debrief/a/soon',
      '#/practice/<script>',
      '#/debrief/',
    ])
      expect(readAddress(wrong)).toEqual({ page: 'lost' });
  });
});
