import {
  compile,
  evenContents,
  firstStepS,
  liveRig,
  stepTo,
  type Network,
} from '../../core/physics/index.ts';
import { ATM_PA } from '../../core/units/index.ts';
import { leastMs, tenth } from './cpu.ts';

/** What one step costs on a network of so many cells. */
export interface Growth {
  readonly cells: number;
  readonly usPerStep: number;
}

/** Cells of the networks measured. */
const SIZES = [4, 8, 16, 32];
const FILLED_FOR_S = 60;
const REPEATS = 20;

/** The bench rig of so many cells: its first ones below eight, more segments of service above. */
export function rigOfCells(count: number): Network {
  const rig = liveRig(Math.max(0, count - 8));
  const cells = rig.cells.slice(0, count);
  const stands = new Set([...cells, ...rig.boundaries].map(({ id }) => id));
  return { ...rig, cells, links: rig.links.filter(({ from, to }) => stands.has(from) && stands.has(to)) };
}

/** Microseconds a step while the rig fills from the main, by number of cells. */
export function measureGrowth(): Growth[] {
  return SIZES.map((cells) => {
    const network = rigOfCells(cells);
    const net = compile(network);
    const contents = evenContents(network, ATM_PA, 0);
    const first = firstStepS(net, 0, contents);
    let steps = 0;
    const ms = leastMs(5, () => {
      steps = 0;
      for (let i = 0; i < REPEATS; i += 1) steps += stepTo(net, 0, contents, first, FILLED_FOR_S).steps;
    });
    return { cells, usPerStep: tenth((ms * 1000) / steps) };
  });
}
