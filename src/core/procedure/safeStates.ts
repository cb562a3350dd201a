import type { StageId } from './types.ts';

/**
 * What "stop" means at each stage: the nearest state in which the main, the crew and the street can be left. Words
 * for each id belong to the catalogue of words. Past the tee's last thread there is no way back, only forward.
 */
export interface SafeState {
  readonly id: SafeStateId;
  /** May be left with nobody by it. */
  readonly unattended: boolean;
  /** The only safe way is on to the end of the next closing. */
  readonly forwardOnly: boolean;
}

export const safeStateIds = [
  'nothingOpened',
  'plugSnuggedRigOff',
  'plugBackBleedTested',
  'stopperOutPlugIn',
  'keeperInAttended',
  'stubCappedKeeperIn',
  'teeSnuggedRigCapped',
  'closingPlugIn',
  'newTeeInKeeperIn',
  'newPlugIn',
  'handBack',
] as const;
export type SafeStateId = (typeof safeStateIds)[number];

/** The nearest safe state of each stage. At 20 % of the lower explosive limit, out and upwind comes before all. */
export const safeStates: Readonly<Record<StageId, SafeState>> = {
  s1: { id: 'nothingOpened', unattended: true, forwardOnly: false },
  s2: { id: 'plugSnuggedRigOff', unattended: true, forwardOnly: false },
  s3: { id: 'plugSnuggedRigOff', unattended: true, forwardOnly: false },
  s4: { id: 'plugBackBleedTested', unattended: false, forwardOnly: false },
  s5: { id: 'plugBackBleedTested', unattended: false, forwardOnly: false },
  s6: { id: 'stopperOutPlugIn', unattended: false, forwardOnly: false },
  s7: { id: 'keeperInAttended', unattended: false, forwardOnly: false },
  s8: { id: 'stubCappedKeeperIn', unattended: false, forwardOnly: false },
  s9: { id: 'teeSnuggedRigCapped', unattended: false, forwardOnly: false },
  s10: { id: 'closingPlugIn', unattended: false, forwardOnly: true },
  s11: { id: 'closingPlugIn', unattended: false, forwardOnly: true },
  r1: { id: 'stubCappedKeeperIn', unattended: false, forwardOnly: false },
  r2: { id: 'newTeeInKeeperIn', unattended: false, forwardOnly: true },
  r3: { id: 'newTeeInKeeperIn', unattended: false, forwardOnly: false },
  r4: { id: 'newTeeInKeeperIn', unattended: false, forwardOnly: false },
  r5: { id: 'newPlugIn', unattended: false, forwardOnly: true },
  r6: { id: 'newPlugIn', unattended: false, forwardOnly: false },
  s12: { id: 'handBack', unattended: true, forwardOnly: true },
  done: { id: 'handBack', unattended: true, forwardOnly: false },
};
