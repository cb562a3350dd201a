import { PSI_PA } from '../../units/index.ts';
import { firstChamber, pumpedOverMain, tell } from '../../procedure/index.ts';
import type { Draft, Rule } from '../case.ts';

/** Overshoot told from reading error, Pa (one division). */
const GAUGE_SLACK_PA = PSI_PA;

/** Pressure put into a chamber by hand: enough to prove, never so much that the proof is the hazard. */
export const proofRules: Rule = ({ facts, limits, job }) => {
  const found: Draft[] = [];
  const pumped = pumpedOverMain(tell(facts, limits, job), firstChamber, job.system.mainPressureGaugePa);
  const highestGaugePa = pumped?.highestGaugePa ?? 0;
  const limitGaugePa = (pumped?.mainGaugePa ?? 0) + limits.overMainPa;
  if (highestGaugePa > limitGaugePa + GAUGE_SLACK_PA) {
    const over = facts.find((f) => f.fact === 'pumped' && f.headGaugePa > limitGaugePa + GAUGE_SLACK_PA);
    const atS = over?.atS ?? 0;
    found.push({
      id: 'overPumped',
      atS,
      points: 2,
      numbers: { highestGaugePa, limitGaugePa },
      causes: ['overPumped'],
    });
  }
  const relief = facts.find((f) => f.fact === 'relief.lifted');
  if (relief?.fact === 'relief.lifted') {
    const numbers = { headGaugePa: relief.headGaugePa };
    found.push({ id: 'reliefLifted', atS: relief.atS, points: 2, numbers, causes: ['overPumped'] });
  }
  return found;
};
