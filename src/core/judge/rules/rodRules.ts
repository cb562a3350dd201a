import type { Draft, Rule } from '../case.ts';

/** What pressure threw: a rod, a plug, a tee or a stack. It ends the run where it would end the day. */
export const rodRules: Rule = ({ facts, run }) => {
  const found: Draft[] = [];
  const rod = facts.find((f) => f.fact === 'rod.thrown');
  if (rod?.fact === 'rod.thrown') {
    found.push({
      id: 'rodThrown',
      atS: rod.atS,
      points: 6,
      critical: true,
      numbers: { thrustN: rod.thrustN, pressureGaugePa: rod.pressureGaugePa, energyJ: rod.energyJ },
      causes: ['rodHeld'],
    });
  }
  const ending = run.rig.ending;
  if (ending?.kind === 'hurt') {
    const atS = facts.find((f) => f.fact === 'ended')?.atS ?? run.clockS;
    found.push({
      id: 'thrown',
      atS,
      points: 6,
      critical: true,
      items: [ending.cause],
      causes: [`hurt.${ending.cause}`],
    });
  }
  return found;
};
