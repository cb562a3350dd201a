import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { beforeAll, describe, expect, it } from 'vitest';
import { digestOfDecision, rowOf, type Decision, type DecisionBody } from '../../src/core/review/index.ts';
import { openDeskDatabase } from '../../src/store/desk/database.ts';
import { openDeskMemory, type Desk } from '../../src/store/index.ts';
import { openKeyMemory } from '../../src/store/signing/keyStore.ts';
import { openSigner, type Signer } from '../../src/store/signing/sign.ts';
import { decided, hastyFile, hastyRun, steadyFile, steadyRun } from '../review/runs.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const steady = { row: rowOf('steady.run.json', steadyRun), bytes: bytes(steadyFile) };
const hasty = { row: rowOf('hasty.run.json', hastyRun), bytes: bytes(hastyFile) };
const { digest } = steady.row;
let signer: Signer;
let number = 0;
beforeAll(async () => {
  signer = await openSigner(openKeyMemory());
});
const sign = (changes: Partial<DecisionBody> = {}): Promise<Decision> => signer.counterSign(decided(changes));

describe.each<[string, () => Promise<Desk>]>([
  ['in the browser’s database', () => openDeskDatabase(`desk-${(number += 1)}`)],
  ['in memory', async () => openDeskMemory('a private window')],
])('a desk kept %s', (_, open) => {
  it('lists what was taken in and gives back the very bytes, once each', async () => {
    const desk = await open();
    await desk.takeIn([steady, hasty]);
    await desk.takeIn([{ ...steady, row: { ...steady.row, file: 'again.json' } }]);
    const rows = await desk.listRows();
    expect(rows.map(({ file }) => file).sort()).toEqual(['hasty.run.json', 'steady.run.json']);
    expect(await desk.findBytes(digest)).toEqual(steady.bytes);
    expect(await desk.findBytes('0'.repeat(64))).toBeUndefined();
  });

  it('keeps opinion and notes of a run apart from its judgement', async () => {
    const desk = await open();
    await desk.takeIn([hasty]);
    const opinion = {
      setAside: [{ finding: 'holdFalse|1|H2', reason: 'seen on the second camera' }],
      added: [],
    };
    await desk.keepOpinion(hasty.row.digest, opinion);
    await desk.keepNotes(hasty.row.digest, [{ atS: 61, says: 'Asked for help here.' }]);
    expect(await desk.findOpinion(hasty.row.digest)).toEqual(opinion);
    expect(await desk.listNotes(hasty.row.digest)).toEqual([{ atS: 61, says: 'Asked for help here.' }]);
    expect(await desk.listRows()).toEqual([hasty.row]);
    expect(await desk.findOpinion(digest)).toEqual({ setAside: [], added: [] });
  });

  it('knows on which runs a review is under way, and puts a line judged otherwise in the place of the old', async () => {
    const desk = await open();
    await desk.takeIn([steady, hasty]);
    expect(await desk.listBegun()).toEqual([]);
    await desk.keepNotes(digest, [{ atS: 1, says: 'Begun.' }]);
    expect(await desk.listBegun()).toEqual([digest]);
    await desk.exportAll();
    const stranger = { ...hasty.row, digest: '0'.repeat(64) };
    await desk.keepRows([{ ...steady.row, score: 12 }, stranger]);
    const rows = await desk.listRows();
    expect(rows.find((row) => row.digest === digest)?.score).toBe(12);
    expect(rows).toHaveLength(2);
    expect(await desk.findBytes(digest)).toEqual(steady.bytes);
    expect(await desk.keptBecause(digest, '2099-01-01')).toBe('notExported');
  });

  it('never changes a decision: a later one refers to it', async () => {
    const desk = await open();
    await desk.takeIn([steady]);
    const first = await sign();
    await desk.decide(first);
    await expect(desk.decide(first)).rejects.toThrow('kept already');
    await expect(desk.decide(await sign({ decidedAt: '2026-11-26T09:00:00Z' }))).rejects.toThrow('refers to');
    const replaces = digestOfDecision(first);
    const changes = { decision: 'notYet', validity: null, replacesWhy: 'Camera seen since.' } as const;
    const second = await sign({ ...changes, decidedAt: '2026-11-26T09:00:00Z', replaces });
    await desk.decide(second);
    expect(await desk.listDecisions()).toEqual([first, second]);
    const third = await sign({ ...changes, decidedAt: '2026-11-27T09:00:00Z', replaces });
    await expect(desk.decide(third)).rejects.toThrow('taken the place');
    const lost = await sign({ ...changes, decidedAt: '2026-11-27T09:00:00Z', replaces: '0'.repeat(64) });
    await expect(desk.decide(lost)).rejects.toThrow('not here');
    expect(await desk.listDecisions()).toHaveLength(2);
  });

  it('deletes a run only after its time and only when it was exported', async () => {
    const desk = await open();
    await desk.takeIn([steady, hasty]);
    const decision = await sign();
    await desk.decide(decision);
    // 49 CFR 192.807(b): five years after it stopped counting, here the 25th of November 2027.
    expect(decision.keepUntil).toBe('2032-11-25');
    expect(await desk.keptBecause(digest, '2032-11-24')).toBe('mustBeKept');
    expect(await desk.keptBecause(digest, '2032-11-25')).toBe('notExported');
    await expect(desk.remove(digest, '2032-11-25')).rejects.toThrow('notExported');
    const archive = JSON.parse(await desk.exportAll()) as {
      runs: { digest: string; base64: string }[];
      decisions: string[];
    };
    const run = archive.runs.find((one) => one.digest === digest);
    expect(Buffer.from(run?.base64 ?? '', 'base64').toString('utf8')).toBe(steadyFile);
    expect(archive.decisions).toHaveLength(1);
    await expect(desk.remove(digest, '2032-11-24')).rejects.toThrow('mustBeKept');
    await desk.keepNotes(digest, [{ atS: 1, says: 'late' }]);
    expect(await desk.keptBecause(digest, '2032-11-25')).toBe('notExported');
    await desk.exportAll();
    await desk.remove(digest, '2032-11-25');
    expect((await desk.listRows()).map((row) => row.digest)).toEqual([hasty.row.digest]);
    expect(await desk.listDecisions()).toEqual([]);
    expect(await desk.listNotes(digest)).toEqual([]);
    expect(await desk.keptBecause(digest, '2032-11-25')).toBe('unknown');
  });
});

describe('a desk in the database', () => {
  it('is there again after it was closed', async () => {
    const desk = await openDeskDatabase('desk-again');
    await desk.takeIn([steady]);
    await desk.decide(await sign());
    const again = await openDeskDatabase('desk-again');
    expect(await again.listRows()).toEqual([steady.row]);
    expect(await again.listDecisions()).toEqual(await desk.listDecisions());
  });

  it('of the first version is brought up to date with nothing lost', async () => {
    const first = await openDB('desk-old', 1, {
      upgrade(database) {
        for (const table of ['rows', 'files', 'papers'])
          database.createObjectStore(table, { keyPath: 'digest' });
      },
    });
    await first.put('rows', { digest, row: steady.row, exported: false });
    await first.put('files', { digest, bytes: steady.bytes });
    first.close();
    const desk = await openDeskDatabase('desk-old');
    expect(await desk.listRows()).toEqual([steady.row]);
    await desk.decide(await sign());
    expect(await desk.listDecisions()).toHaveLength(1);
  });
});
