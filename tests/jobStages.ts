import { cradleMains } from '../src/core/rig/index.ts';
import type { Crew } from './crew.ts';

/** Where the job can stand, in its order. Each is the state at the end of a piece of sound work. */
export const stageNames = [
  'sealedOnTee',
  'plugDrawn',
  'stopperIn',
  'stopProved',
  'stopperLeft',
  'keeperIn',
  'rigOff',
  'serviceParted',
  'sealedOnCoupling',
  'teeDrawn',
  'couplingClosed',
  'bare',
] as const;
export type StageName = (typeof stageNames)[number];

/** Turns past snug of every leg: the target, and what is drawn up again after the taps. */
const PULL_TURNS = 1 / 12;
/** Washer below the port, m, and torque that is firm for NPS 1, N·m. */
const BELOW_PORT_M = 0.004;
export const FIRM_NM = 2.3;

const stages: Readonly<Record<StageName, (crew: Crew) => void>> = {
  sealedOnTee: (crew) => {
    crew.does(
      { kind: 'hose.lead', outlet: 'away' },
      { kind: 'clean', at: 'boss' },
      { kind: 'clean', at: 'pipe' },
      { kind: 'clean', at: 'coupling' },
    );
    crew
      .marks('plug')
      .does(
        { kind: 'plug.turn', turns: -PULL_TURNS, holdBack: true },
        { kind: 'plug.turn', turns: PULL_TURNS, holdBack: true },
      );
    crew.puts('seatRing').puts('saddle');
    chainsOn(crew);
    crew.puts('isolationValve').turnsValve(1).shutsValve();
  },
  plugDrawn: (crew) => {
    crew.barrelOn('socket', null).opensValve().rodDown().turnsRod(-8).rodUp();
    barrelOff(crew);
    crew.does({ kind: 'rod.load', piece: null });
  },
  stopperIn: (crew) => {
    crew.marks('portLine').barrelOn('stopperHolder', 'boreStopper').clampsCollar(BELOW_PORT_M);
    crew.opensValve().rodDown().squeezesTo(FIRM_NM);
  },
  stopProved: (crew) => {
    crew.opensBleed().waitsUntil((readings) => !readings.bleedHeard, 120);
    crew
      .waits(60)
      .squeezesTo(FIRM_NM + 0.1)
      .shutsBleed()
      .waits(120);
    crew.opensBleed().shutsBleed();
  },
  stopperLeft: (crew) => {
    crew.does({ kind: 'collar.set', travelM: null });
    crew.turnsRod(1 / 4).rodUp();
    barrelOff(crew);
  },
  keeperIn: (crew) => {
    crew.barrelOn('socket', 'keeperPlug').opensValve().rodDown();
    crew.turnsRod(4.6).turnsRod(1.2).rodUp();
    crew.opensBleed().waitsUntil((readings) => !readings.bleedHeard, 60);
  },
  rigOff: (crew) => {
    crew.takesOff('rodBarrel');
    if (crew.run.rig.stack.some((piece) => piece.kind === 'upperSpool')) crew.takesOff('upperSpool');
    crew.takesOff('isolationValve');
    chainsOff(crew);
    crew.takesOff('saddle').takesOff('seatRing');
    crew.does({ kind: 'keeper.pull', torqueNm: 142, holdBack: true }).marks('keeper');
  },
  serviceParted: (crew) => {
    crew.does(
      { kind: 'site.do', task: 'supportPipe' },
      { kind: 'bond.clamp', end: 'tee', clamped: true },
      { kind: 'bond.clamp', end: 'service', clamped: true },
      { kind: 'branch.cut', part: 'pilot' },
    );
    crew
      .waits(60)
      .does(
        { kind: 'branch.cut', part: 'through' },
        { kind: 'tee.trim', how: 'saw' },
        { kind: 'tee.trim', how: 'dress' },
        { kind: 'tee.trim', how: 'file' },
        { kind: 'service.purge' },
      );
    crew.puts('serviceCap');
  },
  sealedOnCoupling: (crew) => {
    crew
      .marks('tee')
      .does(
        { kind: 'tee.turn', turns: -PULL_TURNS, holdBack: true },
        { kind: 'tee.turn', turns: PULL_TURNS, holdBack: true },
      );
    crew.puts('cupGasket').puts('splitCollar');
    for (let pulls = 0; pulls < 4; pulls += 1) {
      crew.does(
        { kind: 'collarBolt.turn', bolt: 0, turns: 1 / 4 },
        { kind: 'collarBolt.turn', bolt: 1, turns: 1 / 4 },
      );
    }
    crew.puts('saddle');
    chainsOn(crew);
    crew.puts('lowerSpool').puts('isolationValve').puts('upperSpool');
  },
  teeDrawn: (crew) => {
    crew.does({ kind: 'sealant.apply', piece: crew.piece('closingPlug') });
    crew.barrelOn('socket', null).opensValve().rodDown().turnsRod(-8).rodUp();
    barrelOff(crew);
    crew.does({ kind: 'rod.load', piece: null });
    crew.takesOff('upperSpool').puts('valveCap');
  },
  couplingClosed: (crew) => {
    crew.takesOff('valveCap').barrelOn('socket', 'closingPlug').opensValve().rodDown();
    crew
      .turnsRod(-1 / 4)
      .turnsRod(4.6)
      .turnsRod(1.7)
      .rodUp();
    crew.bleedsDown();
  },
  bare: (crew) => {
    crew.shutsValve().bleedsDown().takesOff('rodBarrel');
    if (crew.run.rig.stack.some((piece) => piece.kind === 'upperSpool')) crew.takesOff('upperSpool');
    crew.takesOff('isolationValve').takesOff('lowerSpool');
    chainsOff(crew);
    crew.takesOff('saddle').takesOff('splitCollar').takesOff('cupGasket');
  },
};

/** Both chains hooked and drawn up evenly a little at a time, links tapped flat, drawn up again. */
export function chainsOn(crew: Crew): void {
  if (crew.run.rig.chains[0].piece === null) {
    if (cradleMains.includes(crew.scenario.job.workpiece.mainNps))
      crew.puts('cradleBlock').puts('cradleBlock', 1);
    crew.puts('chain').puts('chain', 1);
  }
  crew.does({ kind: 'chain.hook', chain: 0, hooked: true }, { kind: 'chain.hook', chain: 1, hooked: true });
  for (let pulls = 0; pulls < 4; pulls += 1) crew.drawsUp(PULL_TURNS);
  for (let taps = 0; taps < 2; taps += 1) {
    crew.does({ kind: 'chain.tap', chain: 0 }, { kind: 'chain.tap', chain: 1 }).drawsUp(PULL_TURNS / 2);
  }
}

/** Legs slackened in turn, chains unhooked. */
export function chainsOff(crew: Crew): void {
  for (const turns of [-PULL_TURNS, -3]) crew.drawsUp(turns);
  crew.does({ kind: 'chain.hook', chain: 0, hooked: false }, { kind: 'chain.hook', chain: 1, hooked: false });
}

/** Valve shut, bled quiet, barrel off. */
function barrelOff(crew: Crew): void {
  crew.shutsValve().bleedsDown().takesOff('rodBarrel');
}

/**
 * Plays the sound sequence to the end of a stage. The chamber proofs are left out: they tell the crew something and
 * change nothing the gas knows of; a test that is about a proof plays it itself.
 */
export function jobStages(crew: Crew, stage: StageName): void {
  const last = stageNames.indexOf(stage);
  for (; crew.stagesDone <= last; crew.stagesDone += 1) stages[stageNames[crew.stagesDone]](crew);
}
