import { cradleMains, sizedBy, type KitEntry, type KitKind, type TeeSize } from '../../core/rig/index.ts';
import { sizeInId } from './teeSizes.ts';

const teeSizes: readonly TeeSize[] = ['3/4', '1', '1-1/4'];

const first: readonly KitKind[] = ['seatRing', 'saddle', 'cradleBlock', 'chain', 'isolationValve'];
const second: readonly KitKind[] = [
  'lowerSpool', 'upperSpool', 'sightCap', 'testHead', 'rodBarrel', 'socket', 'stopperHolder', 'magnet', 'depthCollar',
  'boreStopper', 'keeperPlug', 'cupGasket', 'splitCollar', 'closingPlug', 'valveCap', 'gaugeRing', 'serviceCap',
]; // prettier-ignore

/** A usual board: every size of what goes by the tee, blocks of every small main in pairs, a spare closing plug. */
export function usualKit(teeSize: TeeSize): readonly KitEntry[] {
  const board = [...first, ...second].flatMap(piecesOf);
  return [...board, another(board, 'closingPlug', teeSize)];
}

function piecesOf(kind: KitKind): readonly KitEntry[] {
  if (kind === 'chain') return ['a', 'b'].map((one) => ({ id: `chain-${one}`, kind }));
  if (kind === 'cradleBlock')
    return cradleMains.flatMap((nps) =>
      ['a', 'b'].map((one) => ({ id: `cradleBlock-${sizeInId(nps)}-${one}`, kind, stamped: mainSize(nps) })),
    );
  if (sizedBy[kind] === 'one') return [{ id: kind, kind }];
  return teeSizes.map((nps) => ({ id: `${kind}-${sizeInId(nps)}`, kind, stamped: nps }));
}

function mainSize(nps: string): KitEntry['stamped'] {
  return (['1-1/4', '1-1/2', '2', '3'] as const).find((one) => one === nps);
}

/** One more piece of a kind, under a name that no other has. */
export function another(
  kit: readonly KitEntry[],
  kind: KitKind,
  stamped: KitEntry['stamped'] | null,
): KitEntry {
  const plain = stamped === null || stamped === undefined ? kind : `${kind}-${sizeInId(stamped)}`;
  const taken = new Set(kit.map(({ id }) => id));
  let id: string = plain;
  for (let n = 2; taken.has(id); n += 1) id = `${plain}-${n}`;
  return stamped === null || stamped === undefined ? { id, kind } : { id, kind, stamped };
}

const goingByTee: readonly KitKind[] = [
  'seatRing', 'socket', 'boreStopper', 'keeperPlug', 'cupGasket', 'splitCollar', 'closingPlug', 'closingPlug', 'serviceCap',
]; // prettier-ignore

/** The board with everything on it that a whole job needs in a tee's size: two closing plugs, one of all else. */
export function withPiecesOf(kit: readonly KitEntry[], teeSize: TeeSize): readonly KitEntry[] {
  return goingByTee.reduce<readonly KitEntry[]>((board, kind, i) => {
    const wanted = goingByTee.slice(0, i + 1).filter((one) => one === kind).length;
    const there = board.filter((one) => one.kind === kind && one.stamped === teeSize).length;
    return there < wanted ? [...board, another(board, kind, teeSize)] : board;
  }, kit);
}
