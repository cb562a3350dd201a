import type { RigState } from '../../core/rig/index.ts';
import type { RunState } from '../../core/run/index.ts';
import type { Speech } from '../catalogue.ts';
import { say } from '../say.ts';
import { turnsOf } from '../units.ts';
import { words } from '../words.ts';

/** Tee, plugs, branch and service, as the crew left them by its own hands. */
export function workpieceLines({ rig }: RunState, speech: Speech): string[] {
  const lines = rig.saddle.on === 'board' ? [] : [say('twin.coveredTee')];
  lines.push(teeLine(rig), topLine(rig, speech));
  if (rig.tee.trim === 'sawn') lines.push(say('twin.trimSawn'));
  if (rig.tee.trim === 'dressed')
    lines.push(say('twin.trimDressed', { filed: rig.tee.filed ? say('twin.filed') : '' }));
  lines.push(branchLine(rig));
  if (rig.branch.purged) lines.push(say('twin.servicePurged'));
  if (rig.branch.capped) lines.push(say('twin.serviceCapped'));
  if (rig.tee.at !== 'coupling') {
    const { closing } = rig;
    const feel = words().felt.grip(closing.torqueNm, speech);
    lines.push(
      closing.at === 'coupling'
        ? say('twin.closingIn', { turns: turnsOf(closing.engagedTurns), feel })
        : say('twin.couplingOpen'),
    );
  }
  return lines.filter((line) => line !== '');
}

function teeLine({ tee }: RigState): string {
  if (tee.at === 'rod') return say('twin.teeRod');
  if (tee.at === 'out') return say('twin.teeOut');
  if (!tee.broken) return say('twin.teeWhole');
  return tee.turnsBack > 0.005
    ? say('twin.teeBack', { turns: turnsOf(tee.turnsBack) })
    : say('twin.teeTight');
}

function topLine({ plug, keeper, site }: RigState, speech: Speech): string {
  if (keeper.at === 'tee') {
    const mark = site.marks.keeper === undefined ? '' : say('twin.keeperMarked');
    return say('twin.keeperIn', {
      turns: turnsOf(keeper.engagedTurns),
      feel: words().felt.grip(keeper.torqueNm, speech),
      mark,
    });
  }
  if (plug.at === 'rod') return say('twin.plugRod');
  if (plug.at === 'out') return `${say('twin.plugOut')} ${say('twin.topOpen')}`;
  if (!plug.broken) return say('twin.plugWhole');
  return plug.turnsBack > 0.005
    ? say('twin.plugBack', { turns: turnsOf(plug.turnsBack) })
    : say('twin.plugTight');
}

function branchLine({ branch }: RigState): string {
  if (branch.cut === 'through') return say('twin.branchThrough');
  if (branch.cut === 'whole') return say('twin.branchWhole');
  return say(branch.pilotPlugged ? 'twin.branchPilotPlugged' : 'twin.branchPilot');
}
