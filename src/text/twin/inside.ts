import type { RunState } from '../../core/run/index.ts';
import type { Speech } from '../catalogue.ts';
import { say } from '../say.ts';
import { decimals } from '../figures.ts';
import { percent } from '../units.ts';
import { words } from '../words.ts';

/** Molar mass of the fuel gas of the model (gravity 0.60 of air), kg/mol. */
const GAS_KG_PER_MOL = 0.6 * 0.0289647;

/** What no crew can see: for practice only. */
export function insideLines(run: RunState, speech: Speech): string[] {
  const { rig, ledger, air } = run;
  const { units } = speech;
  const lines: string[] = [];
  if (rig.stopper.at === 'set') {
    const below = rig.stopper.belowPortM;
    const depth = units.length(Math.abs(below));
    const where = say(below >= 0 ? 'twin.stopperBelow' : 'twin.stopperAbove', { depth });
    lines.push(say('twin.stopperAt', { where, feel: words().felt.grip(rig.stopper.torqueNm, speech) }));
  }
  if (rig.stopper.at === 'lost') lines.push(say('twin.stopperLost'));
  rig.chains.forEach((chain, i) => {
    if (!chain.hooked) return;
    lines.push(
      say('twin.legs', { no: i + 1, left: decimals(chain.left, 2), right: decimals(chain.right, 2) }),
    );
  });
  lines.push(
    say('twin.intoHole', {
      mass: units.mass(ledger.toHoleMol * GAS_KG_PER_MOL),
      bled: units.mass(ledger.throughBleedMol * GAS_KG_PER_MOL),
    }),
    say('twin.holeAir', { lel: percent(lel(run)), peak: percent(air.peakLelShare) }),
  );
  return lines;
}

function lel({ air, scenario }: RunState): number {
  return air.gasFraction / scenario.job.site.lelFraction;
}
