import type { FindingId } from '../../../../core/judge/index.ts';
import type { FindingWords } from '../../../catalogue.ts';
import { evidenceItems } from '../evidence.ts';
import { holdPoints as words } from '../work.ts';
import { itemsOf } from './shared.ts';
import type { Finding } from '../../../../core/judge/index.ts';

type HoldFinding = Extract<FindingId, `hold${string}`>;

const WHY =
  'A hold point stops the work until it is known that the next step is safe. Past it, nothing else catches the mistake.';

const named = (f: Finding): string =>
  f.holdPoint === null ? 'A hold point' : `${f.holdPoint}, ${words[f.holdPoint].title.toLowerCase()},`;
const wanting = (f: Finding): string => {
  const items = f.holdPoint === null ? {} : evidenceItems[f.holdPoint];
  return f.items.length === 0 ? '' : ` Wanting: ${itemsOf(f, items)}.`;
};
const guarded = (f: Finding): string =>
  f.holdPoint === null ? 'the work it guards' : words[f.holdPoint].guards;

export const holdPointFindings: Readonly<Record<HoldFinding, FindingWords>> = {
  holdMissed: {
    title: 'Hold point missed',
    happened: (f) => `${named(f)} was not signed when ${guarded(f)} began.${wanting(f)}`,
    why: WHY,
    next: 'Stop at the hold point, gather its evidence, sign, and only then go on.',
  },
  holdFalse: {
    title: 'Signed without the evidence',
    happened: (f) => `${named(f)} was signed.${wanting(f)}`,
    why: 'A signature says that it was read, seen and done. Whoever works on relies on it.',
    next: 'Sign what you have seen. If something is wanting, get it or withdraw the signature before the work goes on.',
  },
  holdVoided: {
    title: 'Evidence had lapsed',
    happened: (f) =>
      `${named(f)} was signed on good evidence, but later work or time had undone it when ${guarded(f)} began.${wanting(f)}`,
    why: 'A joint touched after the proof is a joint not proved; an old reading tells of an old pressure.',
    next: 'Prove again after touching anything that holds the pressure, and after too long a wait.',
  },
  holdNotReached: {
    title: 'Hold point not reached',
    happened: (f) => `The run ended before ${named(f).replace(/,$/, '')} came up.`,
    why: 'What was never come to was never shown.',
    next: 'Go on to the end, or stop for a reason that can be seen.',
  },
};
