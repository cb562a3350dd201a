import type { Assessment } from '../../core/judge/index.ts';
import type { RunRecord } from '../../core/run/index.ts';
import { decimals } from '../figures.ts';
import { filled } from '../sentence.ts';
import { words } from '../words.ts';
import { reviewWords } from './words/index.ts';

/** What a file says of itself, where judging it again says something else; null where both agree or it says nothing. */
export function saySaidOtherwise(
  { said }: Pick<RunRecord, 'said'>,
  judged: Pick<Assessment, 'verdict' | 'ending' | 'score'>,
): string | null {
  if (said === undefined) return null;
  const { verdict, ending, score } = said;
  if (verdict === judged.verdict && ending === judged.ending && score === judged.score) return null;
  const told = {
    verdict: words().verdicts[verdict],
    score: decimals(score, 1),
    ending: words().endings[ending].title,
  };
  return filled(reviewWords().saidOtherwise, told);
}
