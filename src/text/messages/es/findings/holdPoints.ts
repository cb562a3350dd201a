import type { Finding, FindingId } from '../../../../core/judge/index.ts';
import type { FindingWords } from '../../../catalogue.ts';
import { evidenceItems } from '../evidence.ts';
import { holdPoints as words } from '../work.ts';
import { itemsOf } from './shared.ts';

type HoldFinding = Extract<FindingId, `hold${string}`>;

const WHY =
  'Un punto de control detiene el trabajo hasta saber que el paso siguiente es seguro. Pasado él, nada más atrapa el error.';

const named = (f: Finding): string =>
  f.holdPoint === null ? 'Un punto de control' : `${f.holdPoint}, ${words[f.holdPoint].title.toLowerCase()},`;
const wanting = (f: Finding): string => {
  const items = f.holdPoint === null ? {} : evidenceItems[f.holdPoint];
  return f.items.length === 0 ? '' : ` Faltaba: ${itemsOf(f, items)}.`;
};
const guarded = (f: Finding): string =>
  f.holdPoint === null ? 'el trabajo que protege' : words[f.holdPoint].guards;

export const holdPointFindings: Readonly<Record<HoldFinding, FindingWords>> = {
  holdMissed: {
    title: 'Punto de control saltado',
    happened: (f) => `${named(f)} no estaba firmado cuando empezó esto: ${guarded(f)}.${wanting(f)}`,
    why: WHY,
    next: 'Detente en el punto de control, reúne su evidencia, firma, y solo entonces sigue.',
  },
  holdFalse: {
    title: 'Firmado sin la evidencia',
    happened: (f) => `${named(f)} se firmó.${wanting(f)}`,
    why: 'Una firma dice que se leyó, se vio y se hizo. Quien sigue trabajando se fía de ella.',
    next: 'Firma lo que has visto. Si falta algo, consíguelo o retira la firma antes de que siga el trabajo.',
  },
  holdVoided: {
    title: 'La evidencia había caducado',
    happened: (f) =>
      `${named(f)} se firmó con buena evidencia, pero el trabajo posterior o el tiempo la habían anulado cuando empezó esto: ${guarded(f)}.${wanting(f)}`,
    why: 'Una unión tocada después de la prueba es una unión sin probar; una lectura vieja habla de una presión vieja.',
    next: 'Prueba otra vez después de tocar algo que aguanta la presión, y tras una espera demasiado larga.',
  },
  holdNotReached: {
    title: 'Punto de control no alcanzado',
    happened: (f) => `La práctica terminó antes de llegar a ${named(f).replace(/,$/, '')}.`,
    why: 'Lo que no llegó a hacerse no llegó a demostrarse.',
    next: 'Sigue hasta el final, o para por un motivo que se pueda ver.',
  },
};
