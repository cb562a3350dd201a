import { kindOf, latest, shutInQuiet } from '../../procedure/index.ts';
import type { Case, Draft, Rule } from '../case.ts';

/** Chamber pressure above the air's from which a joint is under test at all, Pa gauge (5 psi). */
const UNDER_GAUGE_PA = 34474;

interface Spell {
  readonly onS: number;
  readonly offS: number;
  readonly from: number;
  readonly to: number;
  readonly live: boolean;
  readonly piece: OnTop;
}

type OnTop = 'rodBarrel' | 'sightCap';

/**
 * Each spell of rod barrel or sight cap on the stack: its joint is new every time. What stands in it is opened to the
 * crew's faces every time it comes off, and over an open bore the ball is then the only wall beside a soft stopper.
 */
export const jointRules: Rule = (judged) => {
  const all = [...spells(judged, 'rodBarrel'), ...spells(judged, 'sightCap')];
  const live = all.filter((spell) => spell.live);
  const unchecked = live.filter((spell) => !fluidOn(judged, spell));
  const opened = all.filter((spell) => spell.to < judged.facts.length && overOpenBore(judged, spell));
  const uncracked = opened.filter((spell) => !crackChecked(judged, spell));
  const found: Draft[] = [];
  if (unchecked.length > 0) {
    const points = Math.min(2, 0.5 * unchecked.length);
    const numbers = { times: unchecked.length, of: live.length };
    found.push({
      id: 'newJointUnchecked',
      atS: Math.min(...unchecked.map((spell) => spell.onS)),
      points,
      numbers,
      causes: ['newJoint'],
    });
  }
  if (uncracked.length > 0) {
    const points = Math.min(2.5, 0.5 * uncracked.length);
    const numbers = { times: uncracked.length, of: opened.length };
    found.push({ id: 'noCrackCheck', atS: uncracked[0].offS, points, numbers, causes: ['crackCheck'] });
  }
  return found;
};

function spells({ facts, job, run }: Case, piece: OnTop): readonly Spell[] {
  const found: Spell[] = [];
  let from: number | null = null;
  let live = false;
  const close = (to: number, offS: number): void => {
    if (from !== null) found.push({ onS: facts[from].atS, offS, from, to, live, piece });
    from = null;
  };
  facts.forEach((f, i) => {
    if (f.fact === 'piece.placed' && kindOf(job, f.piece) === piece) {
      from = i;
      live = false;
    }
    if (f.fact === 'valve.turned' && f.differenceGaugePa > UNDER_GAUGE_PA) live = true;
    if (f.fact === 'piece.removed' && kindOf(job, f.piece) === piece) close(i, f.atS);
  });
  close(facts.length, run.clockS);
  return found;
}

/** Fluid on a joint with nothing behind it shows nothing. */
function fluidOn({ facts, limits }: Case, spell: Spell): boolean {
  return facts
    .slice(spell.from, spell.to)
    .some(
      (f) =>
        f.fact === 'leak.looked' &&
        f.at === 'topJoint' &&
        f.watchS >= limits.fluidWatchS &&
        f.pressureGaugePa > UNDER_GAUGE_PA,
    );
}

/** It was under pressure, or no thread closes what is below the ball as it comes off. */
function overOpenBore({ facts, stood }: Case, { live, piece, to }: Spell): boolean {
  if (live && piece === 'rodBarrel') return true;
  const before = facts.slice(0, to);
  const { plugOut, teeOut } = stood[to];
  if (teeOut) return !before.some((f) => f.fact === 'closing.turned' && f.engagedTurns > 0);
  const keeperIn = (latest(before, 'keeper.turned')?.engagedTurns ?? 0) > 0;
  const newPlugIn = (latest(before, 'newPlug.turned')?.engagedTurns ?? 0) > 0;
  return plugOut && !keeperIn && !newPlugIn;
}

/** Valve shut, bled quiet, shut a while, and reopened without a puff: only then is it known that the ball holds. */
function crackChecked({ openings, limits }: Case, spell: Spell): boolean {
  const over = openings.filter(
    (o) => o.openedS >= spell.onS && o.openedS <= spell.offS && o.valve === 'shut',
  );
  return shutInQuiet(over, limits.crackShutS);
}
