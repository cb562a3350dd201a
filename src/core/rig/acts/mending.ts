import type { RigState } from '../state.ts';
import { topPiece } from '../network.ts';
import { did, onBoard, withPiece, type Acts } from './outcome.ts';

/** Flaws that a rag or a wire takes away. */
const wipedAway = ['gritCdAM2', 'oily', 'bleedBlocked', 'sealantSmeared', 'filingsCdAM2'] as const;

/** Setting right what is dirty, stuck or blocked; damage is not mended in the hole. */
export const mendingActs: Acts<'oil.apply' | 'piece.clean' | 'bleed.clear'> = {
  'oil.apply': (rig, { at }, sense) => {
    if (rig.saddle.on !== 'board' || rig.tee.at !== 'coupling') return 'covered';
    if (at === 'plug' && rig.plug.at !== 'tee') return 'notFitted';
    const oiledAtS = { ...rig.site.oiledAtS, [at]: sense.atS };
    return did({ ...rig, site: { ...rig.site, oiledAtS } }, { fact: 'oiled', at });
  },
  'piece.clean': (rig, { piece: id }) => {
    const piece = onBoard(rig, id);
    if (typeof piece === 'string') return piece;
    const cameOff = wipedAway.filter((flaw) => piece.defects[flaw] !== undefined);
    const cleaned = withoutFlaws(rig, id);
    return did(withPiece(cleaned, id, { sealant: false }), { fact: 'piece.cleaned', piece: id, cameOff });
  },
  'bleed.clear': (rig) => {
    const top = topPiece(rig);
    if (top === null || !['rodBarrel', 'sightCap'].includes(rig.kit[top].kind)) return 'needsBleed';
    const blocked = rig.kit[top].defects.bleedBlocked;
    const clear = blocked === undefined ? rig : withoutFlaws(rig, top);
    return did(clear, { fact: 'bleed.cleared', cameOut: blocked !== undefined });
  },
};

function withoutFlaws(rig: RigState, id: string): RigState {
  const left = Object.entries(rig.kit[id].defects).filter(([flaw]) => !wipedAway.some((one) => one === flaw));
  return withPiece(rig, id, { defects: Object.fromEntries(left) });
}
