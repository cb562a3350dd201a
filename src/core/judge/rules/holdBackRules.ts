import type { Draft, Rule } from '../case.ts';

/**
 * Two wrenches: without one to hold back it is the loosest thread that turns, not the one that is meant, and that
 * may be the live one.
 */
export const holdBackRules: Rule = ({ facts }) => {
  const found: Draft[] = [];
  const bare = facts.filter(
    (f) =>
      f.fact === 'done' &&
      (f.action.kind === 'plug.turn' || f.action.kind === 'tee.turn' || f.action.kind === 'keeper.pull') &&
      !f.action.holdBack,
  );
  if (bare.length > 0) {
    const keeper = bare.some((f) => f.fact === 'done' && f.action.kind === 'keeper.pull');
    const points = Math.min(4, 1.5 + 0.5 * bare.length);
    const causes = keeper ? ['holdBack', 'H6.holdBack'] : ['holdBack'];
    found.push({ id: 'noHoldBack', atS: bare[0].atS, points, numbers: { times: bare.length }, causes });
  }
  for (const f of facts) {
    if (f.fact !== 'joint.turned') continue;
    found.push({
      id: 'wrongJointTurned',
      atS: f.atS,
      points: 2,
      items: [f.joint],
      causes: [`joint.${f.joint}`],
    });
  }
  return found;
};
