import type { ChainState, RigState, StackPiece } from '../../core/rig/index.ts';
import type { Readings, RunState } from '../../core/run/index.ts';
import type { Speech } from '../catalogue.ts';
import { say } from '../say.ts';
import { capital } from '../sentence.ts';
import { degrees, percent, turnsOf } from '../units.ts';
import { words } from '../words.ts';

/** Turns past snug at which a tensioner feels snug, firm, and hard up on the ring's metal stop. */
const SNUG_TURNS = 0.02;
const FIRM_TURNS = 0.2;
const HARD_TURNS = 0.6;

/** Ring, saddle, chains and all that stands on them. */
export function rigLines(run: RunState, readings: Readings, speech: Speech): string[] {
  const { rig } = run;
  const { saddle } = rig;
  const lines = [...seatLines(rig, speech), saddleLine(rig, speech)];
  if (saddle.cradles.length > 0) lines.push(say('twin.cradles', { count: saddle.cradles.length }));
  if (saddle.on !== 'board') rig.chains.forEach((chain, i) => lines.push(chainLine(chain, i)));
  for (const piece of rig.stack) lines.push(stackLine(piece, rig, speech));
  if (saddle.on !== 'board' && rig.stack.length === 0) lines.push(say('twin.nothingAbove'));
  const top = rig.stack.at(-1);
  if (top?.kind === 'isolationValve') lines.push(say('twin.nothingOnValve'));
  if (top?.kind === 'testHead') {
    const { ventOpen } = rig.testHead;
    lines.push(
      say('twin.vent', {
        at: ventOpen <= 0 ? say('twin.shut') : say('twin.open', { amount: percent(ventOpen) }),
      }),
    );
    if (readings.headGaugePa !== null)
      lines.push(say('twin.headGauge', { reading: speech.units.pressure(readings.headGaugePa) }));
  }
  if (top?.kind === 'rodBarrel' || top?.kind === 'sightCap') {
    const { openRad } = rig.bleed;
    const amount = openRad > 1.48 ? say('twin.fullyOpen') : say('twin.open', { amount: degrees(openRad) });
    lines.push(say('twin.bleed', { at: openRad <= 0 ? say('twin.shut') : amount }));
  }
  return lines;
}

function seatLines({ seatRing, collar, saddle }: RigState, speech: Speech): string[] {
  const lines: string[] = [];
  if (seatRing.piece !== null && saddle.on === 'board')
    lines.push(say('twin.ringWaits', { ring: capital(speech.piece(seatRing.piece)) }));
  if (collar.gasket !== null)
    lines.push(say('twin.gasketOn', { gasket: capital(speech.piece(collar.gasket)) }));
  if (collar.collar !== null) {
    const [first, second] = collar.bolts;
    const params = {
      collar: capital(speech.piece(collar.collar)),
      first: turnsOf(first),
      second: turnsOf(second),
    };
    lines.push(say('twin.collarOn', params));
  }
  return lines;
}

function saddleLine({ saddle, seatRing, collar }: RigState, speech: Speech): string {
  if (saddle.on === 'board') return say('twin.saddleBoard');
  const piece = saddle.on === 'tee' ? seatRing.piece : collar.gasket;
  const seat = piece === null ? say('twin.noSeat') : speech.thePiece(piece);
  return say(saddle.on === 'tee' ? 'twin.saddleTee' : 'twin.saddleCoupling', { seat });
}

function chainLine(chain: ChainState, i: number): string {
  const no = i + 1;
  if (chain.piece === null) return say('twin.chainOff', { no });
  if (!chain.hooked) return say('twin.chainLoose', { no });
  const taps = chain.taps > 0 ? say('twin.tapped') : '';
  return say('twin.chainHooked', { no, left: tension(chain.left), right: tension(chain.right), taps });
}

/** How a tensioner feels to the kit's own wrench, by its turns past snug. */
function tension(turns: number): string {
  if (turns <= SNUG_TURNS) return say('twin.slack');
  if (turns < FIRM_TURNS) return say('twin.snug');
  return say(turns < HARD_TURNS ? 'twin.firm' : 'twin.veryFirm');
}

function stackLine(piece: StackPiece, rig: RigState, speech: Speech): string {
  const name = capital(speech.piece(piece.id));
  if (piece.kind === 'isolationValve')
    return say('twin.valve', { piece: name, at: words().felt.valveAt(rig.valve.openRad) });
  return say('twin.stackPiece', { piece: name, feel: words().felt.grip(piece.jointNm, speech) });
}
