import { troubleFault } from '../troubleFault.ts';
import { stopHiss } from '../felt.ts';
import { act } from '../reactions.ts';

/** The bleed hose is kinked: what sounds quiet is only throttled. */
export const hoseKinked = troubleFault({
  id: 'hoseKinked',
  family: 'kit',
  cause: 'handling',
  what: 'hoseKinked',
  severity: { low: 0.5, high: 1, usual: 0.97, unit: 'share' },
  endangers: { holdPoints: ['H4', 'H9'], work: (f) => f.fact === 'piece.removed' },
  refer: ['stopFails'],
  worksLike: stopHiss((share) => share > 2),
  answers: act('hose.lead'),
  // a hose is led before it can lie badly
  triggers: ['time', 'action', 'condition'],
});
