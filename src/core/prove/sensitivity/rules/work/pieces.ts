import { costs, costsIn, critical, harmless, opensLive } from '../expected.ts';
import type { Line } from '../line.ts';

const stuck = critical('what comes after cannot be done, and was signed for', ['holdPoints', 'gasControl']);
const left = critical('the rig stays in the ground', ['technique', 'holdPoints']);

/** Pieces put on, loaded and taken off over the valve, and the rig taken away. */
export const pieces: readonly Line[] = [
  {
    keys: ['piece.place rodBarrel'],
    toward: ['H4', 'H11', 'R2', 'R5'],
    expected: critical('the ball opens on a live bore with nothing above it', ['gasControl', 'holdPoints']),
  },
  {
    keys: ['piece.place sightCap'],
    toward: ['H3', 'R2'],
    expected: opensLive('the ball opens on a live bore with nothing above it'),
  },
  {
    keys: ['piece.place sightCap'],
    toward: ['H11'],
    inStage: [1],
    expected: opensLive('the ball opens on a live bore with nothing above it'),
  },
  {
    keys: ['piece.place sightCap'],
    toward: ['H11', 'R5'],
    expected: harmless('the main is closed below: an eye over the open ball sees as much'),
  },
  {
    keys: ['piece.place sightCap'],
    toward: ['H5'],
    expected: costs('holdPoints', 1, 'without its window and lamp nothing is seen'),
  },
  { keys: ['piece.place sightCap'], expected: critical('without its window and lamp nothing is seen') },
  { keys: ['piece.place valveCap'], expected: costs('technique', 0.25, 'one wall less while others work') },
  { keys: ['sealant.apply newTopPlug', 'sealant.apply tieIn'], expected: costs('kit', 1, 'a dry thread weeps') },
  {
    keys: ['sealant.apply closingPlug', 'sealant.apply renewalTee'],
    expected: costsIn(['holdPoints', 'kit'], 1, 'a dry thread weeps'),
  },
  { keys: ['piece.remove upperSpool'], toward: ['R2'], expected: harmless('the new tee goes down through it') },
  { keys: ['rod.fit socket'], toward: ['R5'], inStage: [1], expected: harmless('the socket is on the rod already') },
  { keys: ['rod.turn back', 'innerRod.turn back'], toward: ['R5'], inStage: [2], expected: costs('technique', 1, 'drawn with its rubber still squeezed') },
  { keys: ['innerRod.turn back'], toward: ['R5'], expected: costs('technique', 1, 'drawn with its rubber still squeezed') },
  { keys: ['piece.remove seatRing'], toward: ['R6'], expected: costs('holdPoints', 1, 'coated over, it keeps the wet on the steel') },
  {
    keys: ['piece.remove splitCollar', 'piece.remove cupGasket'],
    expected: costs('holdPoints', 1, 'coated over, they keep the wet on the steel'),
  },
  {
    keys: [
      'piece.remove sightCap', 'piece.remove isolationValve', 'piece.remove lowerSpool', 'piece.remove upperSpool',
      'piece.remove rodBarrel', 'piece.remove saddle', 'chain.hook off', 'tensioner.turn back',
    ],
    toward: ['H12', 'R6'],
    expected: left,
  },
  {
    keys: [
      'rod.fit socket', 'rod.fit stopperHolder', 'rod.load out', 'rod.load boreStopper', 'rod.load keeperPlug',
      'rod.load closingPlug', 'rod.load renewalTee', 'rod.load newTopPlug', 'rod.move on', 'rod.turn on',
      'rod.turn back', 'innerRod.turn on', 'innerRod.turn back', 'valve.turn on', 'piece.place rodBarrel',
      'piece.place upperSpool', 'piece.remove testHead', 'piece.remove rodBarrel', 'piece.remove sightCap',
      'piece.remove valveCap', 'piece.remove upperSpool', 'piece.remove lowerSpool', 'piece.remove isolationValve',
      'piece.remove saddle', 'chain.hook off', 'tensioner.turn back', 'keeper.pull on', 'collar.set',
      'piece.remove seatRing',
    ],
    expected: stuck,
  },
]; // prettier-ignore
