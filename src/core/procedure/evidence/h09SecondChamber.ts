import { PSI_PA } from '../../units/index.ts';
import { latest, since } from '../recall.ts';
import { pumpedOverMain, proofItems, riseBeforePumping, secondChamber } from '../proof.ts';
import { item, type EvidenceItem, type Told } from '../told.ts';

/** How far a reading of the main may be off, Pa: what the pump shows over the limit within it is no slip. */
const GAUGE_SLACK_PA = PSI_PA;

/**
 * Second chamber proved: as the first, but the bulkheads are a just-cracked thread and a rubber stopper, so it is
 * watched for a rise before any air goes in and never stands more than a little above the main.
 */
export function secondChamberProved(told: Told): readonly EvidenceItem[] {
  const { limits } = told;
  const chamber = secondChamber(told.job.workpiece.teeSize);
  const pumped = pumpedOverMain(told, chamber, 0);
  const highestGaugePa = pumped?.highestGaugePa ?? 0;
  const limitGaugePa = (pumped?.mainGaugePa ?? 0) + limits.overMainPa;
  const proof = proofItems(told, chamber).filter((one) => one.id !== 'rise');
  return [
    riseBeforePumping(told, chamber),
    ...proof,
    item('neverOver', highestGaugePa <= limitGaugePa + GAUGE_SLACK_PA, { highestGaugePa, limitGaugePa }),
    item('keeperMark', keeperStill(told)),
    item('ventedAway', ventedAway(told)),
  ];
}

function keeperStill(told: Told): boolean {
  const marked = latest(told.facts, 'marked', (f) => f.at === 'keeper');
  if (!marked) return false;
  return !since(told.facts, marked.atS).some(
    (f) => f.fact === 'keeper.turned' || (f.fact === 'joint.turned' && f.joint === 'keeper'),
  );
}

/** Every time the head's vent was opened over this chamber, the hose led away. */
function ventedAway(told: Told): boolean {
  let vented = false;
  let away = true;
  told.facts.forEach((f, i) => {
    if (f.fact !== 'vent.turned' || f.open <= 0 || told.stood[i].saddleOn !== 'coupling') return;
    if (f.aboveGaugePa <= told.limits.puffPa) return;
    vented = true;
    away &&= told.stood[i].hose === 'away';
  });
  return vented && away;
}
