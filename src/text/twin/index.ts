import type { Readings, RunState } from '../../core/run/index.ts';
import { say } from '../say.ts';
import { speechOf } from '../voice.ts';
import type { UnitSystem } from '../units.ts';
import { earLines } from './ear.ts';
import { insideLines } from './inside.ts';
import { rigLines } from './rig.ts';
import { rodLines } from './rod.ts';
import { siteLines } from './site.ts';
import { workpieceLines } from './workpiece.ts';

/** One part of the twin: a heading and plain sentences. */
export interface TwinPart {
  readonly heading: string;
  readonly lines: readonly string[];
}

/** `assessment` tells only what a crew could see, feel, hear and read; `practice` adds what is inside. */
export type TwinMode = 'practice' | 'assessment';

/** The whole of a run at this moment in plain words: a picture for who does not look at one. */
export function twin(
  run: RunState,
  readings: Readings,
  mode: TwinMode,
  system: UnitSystem = 'us',
): readonly TwinPart[] {
  const speech = speechOf(run.scenario.job, system);
  const parts: TwinPart[] = [
    { heading: say('twin.siteHeading'), lines: siteLines(run, readings, speech) },
    { heading: say('twin.workpieceHeading'), lines: workpieceLines(run, speech) },
    { heading: say('twin.rigHeading'), lines: rigLines(run, readings, speech) },
    { heading: say('twin.rodHeading'), lines: rodLines(run, readings, speech) },
    { heading: say('twin.earHeading'), lines: earLines(readings) },
  ];
  if (mode === 'practice')
    parts.push({ heading: say('twin.insideHeading'), lines: insideLines(run, speech) });
  return parts.filter((part) => part.lines.length > 0);
}
