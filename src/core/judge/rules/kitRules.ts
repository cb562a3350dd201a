import { kindOf, stampOf } from '../../procedure/index.ts';
import { cradleMains, sizedBy, type Fact, type Job, type KitKind } from '../../rig/index.ts';
import type { Draft, Rule } from '../case.ts';

/** Choice of kit: size by the work, condition by looking, and nothing used that was found wanting. */
export const kitRules: Rule = (judged) => [
  ...wrongSize(judged),
  ...unfit(judged),
  ...uninspected(judged),
  ...cradles(judged),
  ...sealant(judged),
];

/** The size a kind of piece must be for this job, or null where it has none. */
function sizeNeeded(job: Job, kind: KitKind | null): string | null {
  if (kind === null) return null;
  const { workpiece, system } = job;
  return { tee: workpiece.teeSize, main: workpiece.mainNps, service: system.service.nps, one: null }[
    sizedBy[kind]
  ];
}

/** Every piece that was put to use, once each, with the moment of its first use. */
function used(
  facts: readonly Fact[],
): readonly { readonly piece: string; readonly atS: number; readonly index: number }[] {
  const seen = new Set<string>();
  return facts.flatMap((f, index) => {
    if (f.fact !== 'piece.placed' || seen.has(f.piece)) return [];
    seen.add(f.piece);
    return [{ piece: f.piece, atS: f.atS, index }];
  });
}

/** Wrong by its own stamp. Taken off again before anything was put under pressure it costs little. */
const wrongSize: Rule = ({ facts, job }) =>
  used(facts).flatMap(({ piece, atS, index }): Draft[] => {
    const need = sizeNeeded(job, kindOf(job, piece));
    const stamp = stampOf(job, piece);
    if (need === null || stamp === null || stamp === need) return [];
    const mended = mendedInTime(facts, piece, index);
    return [{ id: 'wrongSize', atS, points: mended ? 1 : 5, items: [piece], causes: [`piece.${piece}`] }];
  });

function mendedInTime(facts: readonly Fact[], piece: string, from: number): boolean {
  for (const f of facts.slice(from + 1)) {
    if (f.fact === 'piece.removed' && f.piece === piece) return true;
    if (f.fact === 'done' && f.action.kind === 'rod.load' && f.action.piece === null) return true;
    if (f.fact === 'pumped' || f.fact === 'stopper.squeezed' || f.fact === 'keeper.turned') return false;
  }
  return false;
}

/** A flaw that looking it over would have shown, or did show, and that went into the rig all the same. */
const unfit: Rule = ({ facts, job }) =>
  used(facts).flatMap(({ piece, atS }): Draft[] => {
    const entry = job.kit.find((k) => k.id === piece);
    const lies = entry?.trueSize !== undefined && entry.trueSize !== entry.stamped;
    const left = Object.keys(entry?.defects ?? {}).filter((flaw) => !wipedOff(facts, piece, flaw, atS));
    const flaws = left.length + (lies ? 1 : 0);
    if (flaws === 0) return [];
    const looked = facts.some((f) => f.fact === 'piece.inspected' && f.piece === piece && f.atS <= atS);
    const numbers = { flaws, looked: looked ? 1 : 0 };
    return [{ id: 'unfitUsed', atS, points: 5, numbers, items: [piece], causes: [`piece.${piece}`] }];
  });

/** Grit, oil or debris that was wiped off the piece before it went on is no flaw any more. */
function wipedOff(facts: readonly Fact[], piece: string, flaw: string, beforeS: number): boolean {
  return facts.some(
    (f) => f.fact === 'piece.cleaned' && f.piece === piece && f.cameOff.includes(flaw) && f.atS <= beforeS,
  );
}

const uninspected: Rule = ({ facts }) => {
  const blind = used(facts).filter(
    ({ piece, atS }) => !facts.some((f) => f.fact === 'piece.inspected' && f.piece === piece && f.atS <= atS),
  );
  if (blind.length === 0) return [];
  const points = Math.min(5, 0.5 * blind.length);
  const items = blind.map(({ piece }) => piece);
  return [{ id: 'usedUninspected', atS: blind[0].atS, points, numbers: { pieces: blind.length }, items, causes: ['H1.kit'] }]; // prettier-ignore
};

/** A chain round a small main bends over nothing: one cradle block a chain gives it something to bear on. */
const cradles: Rule = ({ facts, job }) => {
  if (!cradleMains.includes(job.workpiece.mainNps)) return [];
  const pumped = facts.findIndex((f) => f.fact === 'pumped');
  if (pumped < 0) return [];
  const on = new Set<string>();
  for (const f of facts.slice(0, pumped)) {
    if (f.fact === 'piece.placed' && kindOf(job, f.piece) === 'cradleBlock') on.add(f.piece);
    if (f.fact === 'piece.removed') on.delete(f.piece);
  }
  if (on.size >= 2) return [];
  const points = on.size === 0 ? 5 : 2.5;
  return [
    {
      id: 'noCradleBlocks',
      atS: facts[pumped].atS,
      points,
      numbers: { blocks: on.size },
      causes: ['cradles'],
    },
  ];
};

/** Threads that go in dressed: what is turned, and what kind of piece it was. */
const dressed = [
  ['closing.turned', 'closingPlug'],
  ['renewal.turned', 'renewalTee'],
  ['newPlug.turned', 'newTopPlug'],
] as const;

const sealant: Rule = ({ facts, job }) => {
  const found: Draft[] = [];
  const dry = (piece: string, atS: number): void => {
    if (!sealed(facts, piece, atS))
      found.push({
        id: 'noSealant',
        atS,
        points: 4,
        items: [piece],
        causes: ['sealant', `sealant.${piece}`],
      });
  };
  for (const [turning, kind] of dressed) {
    const turned = facts.find((f) => f.fact === turning && f.engagedTurns > 0);
    if (turned === undefined) continue;
    const loaded = facts.findLast((f) => isPlaced(f) && kindOf(job, f.piece) === kind && f.atS <= turned.atS);
    if (loaded !== undefined && isPlaced(loaded)) dry(loaded.piece, loaded.atS);
  }
  for (const f of facts) if (isPlaced(f) && kindOf(job, f.piece) === 'tieIn') dry(f.piece, f.atS);
  const wrong = facts.flatMap((f) => (f.fact === 'done' && f.action.kind === 'sealant.apply' ? [{ atS: f.atS, piece: f.action.piece }] : [])); // prettier-ignore
  const rubber = wrong.find(({ piece }) =>
    ['boreStopper', 'seatRing', 'cupGasket'].includes(kindOf(job, piece) ?? ''),
  );
  if (rubber)
    found.push({
      id: 'sealantOnRubber',
      atS: rubber.atS,
      points: 1,
      items: [rubber.piece],
      causes: ['rubber'],
    });
  return found;
};

const isPlaced = (f: Fact): f is Extract<Fact, { fact: 'piece.placed' }> => f.fact === 'piece.placed';

function sealed(facts: readonly Fact[], piece: string, beforeS: number): boolean {
  return facts.some(
    (f) =>
      f.fact === 'done' && f.action.kind === 'sealant.apply' && f.action.piece === piece && f.atS <= beforeS,
  );
}
