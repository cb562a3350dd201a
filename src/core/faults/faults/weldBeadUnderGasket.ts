import { troubleFault } from '../troubleFault.ts';
import { headMoved } from '../felt.ts';
import { anyOf, cleaned, held } from '../reactions.ts';
import { gasketOn } from '../works.ts';

/** A weld bead stands up where the cup gasket should lie on even metal. */
export const weldBeadUnderGasket = troubleFault({
  id: 'weldBeadUnderGasket',
  family: 'faces',
  cause: 'making',
  what: 'weldBead',
  severity: { low: 5e-9, high: 1e-7, usual: 3e-8, unit: 'm2' },
  endangers: { work: gasketOn, holdPoints: ['H9'] },
  refer: ['proofFails'],
  worksLike: headMoved('fell', 'coupling'),
  answers: anyOf(cleaned('weldBead'), held('H9')),
  costs: 'secondChamber',
  triggers: ['start'],
});
