import type { LookPlace, Sight } from '../../../core/rig/index.ts';
import { decimals } from '../../figures.ts';
import { capital } from '../../sentence.ts';
import type { Units } from '../../units.ts';
import { troubles } from './troubles.ts';
import { lookPlaces } from './places.ts';

const faces = {
  dirty: 'suciedad y óxido tapan el metal; límpialo y vuelve a mirar',
  sound: 'metal sano y liso',
  pitted: 'picado, pero bastante liso para sellar con cuidado',
  beyondUse: 'tan corroído que ningún anillo puede sellar: inservible',
} as const;

const wraps: Readonly<Record<string, string>> = {
  coalTar: 'envoltura vieja de alquitrán, de la clase conocida',
  tape: 'envoltura de cinta',
  bare: 'tubo desnudo',
  suspect: 'envoltura que puede contener asbesto: para y llama a un especialista',
};

/** What an eye found at a place, as one sentence or two. */
export function sights(at: LookPlace, saw: Sight, units: Units): string {
  if (!saw.visible) return `${capital(lookPlaces[at])}: desde aquí no se ve.`;
  const seen = [
    saw.face && faces[saw.face],
    saw.wrap !== undefined && (Object.hasOwn(wraps, saw.wrap) ? wraps[saw.wrap] : saw.wrap),
    saw.wallSound !== undefined && (saw.wallSound ? 'la pared está sana' : 'la pared está delgada y comida'),
    saw.plugIn === true && saw.closingSquare === undefined && 'hay un tapón en la rosca',
    saw.boreClear !== undefined &&
      (saw.boreClear ? 'el paso está limpio' : 'hay cascarilla y restos en el paso'),
    saw.stopperSeen !== undefined && saw.plugIn !== true && stopper(saw, units),
    saw.threadsSound !== undefined &&
      (saw.threadsSound ? 'la rosca está limpia y sana' : 'la rosca está dañada'),
    saw.closingSquare !== undefined && closing(saw),
    ...(saw.signs ?? []).map((sign) => troubles[sign]),
    saw.chainsBear !== undefined &&
      (saw.chainsBear ? 'los eslabones apoyan planos' : 'los eslabones no apoyan planos'),
  ].filter((part) => typeof part === 'string');
  const tail = seen.length === 0 ? 'nada fuera de lo normal' : seen.join('; ');
  return `${capital(lookPlaces[at])}: ${tail}.`;
}

function stopper(saw: Sight, units: Units): string {
  if (!saw.stopperSeen) return 'no se ve ningún obturador';
  const below = saw.stopperBelowPortM;
  const where =
    below === undefined
      ? ''
      : below < 0
        ? `, su arandela ${units.length(-below)} por encima del borde inferior de la derivación`
        : `, su arandela ${units.length(below)} por debajo de la derivación`;
  const square = saw.stopperSquare === false ? 'torcido' : 'derecho';
  const dry = saw.stopperDry === false ? 'mojado' : 'seco';
  return `el obturador está ${square} y ${dry}${where}`;
}

function closing(saw: Sight): string {
  const turns =
    saw.closingTurnsShown === undefined ? '' : `, con ${decimals(saw.closingTurnsShown, 1)} hilos a la vista`;
  return saw.closingSquare
    ? `el tapón de cierre está derecho y dentro${turns}`
    : `el tapón de cierre está torcido${turns}`;
}
