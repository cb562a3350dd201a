import { did, type Acts } from './outcome.ts';

/** How a run ends by a hand's decision. */
export const endingActs: Acts<'refer' | 'main.isolate' | 'finish'> = {
  refer: (rig, { reason }) => {
    const ending = { kind: 'referred', reason } as const;
    return did({ ...rig, ending }, { fact: 'referred', reason }, { fact: 'ended', ending });
  },
  'main.isolate': (rig) => {
    if (rig.site.done.findShutoff === undefined) return 'outOfReach';
    const ending = { kind: 'isolated' } as const;
    return did({ ...rig, site: { ...rig.site, mainIsolated: true }, ending }, { fact: 'ended', ending });
  },
  finish: (rig) => {
    const ending = { kind: 'complete' } as const;
    return did({ ...rig, ending }, { fact: 'ended', ending });
  },
};
