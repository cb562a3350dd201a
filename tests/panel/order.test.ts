import { cleanup, fireEvent, render, screen, within } from '@testing-library/svelte';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { type Action } from '../../src/core/rig/index.ts';
import { Log, Order } from '../../src/panel/index.ts';
import { voiceOf } from '../../src/text/index.ts';
import { runAfter, yardScenario } from './yard.ts';

afterEach(cleanup);
const voice = voiceOf(yardScenario().job, 'us');

describe('the work order', () => {
  it('has a place to sign for every hold point, under the stage that earns it', async () => {
    const act = vi.fn<(action: Action) => void>();
    render(Order, { run: runAfter(), voice, weigh: null, act });
    const ids = yardScenario().holdPoints.map(({ id }) => id);
    for (const id of ids) await fireEvent.click(screen.getByRole('button', { name: `Sign ${id}` }));
    expect(act.mock.calls.map(([action]) => action)).toEqual(
      ids.map((holdPoint) => ({ kind: 'sign', holdPoint })),
    );
    const first = screen
      .getAllByRole('listitem')
      .find((item) => item.getAttribute('aria-current') === 'step');
    expect(first && within(first).getByRole('button', { name: 'Sign H1' })).toBeTruthy();
  });

  it('lets a signature be withdrawn until the guarded work begins', async () => {
    const act = vi.fn<(action: Action) => void>();
    render(Order, { run: runAfter({ kind: 'sign', holdPoint: 'H1' }), voice, weigh: null, act });
    await fireEvent.click(screen.getByRole('button', { name: 'Withdraw H1' }));
    expect(act).toHaveBeenCalledWith({ kind: 'withdraw', holdPoint: 'H1' });
    cleanup();
    const begun = runAfter(
      { kind: 'sign', holdPoint: 'H1' },
      { kind: 'plug.turn', turns: -1 / 12, holdBack: true },
    );
    render(Order, { run: begun, voice, weigh: null, act });
    expect(screen.queryByRole('button', { name: 'Withdraw H1' })).toBeNull();
    expect(screen.getByRole('region', { name: /^H1 / }).textContent).toContain('signed, work begun');
  });

  it('shows where guarded work was begun without a signature', () => {
    const run = runAfter({ kind: 'plug.turn', turns: -1 / 12, holdBack: true });
    render(Order, { run, voice, weigh: null, act: () => undefined });
    expect(screen.getByRole('region', { name: /^H1 / }).textContent).toContain('passed without a signature');
  });
});

describe('the log', () => {
  it('tells what came of an act, newest first, and what hindered the last one', () => {
    const run = runAfter({ kind: 'gauge.zero', gauge: 'main' }, { kind: 'gauge.read', gauge: 'main' });
    const refusal = { atS: 20, action: { kind: 'listen' }, hindrance: 'needsTestHead', number: 1 } as const;
    render(Log, { facts: run.facts, refusal, voice });
    const lines = [...screen.getByRole('log').querySelectorAll('p')].map((line) => line.textContent);
    expect(lines[0]).toContain('Not done:');
    expect(lines[1]).toMatch(/main gauge reads \d+\.\d psig/);
    expect(lines[2]).toContain('rests at zero');
    expect(lines).toHaveLength(3);
  });
});
