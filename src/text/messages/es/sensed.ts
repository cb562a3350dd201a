import type { Catalogue } from '../../catalogue.ts';
import { capital } from '../../sentence.ts';
import { BLOWS_FROM_PA, PUSHES_FROM_PA, SEEPS_FROM_PA, THROWS_FROM_N } from '../../units.ts';
import { alsoFound, cut, nameOf, sources } from './facts.ts';
import { chainNo } from './turning.ts';

/** The same facts as a crew has them, in Spanish. */
export const sensed: Catalogue['sensed'] = {
  listened: (f) => (f.heard ? 'Se oye gas.' : 'No se oye nada por encima de la calle.'),
  pumped: (f) => (f.strokes === 1 ? 'Dada una embolada.' : `Dadas ${f.strokes} emboladas.`),
  'testSet.pumped': (f) =>
    f.strokes === 1
      ? 'Dada una embolada con el equipo de prueba.'
      : `Dadas ${f.strokes} emboladas con el equipo de prueba.`,
  'piece.rejected': (f, s) => `${capital(s.thePiece(f.piece))} queda aparte.`,
  'piece.removed': (f, s) =>
    `${capital(s.thePiece(f.piece))} ${f.pressureGaugePa > PUSHES_FROM_PA ? 'salió con presión detrás' : 'está fuera del equipo'}.`,
  'chain.tapped': (f) =>
    f.settledM > 2e-5
      ? `Los eslabones de la ${chainNo(f.chain)} asentaron; ha quedado más floja.`
      : `Los eslabones de la ${chainNo(f.chain)} están planos y no asientan más.`,
  'chain.released': () => 'Se soltaron las cadenas.',
  'rod.thrown': () => 'La varilla salió lanzada.',
  'rod.still': () => 'La varilla se quedó donde estaba, sin mano que la sujete.',
  'plug.free': (f) =>
    f.chamberClosed
      ? 'La rosca del tapón superior se soltó, dentro del equipo cerrado.'
      : `El tapón superior se soltó al aire${f.thrustN > THROWS_FROM_N ? ', y salió lanzado' : ''}.`,
  'tee.free': (f) =>
    f.chamberClosed
      ? 'La rosca de la te se soltó, dentro del equipo cerrado.'
      : `La te se soltó al aire${f.thrustN > THROWS_FROM_N ? ', y salió lanzada' : ''}.`,
  'stopper.torn': () => 'Algo cedió bajo los dedos.',
  'stopper.drawn': (f) =>
    f.differenceGaugePa > PUSHES_FROM_PA
      ? 'El obturador salió de su paso, empujado desde abajo.'
      : 'El obturador salió de su paso sin que nada lo empujara.',
  'branch.cut': (f) => {
    const what = nameOf(cut, f.part) + alsoFound(f.found);
    if (f.pressureGaugePa > BLOWS_FROM_PA) return `${what} Sale gas con fuerza.`;
    return `${what} ${f.pressureGaugePa > SEEPS_FROM_PA ? 'Sale un poco de gas' : 'No sale nada'}.`;
  },
  'gaugeRing.tried': (f) =>
    f.passes ? 'El anillo calibrador pasa por el círculo que barre la te.' : 'El anillo calibrador no pasa.',
  'gas.alarm': (f) => alarms[f.step],
  'gas.ignited': () => 'El gas se prendió.',
  'relief.lifted': () => 'El alivio del cabezal de prueba abrió.',
  'relief.shut': () => 'El alivio del cabezal de prueba volvió a cerrar.',
  'blow.began': (f) => `Sale gas a la excavación por ${nameOf(sources, f.from)}.`,
  'blow.ended': (f) => `Terminó la salida de gas por ${nameOf(sources, f.from)}.`,
  'saddle.lifted': () => 'La silla se levantó de su asiento.',
};

const alarms = [
  'La alarma de gas calla.',
  'La alarma de gas suena en su nivel bajo.',
  'La alarma de gas suena en su nivel alto: fuera, contra el viento, primero las personas.',
] as const;
