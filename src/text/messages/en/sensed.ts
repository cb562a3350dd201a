import type { Catalogue } from '../../catalogue.ts';
import { capital } from '../../sentence.ts';
import { BLOWS_FROM_PA, PUSHES_FROM_PA, SEEPS_FROM_PA, THROWS_FROM_N } from '../../units.ts';
import { alsoFound, cut, nameOf, sources } from './facts.ts';

/** What a crew has of the facts that hold more than it could know: no figure that no dial shows. */
export const sensed: Catalogue['sensed'] = {
  listened: (f) => (f.heard ? 'Gas can be heard.' : 'Nothing can be heard above the street.'),
  pumped: (f) => (f.strokes === 1 ? 'One stroke went in.' : `${f.strokes} strokes went in.`),
  'testSet.pumped': (f) =>
    f.strokes === 1 ? 'One stroke of the test set went in.' : `${f.strokes} strokes of the test set went in.`,
  'piece.rejected': (f, s) => `${capital(s.thePiece(f.piece))} is set aside.`,
  'piece.removed': (f, s) =>
    `${capital(s.thePiece(f.piece))} ${f.pressureGaugePa > PUSHES_FROM_PA ? 'came off with pressure behind it' : 'is off'}.`,
  'chain.tapped': (f) =>
    f.settledM > 2e-5
      ? `The links of chain no. ${f.chain + 1} settled; it has gone slacker.`
      : `The links of chain no. ${f.chain + 1} lie flat and settle no further.`,
  'chain.released': () => 'The chains were let go.',
  'rod.thrown': () => 'The rod was thrown up.',
  'rod.still': () => 'The rod stayed where it was, free of the hand.',
  'plug.free': (f) =>
    f.chamberClosed
      ? 'The thread of the top plug let go, inside the closed rig.'
      : `The top plug came free in the open${f.thrustN > THROWS_FROM_N ? ', and was thrown' : ''}.`,
  'tee.free': (f) =>
    f.chamberClosed
      ? 'The threads of the tee let go, inside the closed rig.'
      : `The tee came free in the open${f.thrustN > THROWS_FROM_N ? ', and was thrown' : ''}.`,
  'stopper.torn': () => 'Something gave way under the fingers.',
  'stopper.drawn': (f) =>
    f.differenceGaugePa > PUSHES_FROM_PA
      ? 'The stopper left its bore, pushed up from below.'
      : 'The stopper left its bore with nothing pushing it.',
  'branch.cut': (f) => {
    const what = nameOf(cut, f.part) + alsoFound(f.found);
    if (f.pressureGaugePa > BLOWS_FROM_PA) return `${what} Gas blows from it.`;
    return `${what} ${f.pressureGaugePa > SEEPS_FROM_PA ? 'A little gas' : 'Nothing'} comes from it.`;
  },
  'gaugeRing.tried': (f) =>
    f.passes ? 'The gauge ring passes the tee’s swept circle.' : 'The gauge ring does not pass.',
  'gas.alarm': (f) => alarms[f.step],
  'gas.ignited': () => 'The gas took fire.',
  'relief.lifted': () => 'The test head’s relief lifted.',
  'relief.shut': () => 'The test head’s relief shut again.',
  'blow.began': (f) => `Gas blows into the hole from the ${nameOf(sources, f.from)}.`,
  'blow.ended': (f) => `The blow from the ${nameOf(sources, f.from)} ended.`,
  'saddle.lifted': () => 'The saddle lifted off its seat.',
};

const alarms = [
  'The gas alarm falls silent.',
  'The gas alarm sounds at its low step.',
  'The gas alarm sounds at its high step: out, upwind, people first.',
] as const;
