import type { Words } from './index.ts';

export const spanish: Words = {
  integrity: {
    same: { word: 'igual', means: 'Juzgada de nuevo por sus acciones: igual hasta el último bit.' },
    differs: {
      word: 'otro motor',
      means: 'Hecha por otro motor: se muestra con lo que dice de sí misma y no se juzga de nuevo.',
    },
    altered: { word: 'alterada', means: 'No está como se selló: rechazada como prueba.' },
    damaged: { word: 'dañada', means: 'No se puede leer en ella ninguna práctica: rechazada.' },
  },
  bad: {
    tooLarge: 'el archivo es mayor que cualquier práctica',
    notUtf8: 'los bytes no son texto',
    tooDeep: 'el texto está anidado más hondo que cualquier práctica',
    notJson: 'el texto deja de ser JSON',
    notCanonical: 'el texto no está escrito como se selló',
    notARun: 'el documento no es una práctica',
    badEntry: 'la entrada no es ninguna que una mano pueda hacer',
    chainBroken: 'la cadena de resúmenes se rompe',
    impossible: 'la acción no es posible ahí',
    otherEnd: 'al repetirla, la práctica acaba de otro modo que el sellado',
  },
  place: {
    entry: 'acción {n}',
    link: 'eslabón {n} de la cadena de resúmenes',
    scenario: 'el ejercicio o el nombre del motor',
    end: 'lo que se dice del conjunto: persona, hora o final',
    endDigest: 'el final sellado',
    byte: 'byte n.º {n}',
    file: 'el archivo',
    at: 'Primer lugar malo: {place}; {why}.',
    detail: 'Primer lugar malo: {place}; {why}. {says}',
  },
  survived:
    'Se pueden leer {n} acciones, {bound} de ellas atadas por la cadena; ejercicio: {title}; persona: {person}.',
  lost: 'perdido',
  saidOtherwise:
    'El archivo dice de sí mismo: {verdict}, {score} de 100, {ending}. Juzgado de nuevo por sus acciones es lo que figura aquí; solo eso cuenta.',
  decision: {
    demonstrated: 'demostrado en simulación',
    notYet: 'aún no demostrado',
    notAccepted: 'práctica no aceptada como prueba',
  },
  ebel: {
    veryGood: 'muy buena',
    good: 'bastante buena',
    marginal: 'justa',
    poor: 'pobre',
    negative: 'negativa: mírese el propio punto',
  },
  smallGroup: 'Grupo pequeño ({n}): léase el intervalo, no la cifra.',
};
