import { PSI_PA } from '../../units/index.ts';
import { OPEN_RAD } from '../../rig/index.ts';
import { openings, quietFor, type Opening } from '../bleeding.ts';
import { every, latest, since } from '../recall.ts';
import { item, type EvidenceItem, type Told } from '../told.ts';

/** The stop as it was heard at the bleed: the blow-down, and the reopening that proved it. */
export interface Stop {
  readonly blowDown: Opening | null;
  readonly quiet: Opening | null;
  readonly reopened: Opening | null;
}

/** What the bleed told of the stopper while it hung on its rod, before it was let go. */
export function stopOf(told: Told): Stop {
  const leftS = latest(told.facts, 'stopper.left')?.atS ?? told.nowS;
  const squeezedS = latest(told.facts, 'stopper.squeezed', (f) => f.inBore && f.atS <= leftS)?.atS ?? null;
  if (squeezedS === null) return { blowDown: null, quiet: null, reopened: null };
  const firstS = firstSqueezeS(told, leftS);
  const heard = openings(told).filter(
    (o) => o.openedS >= firstS && o.openedS <= leftS && o.valve === 'open' && o.load === 'boreStopper',
  );
  const expected = told.limits.hissShare * told.limits.expectedHissS;
  const blowDown = heard.find((o) => o.hissedS >= expected) ?? longest(heard);
  const after = blowDown ? heard.filter((o) => o.openedS >= blowDown.openedS) : [];
  const quiet = after.find((o) => quietFor(o) >= told.limits.quietS) ?? null;
  const from = quiet ?? blowDown;
  const later = from ? after.filter((o) => o.openedS > from.openedS) : [];
  const reopened = later.filter((o) => o.shutForS >= told.limits.shutS).pop() ?? later.pop() ?? null;
  return { blowDown, quiet, reopened };
}

/** Service stopped: hissed, died, stayed quiet, and no puff after it was shut in. An open quiet bleed hides a weep. */
export function serviceStopped(told: Told): readonly EvidenceItem[] {
  const { limits } = told;
  const { blowDown, quiet, reopened } = stopOf(told);
  const hissedS = blowDown?.hissedS ?? 0;
  const neededS = limits.hissShare * limits.expectedHissS;
  const quietS = quiet ? quietFor(quiet) : 0;
  const shutS = reopened?.shutForS ?? 0;
  return [
    item('hissed', blowDown !== null && hissedS >= neededS, { hissedS, neededS }),
    item('quiet', quiet !== null && quietS >= limits.quietS, { quietS, limitS: limits.quietS }),
    item('snuggedAgain', blowDown !== null && snuggedAgain(told, blowDown, reopened)),
    item('shutIn', shutS >= limits.shutS, { shutS, limitS: limits.shutS }),
    lowMainPa(told) === null
      ? item('noPuff', reopened !== null && !reopened.puff, { aboveGaugePa: reopened?.aboveGaugePa ?? 0 })
      : columnStood(told, blowDown?.openedS ?? told.nowS),
    item(
      'rodHeld',
      blowDown !== null && reopened !== null && heldFrom(told, blowDown.openedS, reopened.openedS),
    ),
    item('stayed', reopened !== null && stayed(told, reopened.openedS)),
  ];
}

/** Mains below this are shown dead by a manometer and not by the ear, Pa gauge: 10 psig (common practice, no source). */
export const LOW_MAIN_PA = 10 * PSI_PA;
/** Rise of the column while shut in, as a share of the main's pressure (assumed). */
const COLUMN_SHARE = 0.1;

/** The main as it was last read, Pa gauge, where it is too low for an ear; null where it is not, or was never read. */
function lowMainPa({ facts }: Told): number | null {
  const main = latest(facts, 'gauge.read', (f) => f.gauge === 'main');
  return main !== null && main.readingGaugePa < LOW_MAIN_PA ? main.readingGaugePa : null;
}

