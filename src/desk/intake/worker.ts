import { cohort, drive, steady } from '../../core/hands/index.ts';
import { reassess, rejudge, rowOf } from '../../core/review/index.ts';
import { recordText } from '../../core/run/index.ts';
import { demoScenarios } from './demoScenarios.ts';
import type { Order, Told } from './orders.ts';

/* A worker of the desk: performs and judges runs, so that the page stays at hand meanwhile. */

const tell = (told: Told): void => postMessage(told);

function judged(name: string, bytes: Uint8Array): Told {
  return { kind: 'judged', row: rowOf(name, reassess(bytes)), bytes };
}

async function judgeFiles({ files }: Extract<Order, { kind: 'judge' }>): Promise<void> {
  for (const { name, file } of files) {
    try {
      if (file === null) throw new Error('not handed over');
      tell(judged(name, new Uint8Array(await file.arrayBuffer())));
    } catch (reason) {
      tell({ kind: 'unread', name, why: reason instanceof Error ? reason.message : String(reason) });
    }
  }
}

async function makeDemo({ size, seed }: Extract<Order, { kind: 'demo' }>): Promise<void> {
  const encoder = new TextEncoder();
  for (const { name, record } of cohort({ scenarios: await demoScenarios(), size, seed }))
    tell(judged(name, encoder.encode(recordText(record))));
}

function performModel({ scenario }: Extract<Order, { kind: 'model' }>): void {
  const { entries, run } = drive(scenario, steady);
  tell({ kind: 'performed', entries, endS: run.clockS });
}

function rejudgeRuns({ runs, change }: Extract<Order, { kind: 'rejudge' }>): void {
  for (const { digest, bytes } of runs) tell({ kind: 'rejudged', digest, rejudged: rejudge(bytes, change) });
}

async function carryOut(order: Order): Promise<void> {
  switch (order.kind) {
    case 'judge':
      return judgeFiles(order);
    case 'demo':
      return makeDemo(order);
    case 'rejudge':
      return rejudgeRuns(order);
    case 'model':
      return performModel(order);
  }
}

addEventListener('message', (event: MessageEvent<Order>) => {
  void carryOut(event.data).then(() => tell({ kind: 'done' }));
});
