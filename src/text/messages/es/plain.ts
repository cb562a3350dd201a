import type { plain as english } from '../en/plain.ts';
import { twin } from './twin.ts';

type Key = keyof typeof english;
type OwnKey = Exclude<Key, `twin.${string}`>;

const own: Readonly<Record<OwnKey, string>> = {
  'caution.trains': 'Stillmain entrena; no habilita a nadie.',
  'caution.first':
    'El procedimiento escrito de la empresa, las normas locales y la práctica con licencia van primero.',
  'caution.limits':
    'Los tiempos, pares y presiones de este ejercicio son ajustes suyos, no reglas para el campo.',
  'scenario.pass': '{title}: puntuación {score}, mínimo para aprobar {cut}.',
  'run.altered': 'Cambiado después de sellarlo: la acción {number} es la primera que no encaja.',
};

const told = Object.fromEntries(Object.entries(twin).map(([key, text]) => [`twin.${key}`, text]));

/** Sentences that stand by themselves on a screen or in a report. */
export const plain = { ...own, ...told } as Readonly<Record<Key, string>>;
