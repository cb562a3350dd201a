import type { DeskWords } from '../en/index.ts';

export const intake = {
  'desk.title': 'Mesa de revisión',
  'desk.what':
    'Aquí llegan las ejecuciones como archivos. Cada una se vuelve a realizar a partir de sus acciones y se juzga de nuevo; lo que un archivo dice de sí mismo solo se muestra al lado.',
} as const satisfies Partial<DeskWords>;
