import type { Action } from '../rig/index.ts';
import type { FeltFact } from './felt.ts';
import type { View } from './hand.ts';
import type { Order } from './order.ts';

/**
 * What somebody who trusts that all is well takes for seen, read or heard without looking; null where an act is work and
 * not evidence. The main is as the order says it is, the head is glanced at, everything else is as it should be.
 */
export function believed(action: Action, order: Order, view: View): readonly FeltFact[] | null {
  const { atS } = view.readings;
  switch (action.kind) {
    case 'gauge.read': {
      const readingGaugePa =
        action.gauge === 'manometer'
          ? 0
          : action.gauge === 'head'
            ? (view.readings.headGaugePa ?? 0)
            : order.orderPressureGaugePa;
      return [{ atS, fact: 'gauge.read', gauge: action.gauge, readingGaugePa, zeroed: true, under: nowhere }];
    }
    case 'leakFluid.apply':
      return [{ atS, fact: 'leak.looked', at: action.at, bubbles: 'none', watchS: action.watchS }];
    case 'look':
      return [{ atS, fact: 'looked', at: action.at, saw: asItShouldBe(order) }];
    case 'listen':
      return [{ atS, fact: 'listened', levelDb: 0, heard: false }];
    case 'detector.bump':
      return [{ atS, fact: 'detector.bumped', passed: true }];
    case 'detector.read':
      return [{ atS, fact: 'detector.read', where: action.where, lelShare: 0, oxygenShare: FRESH_OXYGEN }];
    case 'piece.inspect':
      return [{ atS, fact: 'piece.inspected', piece: action.piece, found: [] }];
    default:
      return null;
  }
}

const FRESH_OXYGEN = 0.209;

const nowhere = { valveOpenRad: 0, ventOpen: 0, bleedOpenRad: 0, top: null, saddleOn: 'board' } as const;

function asItShouldBe({ limits }: Order) {
  const [high, low] = limits.stopperBelowPortM;
  return {
    visible: true,
    face: 'sound',
    wallSound: true,
    boreClear: true,
    stopperSeen: true,
    stopperSquare: true,
    stopperDry: true,
    stopperBelowPortM: (high + low) / 2,
    threadsSound: true,
    closingSquare: true,
    chainsBear: true,
  } as const;
}
