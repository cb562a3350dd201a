import { handS } from '../handTimes.ts';
import { did, type Acts } from './outcome.ts';

/** How a run ends by a hand's decision. */
export const endingActs: Acts<'refer' | 'main.isolate' | 'finish'> = {
  refer: (rig, { reason }) => {
    const ending = { kind: 'referred', reason } as const;
    return did({ ...rig, ending }, { fact: 'referred', reason }, { fact: 'ended', ending });
  },
  'main.isolate': (rig, action, sense) => {
    if (rig.site.done.findShutoff === undefined) return 'outOfReach';
    if (rig.site.isolatedAtS !== null) return 'alreadyDone';
    // gas goes on until the valves are reached and shut: the run ends it then
    return did({ ...rig, site: { ...rig.site, isolatedAtS: sense.atS + handS(action) } });
  },
  finish: (rig) => {
    const ending = { kind: 'complete' } as const;
    return did({ ...rig, ending }, { fact: 'ended', ending });
  },
};
