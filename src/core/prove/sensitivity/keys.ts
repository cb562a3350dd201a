import type { Action } from '../../rig/index.ts';

/**
 * What an action is to the catalogue of deviations: its kind and what it is done to, and which way where both ways are
 * work of their own. Sizes and letters of pieces are dropped, so that both chains are one key.
 */
export function keyOf(action: Action): string {
  switch (action.kind) {
    case 'site.do':
      return `site.do ${action.task}`;
    case 'detector.read':
      return `detector.read ${action.where}`;
    case 'gauge.zero':
    case 'gauge.read':
      return `${action.kind} ${action.gauge}`;
    case 'look':
    case 'clean':
    case 'mark':
    case 'leakFluid.apply':
    case 'oil.apply':
      return `${action.kind} ${action.at}`;
    case 'measure':
      return `measure ${action.what}`;
    case 'piece.inspect':
    case 'piece.reject':
    case 'piece.clean':
    case 'piece.place':
    case 'piece.remove':
    case 'sealant.apply':
      return `${action.kind} ${kindIn(action.piece)}`;
    case 'rod.fit':
      return `rod.fit ${action.tip === null ? 'off' : kindIn(action.tip)}`;
    case 'rod.load':
      return `rod.load ${action.piece === null ? 'out' : kindIn(action.piece)}`;
    case 'record.write':
      return `record.write ${action.field}`;
    case 'sign':
    case 'withdraw':
      return `${action.kind} ${action.holdPoint}`;
    case 'bond.clamp':
      return `bond.clamp ${action.end} ${action.clamped ? 'on' : 'off'}`;
    case 'branch.cut':
      return `branch.cut ${action.part}`;
    case 'tee.trim':
      return `tee.trim ${action.how}`;
    case 'chain.hook':
      return `chain.hook ${action.hooked ? 'on' : 'off'}`;
    case 'rod.hold':
      return `rod.hold ${action.held ? 'on' : 'off'}`;
    default:
      return `${action.kind}${wayOf(action)}`;
  }
}

/** Which way a movement goes: forward is in, open, clockwise; back the other. Empty where there is but one. */
function wayOf(action: Action): string {
  const amount = amountOf(action);
  if (amount === null || action.kind === 'pump.stroke') return '';
  return amount < 0 ? ' back' : ' on';
}

/** How much of a movement an action is, in its own unit, or null where it has no measure. */
export function amountOf(action: Action): number | null {
  switch (action.kind) {
    case 'tensioner.turn':
    case 'rod.turn':
    case 'innerRod.turn':
    case 'plug.turn':
    case 'tee.turn':
    case 'keeper.turn':
    case 'collarBolt.turn':
      return action.turns;
    case 'valve.turn':
    case 'bleed.turn':
      return action.angleRad;
    case 'vent.turn':
    case 'testSet.vent':
    case 'riser.turn':
      return action.open;
    case 'rod.move':
      return action.lengthM;
    case 'pump.stroke':
    case 'testSet.pump':
      return action.strokes;
    case 'keeper.pull':
      return action.torqueNm;
    case 'collar.set':
      return action.travelM;
    case 'leakFluid.apply':
      return action.watchS;
    default:
      return null;
  }
}

function kindIn(piece: string): string {
  return piece.replace(/-(other|second)$/, '').replace(/-(1|34|114|112|2|3|a|b)(?=$|-spare$)/, '');
}

/** Kinds that move no gas and no part: leaving one out changes the story and nothing else in it. */
const paperKinds: ReadonlySet<Action['kind']> = new Set([
  'site.do', 'detector.bump', 'detector.read', 'gauge.zero', 'gauge.read', 'look', 'listen', 'measure', 'mark',
  'leakFluid.apply', 'piece.inspect', 'sealant.apply', 'record.write', 'sign', 'bond.clamp', 'gaugeRing.try',
  'service.purge',
]); // prettier-ignore

/** Whether an action moves neither gas nor part. */
export function isPaper(action: Action): boolean {
  return paperKinds.has(action.kind);
}
