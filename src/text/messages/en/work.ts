import type { Catalogue } from '../../catalogue.ts';
import * as renewal from './renewal.ts';

export const stages: Catalogue['stages'] = {
  ...renewal.stages,
  s1: {
    title: 'Set up',
    aim: 'Know the job, the service and the pressure; make the hole a place to work in.',
  },
  s2: {
    title: 'Seal on the tee',
    aim: 'Bare metal, the ring of the tee’s size, the saddle square and drawn down evenly, the valve on top.',
  },
  s3: {
    title: 'Prove the first chamber',
    aim: 'Show that nothing leaks before anything is opened, the valve’s own seat included.',
  },
  s4: {
    title: 'Draw the top plug',
    aim: 'Bring the plug up through the open valve, shut it in, bleed, and only then take the barrel off.',
  },
  s5: { title: 'Look down the bore', aim: 'See that the lower bore is clear for the stopper.' },
  s6: {
    title: 'Stop the bore',
    aim: 'Set the stopper below the port, firm it, and show by the bleed that the service is dead.',
  },
  s7: {
    title: 'Lock the stop',
    aim: 'Set the keeper over the stopper so that nothing can push it out, and take the rig off.',
  },
  s8: {
    title: 'Part the service',
    aim: 'Cut the dead service away, trim the tee until it fits, purge and cap what is left.',
  },
  s9: {
    title: 'Seal on the coupling',
    aim: 'Gasket and collar round the coupling, the saddle over them, and the second chamber proved.',
  },
  s10: { title: 'Draw the tee', aim: 'Unscrew the tee by its keeper and bring it up through the rig.' },
  s11: {
    title: 'Close the coupling',
    aim: 'Set the closing plug, firm and not forced, and show that it holds.',
  },
  s12: {
    title: 'Prove and hand back',
    aim: 'Leak-test what stays in the ground, make good, and write down what was really read.',
  },
  done: { title: 'Done', aim: 'Nothing more is due.' },
};

export const holdPoints: Catalogue['holdPoints'] = {
  ...renewal.holdPoints,
  H1: {
    title: 'Ready to start',
    guards: 'the first wrench on plug or tee',
    evidence: [
      'Main read on a zero-checked gauge: within the rating and near the order; the second gauge agrees',
      'Customer shut and tagged, and no feed from elsewhere',
      'Boss, coupling, wall and wrap looked at',
      'Detector bump-tested; air below 10 % LEL and with enough oxygen',
      'Extinguisher, way out and trench protection by depth; bleed hose to end out of the hole',
      'Shut-off of the main found; gas control called',
      'Every piece of kit to be used looked over',
    ],
  },
  H2: {
    title: 'First chamber proved',
    guards: 'turning the top plug past 1/8 turn of its mark',
    evidence: [
      'A low stage first, then main pressure and not more than 5 psi over it, valve open, vent and pump shut',
      'Settled, then held five minutes with no topping up and no drop to speak of',
      'Leak fluid on seat, valve joint and head: no bubbles',
      'Seat of the valve tested: the reading comes back to what the volumes say',
      'Vented, shut and watched two minutes: no rise',
    ],
  },
  H3: {
    title: 'Bore seen',
    guards: 'lowering the stopper past the ball',
    evidence: [
      'Looked through the sight cap with the lamp after the plug was drawn, valve fully open: bore clear',
    ],
  },
  H4: {
    title: 'Service stopped',
    guards: 'unlatching the stopper, and the keeper',
    evidence: [
      'The bleed hissed first, then died',
      'Open and quiet a minute; stopper snugged again as the rubber relaxed',
      'Shut two minutes with the rod held, opened again: no puff',
    ],
  },
  H5: {
    title: 'Stopper placed',
    guards: 'the keeper',
    evidence: [
      'Bled, then seen through the sight cap: square, below the port, dry',
      'At least a minute quiet with the bleed open before the keeper goes in',
    ],
  },
  H6: {
    title: 'Stop locked',
    guards: 'any cut',
    evidence: [
      'Keeper of the tee’s size, pulled to the operator’s torque with hold-back, and marked',
      'Valve open, bled, shut, no puff before the rig came off',
      'Leak fluid on the keeper: no bubbles',
    ],
  },
  H7: {
    title: 'Dead at the cut',
    guards: 'cutting past the pilot hole',
    evidence: [
      'Right service traced at both ends; bond cable on bare metal both sides of the cut',
      'Evidence of the stop not older than half an hour',
      'A minute at the pilot hole with no flow; air below 10 % LEL',
    ],
  },
  H8: {
    title: 'Tee fits, rig at hand',
    guards: 'breaking the tee’s bite',
    evidence: [
      'Gauge ring passes the trimmed tee',
      'End of the service capped',
      'Gasket and collar on even metal, bolts even; saddle, chains and plug at hand',
    ],
  },
  H9: {
    title: 'Second chamber proved',
    guards: 'turning the tee past 1/8 turn of its mark',
    evidence: [
      'Before pumping: shut two minutes, no rise',
      'Low stage, main pressure, settled, held five minutes, leak fluid, seat test and vent as for the first chamber',
      'Never more than 5 psi above the main; keeper’s mark unmoved',
    ],
  },
  H10: {
    title: 'Ready to open the coupling',
    guards: 'turning the tee past 3 turns back',
    evidence: [
      'Closing plug of the size with sealant, spare plug and valve cap at hand',
      'Two people at the hole; main read again and within the rating; air below 10 % LEL',
    ],
  },
  H11: {
    title: 'Coupling closed',
    guards: 'slackening the chains or opening the rig',
    evidence: [
      'Threads of the coupling seen before',
      'Plug hand-tight, then the right turns past it, firm and not forced',
      'Valve open, bleed quiet a minute, shut two minutes, opened: no puff',
      'Seen through the sight cap: square and full in',
    ],
  },
  H12: {
    title: 'Handed back',
    guards: 'covering up and closing the record',
    evidence: [
      'Leak fluid a minute each on plug, coupling, weld and cut end at main pressure: no bubbles',
      'Detector at zero in the hole and beside it',
      'Service disconnected, purged and sealed',
      'Coating made good, bond off, record written with what was really read',
    ],
  },
};

