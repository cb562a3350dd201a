import { describe, expect, it } from 'vitest';
import { readBench, sections, writeBench } from '../../src/bench/address.ts';
import { nameFrom } from '../../src/bench/shelf/name.ts';
import { freeName } from '../../src/store/index.ts';
import { stateOf } from '../../src/bench/shelf/state.ts';
import { fileOf, takeIn } from '../../src/bench/shelf/takeIn.ts';
import { digestOfValue } from '../../src/core/run/index.ts';
import { SCENARIO_TEXT_MOST } from '../../src/core/scenario/index.ts';
import { shipped } from '../scenarios/shipped.ts';

const file = (name: string, text: string): File => new File([text], name);

describe('an address of the bench', () => {
  it('reads back as it was written, for every part of an exercise', () => {
    const addresses = [
      { page: 'shelf' } as const,
      ...sections.map((section) => ({ page: 'edit', id: 'own-one', section, field: null }) as const),
      { page: 'edit', id: 'own-one', section: 'kit', field: 'job.kit[3].stamped' } as const,
    ];
    for (const address of addresses)
      expect(readBench(writeBench(address).replace('#/bench', '').split('/').slice(1))).toEqual(address);
  });

  it.each([['edit'], ['edit/Own'], ['edit/own-one/nothing'], ['edit/own-one/kit/%'], ['else']])(
    'is lost at %s',
    (path) => expect(readBench(path.split('/'))).toEqual({ page: 'lost' }),
  );
});

describe('the name of an exercise', () => {
  it('is made of what the document may be called', () => {
    expect(nameFrom('own-1-1/4-on-2-Río')).toBe('own-1-1-4-on-2-ri-o');
    expect(nameFrom('é')).toMatch(/^[a-z0-9][a-z0-9-]{2,60}$/);
    expect(nameFrom('a'.repeat(200))).toMatch(/^[a-z0-9][a-z0-9-]{2,60}$/);
  });

  it('gives way to one that is taken', () => {
    expect(freeName('own', ['own', 'own-2'])).toBe('own-3');
    expect(freeName('own', [])).toBe('own');
  });
});

describe('a file that comes in', () => {
  it('is the exercise that went out, and nothing of the notes beside it', async () => {
    const document = shipped('abandon-1in-tee-on-4in-main');
    const { name, text } = fileOf(document);
    expect(await takeIn(file(name, text))).toEqual({ kind: 'exercise', scenario: document });
    expect(await takeIn(file('own-one.notes.md', 'Mind the ring.'))).toEqual({
      kind: 'notes',
      id: 'own-one',
      text: 'Mind the ring.',
    });
  });

  it('is refused with every place that is wrong', async () => {
    const document = { ...shipped('abandon-1in-tee-on-4in-main'), cutScore: 120, seed: -1 };
    const taken = await takeIn(file('x.json', JSON.stringify(document)));
    expect(taken.kind === 'refused' && taken.problems.map(({ where }) => where)).toEqual([
      'seed',
      'cutScore',
    ]);
  });

  it('is not even read when it is larger than any exercise', async () => {
    expect(await takeIn(file('x.json', ' '.repeat(SCENARIO_TEXT_MOST + 1)))).toEqual({
      kind: 'tooLarge',
    });
  });
});

describe('the state of an exercise', () => {
  const document = shipped('abandon-1in-tee-on-4in-main');
  const digest = digestOfValue(document);
  const kept = { id: document.id, document, notes: '', workable: true, proof: null, changedAt: '' };

  it('is a draft until a proof of just this document has nothing grave to say', () => {
    const proof = { finishable: true, proved: true } as never;
    expect(stateOf(kept, digest)).toBe('draft');
    expect(stateOf({ ...kept, workable: false }, digest)).toBe('unsound');
    expect(stateOf({ ...kept, proof: { digest, proof } }, digest)).toBe('proved');
    expect(stateOf({ ...kept, proof: { digest: 'other', proof } }, digest)).toBe('stale');
  });
});
