import type { FindingWords } from '../../../catalogue.ts';
import { percent } from '../../../units.ts';
import { numberOf } from './shared.ts';

/** What a renewal can go wrong by. */
export const renewalFindings = {
  testAirOnStopper: {
    title: 'Aire de prueba contra el obturador',
    happened: (f, { units }) =>
      `La línea estaba unida cuando se bombeó hasta ${units.pressure(numberOf(f, 'gaugePa'))}: ${units.force(numberOf(f, 'thrustN'))} empujaron el obturador hacia abajo, y su agarre era de ${units.force(numberOf(f, 'holdsN'))}.`,
    why: 'El tapón de retención sujeta el obturador contra la principal, no contra el aire de arriba: expulsado se pierde en la principal, y el aire va detrás.',
    next: 'Probar la acometida sola, tapada en el extremo de la principal; unirla después.',
  },
  drawnUnequalised: {
    title: 'Obturador sacado contra la presión de la principal',
    happened: (f, { units }) =>
      `Lo empujaron hacia arriba ${units.force(numberOf(f, 'thrustN'))} al salir de su paso.`,
    why: 'La principal lanza obturador y varilla hacia quien la sujeta.',
    next: 'Aflojar un poco, esperar a que las presiones se igualen y luego sacarlo.',
  },
  airLeftInLine: {
    title: 'Reencendido con aire en la línea',
    happened: (f) =>
      `La última lectura en el tubo de purga fue ${percent(numberOf(f, 'gasShare'))} de gas; se pide ${percent(numberOf(f, 'limitShare'))}.`,
    why: 'Gas y aire en un mismo tubo arden dentro de él.',
    next: 'Un flujo continuo hasta el tubo de purga al aire libre hasta que el instrumento haya leído gas pleno durante un minuto.',
  },
} satisfies Readonly<Record<string, FindingWords>>;
