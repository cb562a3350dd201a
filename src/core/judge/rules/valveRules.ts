import { OPEN_RAD, SHUT_RAD } from '../../rig/index.ts';
import { kindOf, topOf } from '../../procedure/index.ts';
import type { Case, Draft, Rule } from '../case.ts';

/** A ball thrown this far in one go is not eased, rad (45°). */
const EASED_RAD = 0.79;
/** Pressure difference from which a ball is eased, Pa gauge (5 psi). */
const EASE_FROM_PA = 34474;

/** The isolation valve: worked before it is trusted, and eased open with the rod in somebody's hands. */
export const valveRules: Rule = (judged) => [...notWorked(judged), ...opened(judged)];

/** The valve will be the only wall; whether its handle works is found out before it is. */
function notWorked({ facts, job }: Case): readonly Draft[] {
  const on = facts.findIndex((f) => f.fact === 'piece.placed' && kindOf(job, f.piece) === 'isolationValve');
  const head = facts.findIndex((f) => f.fact === 'piece.placed' && kindOf(job, f.piece) === 'testHead');
  if (on < 0 || head < on) return [];
  let open = false;
  let shutAgain = false;
  for (const f of facts.slice(on, head)) {
    if (f.fact !== 'valve.turned') continue;
    if (f.openRad >= OPEN_RAD) open = true;
    if (open && f.openRad <= SHUT_RAD) shutAgain = true;
  }
  return shutAgain
    ? []
    : [{ id: 'valveNotWorked', atS: facts[head].atS, points: 1, causes: ['valveWorked'] }];
}

/** Every opening of the ball from shut against a pressure difference. */
function opened({ facts, stood, limits }: Case): readonly Draft[] {
  const unheld: Draft['numbers'][] = [];
  const quick: number[] = [];
  const found: Draft[] = [];
  let unheldS = 0;
  let quickS = 0;
  facts.forEach((f, i) => {
    if (f.fact !== 'valve.turned') return;
    const beforeRad = i > 0 ? stood[i - 1].valveOpenRad : 0;
    if (beforeRad > SHUT_RAD || f.openRad <= beforeRad || f.differenceGaugePa <= limits.puffPa) return;
    const standing = stood[i];
    const barrel = topOf(standing) === 'rodBarrel';
    if (barrel && !standing.held) {
      if (unheld.length === 0) unheldS = f.atS;
      unheld.push({ differenceGaugePa: f.differenceGaugePa });
    }
    if (barrel && f.openRad - beforeRad > EASED_RAD && f.differenceGaugePa > EASE_FROM_PA) {
      if (quick.length === 0) quickS = f.atS;
      quick.push(f.openRad - beforeRad);
    }
    if (standing.bleedOpenRad > 0) {
      const numbers = { differenceGaugePa: f.differenceGaugePa, bleedOpenRad: standing.bleedOpenRad };
      found.push({
        id: 'valveOpenedBleedOpen',
        atS: f.atS,
        points: 2,
        numbers,
        causes: [`bleedOpen@${f.atS}`],
      });
    }
  });
  if (unheld.length > 0) {
    const numbers = { times: unheld.length, ...unheld[0] };
    found.push({ id: 'rodNotHeld', atS: unheldS, points: Math.min(5, 1 + 2 * unheld.length), numbers, causes: ['rodHeld', 'H4.rodHeld'] }); // prettier-ignore
  }
  if (quick.length > 0) {
    const numbers = { times: quick.length, turnedRad: Math.max(...quick) };
    found.push({ id: 'valveOpenedQuickly', atS: quickS, points: Math.min(1.5, 0.5 * quick.length), numbers, causes: ['eased'] }); // prettier-ignore
  }
  return found;
}
