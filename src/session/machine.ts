import { setup } from 'xstate';

/** Times faster than life a wait may be hurried. */
export const paces = [1, 4, 20, 60] as const;
export type Pace = (typeof paces)[number];
/** Under assessment time is never so fast that a needle moves unseen. */
export const fastestAssessed: Pace = 4;
/** Longest stretch let pass at once under assessment, s: the gauges are looked at between. */
export const longestAssessedWaitS = 60;

/**
 * How a run is sat: practised, with a coach and a way back; or assessed, silent and once, from its start to its finish.
 */
export type SittingMode = 'practice' | 'assessment';

export type SittingMove =
  | { readonly type: 'begin' }
  | { readonly type: 'hold' }
  | { readonly type: 'go' }
  | { readonly type: 'hurry' }
  | { readonly type: 'act' }
  | { readonly type: 'rewind' }
  | { readonly type: 'rewound' }
  | { readonly type: 'end' };

/**
 * The sitting: what the person is doing with the run, not what the run is doing. Only waiting may be hurried, so an
 * act brings the clock back to life's pace; going back always lands on a held clock, to look before doing.
 */
export const sittingMachine = setup({ types: { events: {} as SittingMove } }).createMachine({
  id: 'sitting',
  initial: 'brief',
  states: {
    brief: { on: { begin: 'working' } },
    working: {
      initial: 'running',
      states: {
        running: { on: { hold: 'held', hurry: 'hurried' } },
        held: { on: { go: 'running', hurry: 'hurried' } },
        hurried: { on: { go: 'running', hold: 'held', act: 'running' } },
      },
      on: { rewind: 'rewinding', end: 'debrief' },
    },
    rewinding: { on: { rewound: 'working.held' } },
    debrief: { on: { rewind: 'rewinding' } },
  },
});

export type Phase = 'brief' | 'running' | 'held' | 'hurried' | 'rewinding' | 'debrief';

/** The state as one word. */
export function phaseOf(value: string | Readonly<Record<string, string>>): Phase {
  const word = typeof value === 'string' ? value : value.working;
  const phases: readonly Phase[] = ['brief', 'running', 'held', 'hurried', 'rewinding', 'debrief'];
  const found = phases.find((phase) => phase === word);
  if (found === undefined) throw new Error(`The sitting has no state "${String(word)}".`);
  return found;
}
