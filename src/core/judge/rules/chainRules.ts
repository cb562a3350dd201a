import type { Case, Draft, Rule } from '../case.ts';

/** Force from which a leg of chain is overloaded, N (assumed). */
const OVERLOAD_N = 4000;

interface Chains {
  readonly seat: 'tee' | 'coupling';
  /** Indexes of facts: from where they count, and by which they must be right: the work their proof guards. */
  readonly from: number;
  readonly by: number;
}

/**
 * How the chains stood when the work they hold began. Turns between are nobody's business; at the end both sides of
 * a chain must stand alike, and links tapped and drawn up again, or crushed scale takes the tension away.
 */
export const chainRules: Rule = (judged) => [
  ...seats(judged).flatMap((chains) => [...uneven(judged, chains), ...tapped(judged, chains)]),
  ...overloaded(judged),
];

/** Each seat that was put under pressure, with the stretch that counts; on the new tee it is another seat. */
function seats(judged: Case): readonly Chains[] {
  const { facts, stood } = judged;
  const newTeeAt = facts.findIndex((f) => f.fact === 'renewal.turned' && f.engagedTurns > 0);
  const stretches: readonly Chains[] = [
    { seat: 'tee', from: 0, by: judged.begun('H2') },
    { seat: 'coupling', from: 0, by: judged.begun('H9') },
    ...(newTeeAt < 0 ? [] : [{ seat: 'tee', from: newTeeAt, by: judged.begun('R4') } as const]),
  ];
  return stretches.filter(({ seat, from, by }) =>
    facts.some((f, i) => f.fact === 'pumped' && stood[i].saddleOn === seat && i >= from && i < by),
  );
}

function uneven(judged: Case, { seat, from, by }: Chains): readonly Draft[] {
  const turns = [
    { left: 0, right: 0 },
    { left: 0, right: 0 },
  ];
  let atS = 0;
  judged.facts.slice(0, by).forEach((f, i) => {
    if (f.fact !== 'tensioner.turned' || judged.stood[i].saddleOn !== seat || i < from) return;
    turns[f.chain][f.side] = f.turns;
    atS = f.atS;
  });
  const apart = Math.max(...turns.map((t) => Math.abs(t.left - t.right)));
  if (apart <= judged.limits.tensionerEvenTurns + 1e-9) return [];
  const numbers = { apartTurns: apart, limitTurns: judged.limits.tensionerEvenTurns };
  return [{ id: 'tensionUneven', atS, points: 3, numbers, items: [seat], causes: [`chains.${seat}`] }];
}

function tapped(judged: Case, { seat, from, by }: Chains): readonly Draft[] {
  let untapped = 0;
  let atS = 0;
  for (const chain of [0, 1]) {
    let state: 'untapped' | 'tapped' | 'drawnUp' = 'untapped';
    let used = false;
    judged.facts.slice(0, by).forEach((f, i) => {
      if (judged.stood[i].saddleOn !== seat || i < from) return;
      if (f.fact === 'chain.tapped' && f.chain === chain) state = 'tapped';
      if (f.fact !== 'tensioner.turned' || f.chain !== chain) return;
      used = true;
      atS = f.atS;
      if (state === 'tapped') state = 'drawnUp';
    });
    if (used && !isDrawnUp(state)) untapped += 1;
  }
  if (untapped === 0) return [];
  return [
    {
      id: 'notTapped',
      atS,
      points: untapped,
      numbers: { chains: untapped },
      items: [seat],
      causes: [`tap.${seat}`],
    },
  ];
}

function isDrawnUp(state: string): boolean {
  return state === 'drawnUp';
}

function overloaded({ facts }: Case): readonly Draft[] {
  let most: Extract<Case['facts'][number], { fact: 'tensioner.turned' }> | null = null;
  for (const f of facts) {
    if (f.fact === 'tensioner.turned' && f.legForceN > (most?.legForceN ?? OVERLOAD_N)) most = f;
  }
  if (!most) return [];
  const numbers = { legForceN: most.legForceN, limitN: OVERLOAD_N };
  return [{ id: 'chainOverloaded', atS: most.atS, points: 1, numbers, causes: ['chainOverload'] }];
}
