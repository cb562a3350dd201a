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
  'caution.tamper':
    'La cadena de resúmenes muestra si un archivo se cambió después de sellarlo. No prueba quién lo hizo.',
  'scenario.pass': '{title}: puntuación {score}, mínimo para aprobar {cut}.',
  'run.same': 'Juzgado otra vez, igual hasta el último bit.',
  'run.differs': 'Juzgado otra vez, termina de otra manera que lo que dice el archivo.',
  'run.altered': 'Cambiado después de sellarlo: la acción {number} es la primera que no encaja.',
  'run.otherEngine': 'Hecho con otro motor ({engine}): se muestran sus acciones, no se juzga de nuevo.',
  'hold.signed': 'Firmado',
  'hold.open': 'Abierto',
  'hold.guards': 'Protege {work}.',
  'hint.none': 'No hay nada pendiente. Mira alrededor antes de seguir.',
};

const told = Object.fromEntries(Object.entries(twin).map(([key, text]) => [`twin.${key}`, text]));

/** Sentences that stand by themselves on a screen or in a report. */
export const plain = { ...own, ...told } as Readonly<Record<Key, string>>;
