import { describe, expect, it } from 'vitest';
import { readDesk, writeDesk, type DeskAddress } from '../../src/desk/address.ts';

const digest = 'a1'.repeat(32);

describe('the desk’s part of the address bar', () => {
  it('names every page of the desk so that it can be linked and reloaded', () => {
    const views: readonly Exclude<DeskAddress, { page: 'lost' }>[] = [
      { page: 'runs' },
      { page: 'run', digest, atS: null },
      { page: 'run', digest, atS: 754 },
      { page: 'report', digest },
      { page: 'group' },
      { page: 'rejudge' },
      { page: 'keeping' },
      { page: 'proof' },
    ];
    for (const view of views) {
      const path = writeDesk(view).replace('#/desk', '').split('/').slice(1);
      expect(readDesk(path)).toEqual(view);
    }
  });

  it('is lost where it names what is not there', () => {
    for (const wrong of [
      ['run'],
      ['run', 'a1b2'],
      ['run', digest, 'soon'],
      ['group', 'x'],
      ['x'],
      ['report', digest, '1'],
    ])
      expect(readDesk(wrong)).toEqual({ page: 'lost' });
  });
});
