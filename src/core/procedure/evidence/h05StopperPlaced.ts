import { openings, quietFor } from '../bleeding.ts';
import { latest, latestDone, since, kindOf } from '../recall.ts';
import { item, type EvidenceItem, type Told } from '../told.ts';

/** Stopper placed: seen square, under the port, dry, and quiet for a minute straight before the keeper hides it. */
export function stopperPlaced(told: Told): readonly EvidenceItem[] {
  const { facts, limits } = told;
  const leftS = latest(facts, 'stopper.left')?.atS ?? null;
  const look = latest(
    facts,
    'looked',
    (f) => f.at === 'downBore' && f.saw.visible && f.saw.stopperSeen === true,
  );
  const seen = leftS !== null && look !== null && look.atS >= leftS;
  const belowPortM = seen ? (look.saw.stopperBelowPortM ?? -1) : -1;
  const [low, high] = limits.stopperBelowPortM;
  const watch = lastWatch(told, leftS);
  return [
    item('bled', leftS !== null && bledBeforeOff(told, leftS)),
    item('looked', seen),
    item('square', seen && look.saw.stopperSquare === true),
    item('depth', seen && belowPortM >= low - DEPTH_STEP_M && belowPortM <= high + DEPTH_STEP_M, {
      belowPortM,
      lowM: low,
      highM: high,
    }),
    item('dry', seen && look.saw.stopperDry === true),
    item('quiet', watch >= limits.lookQuietS, { quietS: watch, limitS: limits.lookQuietS }),
  ];
}

/** An eye judges a depth to half a millimetre. */
const DEPTH_STEP_M = 0.0005;

/** The longest the bleed stayed quiet over the open bore after the stopper was let go, before the keeper, s. */
function lastWatch(told: Told, leftS: number | null): number {
  if (leftS === null) return 0;
  const keeperS =
    latestDone(told.facts, 'rod.load', (a) => kindOf(told.job, a.piece) === 'keeperPlug')?.atS ?? told.nowS;
  const untilS = keeperS > leftS ? keeperS : told.nowS;
  const watches = openings(told).filter(
    (o) => o.openedS >= leftS && o.openedS <= untilS && o.valve === 'open',
  );
  const last = watches[watches.length - 1];
  return last ? quietFor(last) : 0;
}

/** What stood above the shut valve was bled quiet before it was taken off. */
function bledBeforeOff(told: Told, leftS: number): boolean {
  const off = since(told.facts, leftS).find((f) => f.fact === 'piece.removed');
  const untilS = off?.atS ?? told.nowS;
  return openings(told).some(
    (o) => o.openedS >= leftS && o.openedS <= untilS && o.valve === 'shut' && o.quietFromS !== null,
  );
}
