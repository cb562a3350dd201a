import { faults, type FaultId, type FaultPlanted, type Trigger } from '../../../core/faults/index.ts';
import type { Scenario } from '../../../core/scenario/index.ts';

type Planted = FaultPlanted;

/** The exercise with a fault more in it, on the piece named or on the first one of the job's size that can have it. */
export function plantOn(
  document: Scenario,
  fault: FaultId,
  on: string | null = null,
  when: Trigger = { trigger: 'start' },
): Scenario {
  const { targets, triggers } = faults[fault];
  const trigger = triggers.includes(when.trigger) ? when : usualTrigger(fault);
  const place = targets.length === 0 ? null : (on ?? firstFitting(document, fault));
  const planted: Planted = place === null ? { fault, when: trigger } : { fault, on: place, when: trigger };
  return { ...document, faults: [...document.faults, planted] };
}

/** The piece a crew would take: of the tee's size where it has one. */
function firstFitting({ job }: Scenario, fault: FaultId): string | null {
  const fitting = job.kit.filter(({ kind }) => faults[fault].targets.includes(kind));
  const sized = fitting.find(({ stamped }) => stamped === job.workpiece.teeSize);
  return (sized ?? fitting[0])?.id ?? null;
}

/** A fault's own first way to be set off. */
function usualTrigger(fault: FaultId): Trigger {
  return triggerOf(faults[fault].triggers[0] ?? 'start');
}

/** A trigger of a kind with figures to begin from. */
export function triggerOf(kind: Trigger['trigger']): Trigger {
  switch (kind) {
    case 'start':
      return { trigger: kind };
    case 'time':
      return { trigger: kind, atS: 720 };
    case 'action':
      return { trigger: kind, action: 'plug.turn', nth: 1 };
    case 'condition':
      return { trigger: kind, condition: 'boreStopped' };
  }
}
