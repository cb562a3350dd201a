import { costs, costsIn, critical, harmless, undecided } from '../expected.ts';
import type { Line } from '../line.ts';

/** The service parted, tested, joined and purged, and the hole closed. */
export const service: readonly Line[] = [
  { keys: ['leaveHole', 'site.do ventilate'], expected: costs('abnormal', 1, 'nothing was done about the gas in the hole') },
  { keys: ['hose.lead'], expected: costs('holdPoints', 1, 'the bleed lets its gas go where the crew stands') },
  {
    keys: ['look around', 'look hose'],
    expected: harmless('an eye kept open finds nothing where nothing is wrong'),
  },
  { keys: ['branch.cut pilot'], expected: critical('the saw finds out whether the service is dead') },
  { keys: ['branch.cut through'], expected: costs('holdPoints', 1, 'nothing is disconnected') },
  { keys: ['tee.trim dress'], expected: harmless('the ring is the judge of it') },
  { keys: ['tee.trim saw'], expected: costs('holdPoints', 1, 'the stub does not pass the ring') },
  { keys: ['tee.trim file'], expected: costs('technique', 0.25, 'a burr cuts the gasket') },
  { keys: ['clean bore'], expected: costsIn(['abnormal', 'holdPoints'], 1, 'a stopper over chips does not seal') },
  {
    keys: ['piece.place serviceCap'],
    toward: ['H8', 'R1'],
    expected: costs('holdPoints', 1, 'the dead end stands open'),
  },

  { keys: ['testSet.join'], toward: ['R1', 'R3'], expected: critical('the test was made on nothing') },
  {
    keys: ['testSet.join'],
    expected: critical('the test set stays on what should go on', ['holdPoints', 'technique']),
  },
  { keys: ['gauge.zero test'], toward: ['R3'], expected: harmless('it was zeroed for the bench') },
  { keys: ['gauge.zero test'], toward: ['R1'], expected: critical('a figure from a gauge nobody zeroed') },
  {
    keys: ['gauge.read test'],
    toward: ['R1', 'R3'],
    fromEnd: [1],
    expected: critical('the hold has no end reading'),
  },
  {
    keys: ['gauge.read test'],
    toward: ['R1'],
    fromEnd: [2],
    expected: critical('the hold has no reading to begin with'),
  },
  { keys: ['gauge.read test'], expected: harmless('another reading says the same') },
  { keys: ['testSet.pump on'], toward: ['R1'], expected: undecided('one stroke is some psi, and the next reading tells') },
  { keys: ['testSet.pump on'], toward: ['R3'], expected: critical('it never stood at its test pressure') },
  {
    keys: ['testSet.vent on'],
    expected: costsIn(['gasControl', 'technique', 'holdPoints'], 0.5, 'it comes apart full of test air'),
  },
  { keys: ['temperature.read'], expected: critical('a drop that cooling could explain, or hide') },
  { keys: ['leakFluid.apply benchTee', 'leakFluid.apply lineEnds'], expected: critical('a weep passes the gauge') },
  { keys: ['site.do layService'], expected: critical('there is no new service to test') },
  { keys: ['piece.place serviceCap'], toward: ['R3'], expected: critical('an open end holds no test') },
  {
    keys: ['piece.remove serviceCap', 'piece.place tieIn'],
    expected: critical('the customer is not joined to the main', ['holdPoints', 'gasControl', 'technique']),
  },
  {
    keys: ['leakFluid.apply tieIn', 'leakFluid.apply newPlug', 'leakFluid.apply teeThread'],
    toward: ['R6'],
    expected: critical('it was in no test but this one'),
  },
  {
    keys: ['leakFluid.apply tieIn', 'leakFluid.apply newPlug', 'leakFluid.apply teeThread'],
    toward: ['H12'],
    expected: harmless('it stood under fluid at the main’s pressure before the purge'),
  },
  {
    keys: ['leakFluid.apply weld', 'leakFluid.apply teeThread'],
    toward: ['H9'],
    expected: costs('technique', 0.25, 'the broken thread may weep under the gasket'),
  },
  { keys: ['leakFluid.apply weld'], toward: ['H12'], expected: critical('the weld stays in the ground') },
  {
    keys: ['piece.place purgeRiser', 'riser.turn on', 'riser.read'],
    expected: critical('air was left in the customer’s line'),
  },
  {
    keys: ['riser.turn back', 'piece.remove purgeRiser'],
    expected: costsIn(['technique', 'holdPoints', 'gasControl'], 0.25, 'the riser is left on or open at the meter'),
  },
  { keys: ['site.do relightList'], expected: critical('appliances are lit that nobody looked at') },
  { keys: ['site.do relight'], expected: critical('the customer has no gas', ['technique', 'holdPoints']) },
  {
    keys: ['site.do secondPerson'],
    toward: ['H10'],
    expected: harmless('two people were there from the start, and stay'),
  },
  { keys: ['site.do secondPerson'], toward: ['H1'], expected: harmless('two are asked for before the coupling opens') },
  { keys: ['mark tee'], toward: ['R3'], expected: critical('nobody sees the new tee turn') },
  { keys: ['mark tee'], expected: harmless('the keeper’s mark shows the same turn') },
]; // prettier-ignore
