import { latest } from '../../procedure/index.ts';
import type { Draft, Rule } from '../case.ts';

/** What fingers can tell apart, N·m, and a hand's step beyond. */
const FEEL_NM = 0.25;

/** The stopper: deep enough to seal, firm enough to hold, never so firm that it tears, and never lost. */
export const stopperRules: Rule = (judged) => [
  ...left(judged),
  ...torn(judged),
  ...slipped(judged),
  ...lost(judged),
  ...measured(judged),
];

const left: Rule = ({ facts, limits }) => {
  const last = latest(facts, 'stopper.left');
  if (!last) return [];
  const found: Draft[] = [];
  const [lowNm, highNm] = limits.stopperFirmNm;
  if (last.torqueNm < lowNm - FEEL_NM || last.torqueNm > highNm + FEEL_NM) {
    const numbers = { torqueNm: last.torqueNm, lowNm, highNm };
    found.push({ id: 'stopperTorque', atS: last.atS, points: 2, numbers, causes: ['stopperTorque'] });
  }
  const [lowM, highM] = limits.stopperBelowPortM;
  if (last.belowPortM < lowM - 0.0005 || last.belowPortM > highM + 0.0005) {
    const numbers = { belowPortM: last.belowPortM, lowM, highM };
    found.push({ id: 'stopperDepth', atS: last.atS, points: 3, numbers, causes: ['H5.depth'] });
  }
  return found;
};

const torn: Rule = ({ facts }) => {
  const found = latest(facts, 'stopper.torn');
  return found ? [{ id: 'stopperTorn', atS: found.atS, points: 3, causes: ['stopperTorque'] }] : [];
};

const slipped: Rule = ({ facts }) => {
  const found = latest(facts, 'stopper.slipped');
  if (!found) return [];
  const numbers = { byM: found.byM, thrustN: found.thrustN, holdsN: found.holdsN };
  return [{ id: 'stopperSlipped', atS: found.atS, points: 3, numbers, causes: ['stopperTorque'] }];
};

/** A stopper in the main is reported and the job is not complete: it may lie before somebody's valve. */
const lost: Rule = ({ facts, run }) => {
  const found = latest(facts, 'stopper.dropped', (f) => f.into === 'main');
  if (!found) return [];
  const critical = run.rig.ending?.kind === 'complete';
  return [{ id: 'stopperLost', atS: found.atS, points: 5, critical, causes: ['stopperLost'] }];
};

/** The rod's travel comes from four lengths laid on with a rule, not from feel: the hub outside is a trap. */
const measured: Rule = ({ facts }) => {
  const squeezed = facts.findIndex((f) => f.fact === 'stopper.squeezed');
  if (squeezed < 0) return [];
  const before = facts.slice(0, squeezed);
  const taken = new Set(before.flatMap((f) => (f.fact === 'measured' ? [f.what] : [])));
  const clamped = before.some(
    (f) => f.fact === 'done' && f.action.kind === 'collar.set' && f.action.travelM !== null,
  );
  if (clamped && taken.has('bossToPort') && taken.size >= 3) return [];
  const numbers = { lengthsTaken: taken.size, collarClamped: clamped ? 1 : 0 };
  return [
    { id: 'depthNotMeasured', atS: facts[squeezed].atS, points: 1.5, numbers, causes: ['depthMeasured'] },
  ];
};
