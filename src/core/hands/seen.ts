import type { KitKind, RigState, RodLoad, SiteTask } from '../rig/index.ts';

/**
 * The rig as anybody who stands there has it before their eyes and in their hands: what is on, how far a handle or a
 * marked thread is turned, what hangs on the rod. No pressure, no leak, no depth and no flaw of a piece is in it.
 */
export interface RigSeen {
  readonly pieces: readonly {
    readonly id: string;
    readonly kind: KitKind;
    readonly where: 'board' | 'rig' | 'rod' | 'lost';
    readonly rejected: boolean;
    readonly sealant: boolean;
  }[];
  readonly done: Readonly<Partial<Record<SiteTask, number>>>;
  readonly inHole: boolean;
  readonly isolating: boolean;
  readonly saddleOn: 'board' | 'tee' | 'coupling';
  /** Kinds above the saddle with their ids, from below. */
  readonly stack: readonly { readonly id: string; readonly kind: KitKind }[];
  readonly valveOpenRad: number;
  readonly bleedOpenRad: number;
  readonly ventOpen: number;
  readonly chains: readonly {
    readonly piece: string | null;
    readonly hooked: boolean;
    readonly turns: number;
  }[];
  readonly seatRing: string | null;
  readonly collar: { readonly gasket: string | null; readonly collar: string | null };
  readonly plug: { readonly at: 'tee' | 'rod' | 'out'; readonly turnsBack: number };
  readonly tee: { readonly at: 'coupling' | 'rod' | 'out'; readonly turnsBack: number };
  readonly stopper: 'board' | 'holder' | 'set' | 'fallen' | 'lost';
  readonly keeper: 'board' | 'rod' | 'tee';
  readonly closing: 'board' | 'rod' | 'coupling';
  readonly branch: {
    readonly cut: 'whole' | 'pilot' | 'through';
    readonly pilotPlugged: boolean;
    readonly capped: boolean;
  };
  readonly rod: {
    readonly tip: string | null;
    readonly load: RodLoad | null;
    readonly engaged: RodLoad | null;
    readonly travelM: number;
    readonly held: boolean;
    readonly collared: boolean;
  };
}

/** What of a rig can be seen. The rest of its state is taken away, not merely left unused. */
export function seenOf(rig: RigState): RigSeen {
  return {
    pieces: Object.values(rig.kit).map(({ id, kind, where, rejected, sealant }) => ({
      id,
      kind,
      where,
      rejected,
      sealant,
    })),
    done: rig.site.done,
    inHole: rig.site.inHole,
    isolating: rig.site.isolatedAtS !== null,
    saddleOn: rig.saddle.on,
    stack: rig.stack.map(({ id, kind }) => ({ id, kind })),
    valveOpenRad: rig.valve.openRad,
    bleedOpenRad: rig.bleed.openRad,
    ventOpen: rig.testHead.ventOpen,
    chains: rig.chains.map(({ piece, hooked, left, right }) => ({
      piece,
      hooked,
      turns: Math.min(left, right),
    })),
    seatRing: rig.seatRing.piece,
    collar: { gasket: rig.collar.gasket, collar: rig.collar.collar },
    plug: { at: rig.plug.at, turnsBack: rig.plug.turnsBack },
    tee: { at: rig.tee.at, turnsBack: rig.tee.turnsBack },
    stopper: rig.stopper.at,
    keeper: rig.keeper.at,
    closing: rig.closing.at,
    branch: { cut: rig.branch.cut, pilotPlugged: rig.branch.pilotPlugged, capped: rig.branch.capped },
    rod: {
      tip: rig.rod.tip,
      load: rig.rod.load,
      engaged: rig.rod.engaged,
      travelM: rig.rod.travelM,
      held: rig.rod.held,
      collared: rig.rod.collarTravelM !== null,
    },
  };
}

/** The kind on top of the valve, or null where its mouth stands open or no valve is on. */
export function topKind({ stack }: RigSeen): KitKind | null {
  const top = stack[stack.length - 1];
  return top === undefined || !closesStack.has(top.kind) ? null : top.kind;
}

const closesStack: ReadonlySet<KitKind> = new Set<KitKind>(['sightCap', 'testHead', 'rodBarrel', 'valveCap']);

export const valveOn = ({ stack }: RigSeen): boolean => stack.some(({ kind }) => kind === 'isolationValve');

/** The main stands open to whatever is over it. */
export function mainOpen(rig: RigSeen): boolean {
  return rig.tee.at === 'coupling'
    ? rig.plug.at !== 'tee' && rig.keeper !== 'tee'
    : rig.closing !== 'coupling';
}
