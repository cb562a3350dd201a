import type { Action, Fact } from '../../src/core/rig/index.ts';

/**
 * What an action is to the catalogue of deviations: its kind and what it is done to. Sizes and letters of pieces are
 * dropped, so that both chains are one key.
 */
export function keyOf(action: Action): string {
  switch (action.kind) {
    case 'site.do':
      return `site.do ${action.task}`;
    case 'detector.read':
      return `detector.read ${action.where}`;
    case 'gauge.zero':
    case 'gauge.read':
      return `${action.kind} ${action.gauge}`;
    case 'look':
    case 'clean':
    case 'mark':
    case 'leakFluid.apply':
      return `${action.kind} ${action.at}`;
    case 'measure':
      return `measure ${action.what}`;
    case 'piece.inspect':
    case 'sealant.apply':
      return `${action.kind} ${bare(action.piece)}`;
    case 'record.write':
      return `record.write ${action.field}`;
    case 'sign':
      return `sign ${action.holdPoint}`;
    case 'bond.clamp':
      return `bond.clamp ${action.end} ${action.clamped ? 'on' : 'off'}`;
    default:
      return action.kind;
  }
}

function bare(piece: string): string {
  return piece.replace(/-(1|34|114|a|b)$/, '');
}

/** Kinds that move no gas and no part: leaving one out changes the story and nothing else in it. */
const paperKinds: ReadonlySet<Action['kind']> = new Set([
  'site.do', 'detector.bump', 'detector.read', 'gauge.zero', 'gauge.read', 'look', 'listen', 'measure', 'mark',
  'leakFluid.apply', 'piece.inspect', 'sealant.apply', 'record.write', 'sign', 'bond.clamp', 'gaugeRing.try',
  'service.purge',
]); // prettier-ignore

export function isPaper(action: Action): boolean {
  return paperKinds.has(action.kind);
}

/** The story as if every action of this key had been left out: the act itself and what it gave, up to the next act. */
export function leftOut(facts: readonly Fact[], key: string): readonly Fact[] {
  let skipping = false;
  let skipS = 0;
  const unzeroed = key.startsWith('gauge.zero ') ? key.slice('gauge.zero '.length) : null;
  const kept = facts.filter((fact) => {
    if (fact.fact === 'done') {
      skipping = keyOf(fact.action) === key;
      skipS = fact.atS;
      return !skipping;
    }
    return !(skipping && fact.atS === skipS);
  });
  return kept.map((fact) =>
    fact.fact === 'gauge.read' && fact.gauge === unzeroed ? { ...fact, zeroed: false } : fact,
  );
}