export const safeStates: Catalogue['safeStates'] = {
  nothingOpened: 'Nothing is opened yet: leave it as it is.',
  plugSnuggedRigOff: 'Top plug snugged and quiet under leak fluid, rig off.',
  plugBackBleedTested:
    'Top plug, or a new one, back in and bleed-tested; until then the valve capped and attended.',
  stopperOutPlugIn: 'Stopper held on its holder, or drawn and the top plug back in.',
  keeperInAttended: 'Keeper in; attended, and not left overnight.',
  stubCappedKeeperIn: 'Keeper in, the branch stub capped. The service does not go back into use.',
  teeSnuggedRigCapped: 'Tee snugged, the rig left on it and capped as containment.',
  closingPlugIn:
    'Forward only: closing plug in. Until then the rig capped and attended, the main shut if need be.',
  newTeeInKeeperIn:
    'New tee in with its stopper and keeper, its branch capped or joined to a dead line; attended.',
  newPlugIn: 'New top plug in and shown quiet; until then the rig capped and attended.',
  handBack: 'Everything tested and made good: hand back.',
};

export const outcomes: Catalogue['outcomes'] = {
  held: { word: 'held', means: 'Signed with the evidence, before the work it guards.' },
  missed: { word: 'missed', means: 'The work it guards began without a signature.' },
  false: { word: 'false', means: 'Signed without the evidence.' },
  misled: {
    word: 'misled',
    means: 'Signed on good evidence; the truth was otherwise and no required check could show it. No blame.',
  },
  notReached: { word: 'not reached', means: 'The run did not come to it.' },
};

export const headings: Catalogue['headings'] = {
  holdPoints: 'Hold points',
  gasControl: 'Gas control',
  technique: 'Technique',
  kit: 'Choice of kit',
  abnormal: 'Abnormal conditions',
};

export const verdicts: Catalogue['verdicts'] = {
  pass: 'Pass',
  fail: 'Not passed',
  critical: 'Failed: critical finding',
};

export const endings: Catalogue['endings'] = {
  complete: {
    title: 'Complete and proved',
    says: 'The service is cut away, the tee is out, and the coupling is closed.',
  },
  referred: {
    title: 'Stopped, made safe and referred back',
    says: 'Work was stopped at a safe state and the reason given.',
  },
  isolated: {
    title: 'Made safe by isolation',
    says: 'The hole was cleared and the main shut at its valves.',
  },
  hurt: { title: 'Ended by harm', says: 'In the field somebody would have been hurt here.' },
  none: { title: 'Not finished', says: 'The run stops before the job was handed back or referred.' },
};