/** Facts that end a stretch of watching the column. */
const disturbs: ReadonlySet<string> = new Set([
  'bleed.turned',
  'valve.turned',
  'piece.placed',
  'piece.removed',
]);

/** The manometer read twice with the bleed shut over the stopper on its rod, and hardly risen between. */
function columnStood(told: Told, fromS: number): EvidenceItem {
  let first: { readonly atS: number; readonly readingGaugePa: number } | null = null;
  let watchedS = 0;
  let riseGaugePa = 0;
  told.facts.forEach((f, i) => {
    if (f.atS < fromS) return;
    if (disturbs.has(f.fact)) first = null;
    if (f.fact !== 'gauge.read' || f.gauge !== 'manometer' || told.stood[i].load !== 'boreStopper') return;
    if (f.under.bleedOpenRad > 0 || f.under.valveOpenRad < OPEN_RAD) return;
    first ??= f;
    if (f.atS - first.atS < told.limits.shutS) return;
    watchedS = f.atS - first.atS;
    riseGaugePa = f.readingGaugePa - first.readingGaugePa;
  });
  const limitPa = COLUMN_SHARE * (lowMainPa(told) ?? 0);
  const stood = watchedS >= told.limits.shutS && watchedS > 0 && riseGaugePa <= limitPa;
  return item('manometer', stood, { riseGaugePa, limitPa, shutS: watchedS, limitS: told.limits.shutS });
}

function firstSqueezeS(told: Told, leftS: number): number {
  const loadedS = told.facts.reduce(
    (at, f, i) =>
      f.fact === 'done' && f.action.kind === 'rod.load' && told.stood[i].load === 'boreStopper' ? f.atS : at,
    0,
  );
  for (const f of told.facts) {
    if (f.fact === 'stopper.squeezed' && f.inBore && f.atS >= loadedS && f.atS <= leftS) return f.atS;
  }
  return leftS;
}

function longest(all: readonly Opening[]): Opening | null {
  return all.reduce<Opening | null>(
    (best, o) => (best === null || o.hissedS > best.hissedS ? o : best),
    null,
  );
}

/** Rubber relaxes: once the bleed has died it is turned up further than before, and is so when the bleed is reopened. */
function snuggedAgain(told: Told, blowDown: Opening, reopened: Opening | null): boolean {
  const fromS = blowDown.quietFromS ?? blowDown.openedS + blowDown.hissedS;
  const untilS = reopened?.openedS ?? told.nowS;
  const squeezes = every(told.facts, 'stopper.squeezed', (f) => f.inBore && f.atS <= untilS);
  const before = squeezes.filter((f) => f.atS <= fromS).pop();
  const last = squeezes.filter((f) => f.atS > fromS).pop();
  return before !== undefined && last !== undefined && last.turns > before.turns;
}

function heldFrom(told: Told, fromS: number, untilS: number): boolean {
  return told.facts.every(
    (f, i) => f.atS < fromS || f.atS > untilS || told.stood[i].held || beforeHold(told, i),
  );
}

/** At the very moment of opening, facts of an earlier action may still tell of an unheld rod. */
function beforeHold(told: Told, index: number): boolean {
  const fact = told.facts[index];
  return told.stood.some((s, i) => i > index && told.facts[i].atS === fact.atS && s.held);
}

/** From the reopening on it neither moved nor was slackened before it was let go: what was proved is what is left. */
function stayed(told: Told, fromS: number): boolean {
  const moved = since(told.facts, fromS).some(
    (f) => f.fact === 'stopper.slipped' || f.fact === 'stopper.dropped',
  );
  return !moved && !slackened(told, fromS);
}

function slackened(told: Told, fromS: number): boolean {
  const leftS = latest(told.facts, 'stopper.left')?.atS ?? told.nowS;
  const squeezes = every(told.facts, 'stopper.squeezed', (f) => f.atS <= leftS);
  return squeezes.some((f, i) => i > 0 && f.atS > fromS && f.turns < squeezes[i - 1].turns);
}
