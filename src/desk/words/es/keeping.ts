import type { keeping as english } from '../en/keeping.ts';

export const keeping: Readonly<Record<keyof typeof english, string>> = {
  'rejudge.title': 'Juzgar otra vez la carpeta',
  'rejudge.what':
    'Cuando ha cambiado un peso, un límite o la puntuación para aprobar: las {n} ejecuciones creíbles se realizan otra vez y se juzgan de las dos maneras. Se ve quién cambia y por qué; no se guarda nada hasta que usted lo diga.',
  'rejudge.weights': 'Otros pesos para los apartados',
  'rejudge.sum': 'En total {n}; deben sumar 100.',
  'rejudge.cut': 'Otra puntuación para aprobar',
  'rejudge.cutScore': 'Se aprueba con',
  'rejudge.scenario': 'Un ejercicio cambiado, en un archivo',
  'rejudge.scenarioRefused': 'Eso no es un ejercicio: {why}',
  'rejudge.begin': 'Juzgar otra vez y mostrar quién cambia',
  'rejudge.told': 'Quién cambia y por qué',
  'rejudge.says':
    'De {of} ejecuciones cambian {changed}, {turned} de ellas en el resultado. Con este cambio no se pudieron juzgar {refused}.',
  'rejudge.keep': 'Guardar en la tabla los {n} juicios cambiados',
  'rejudge.drop': 'No guardar nada',
  'rejudge.kept':
    'Guardado. La tabla y el grupo van ahora por el juicio cambiado. Una ejecución que se abre, y las decisiones anteriores, siguen yendo por el ejercicio propio de la ejecución.',
  'rejudge.before': 'Antes',
  'rejudge.after': 'Después',
  'rejudge.why': 'Por qué',
  'rejudge.byCut': 'solo la puntuación para aprobar',
  'rejudge.heading': '{heading} de {before} a {after}',
  'rejudge.came': 'hallado ahora: {finding}',
  'rejudge.gone': 'ya no hallado: {finding}',
  'rejudge.costs': 'cuesta otra cosa: {finding}',

  'keeping.title': 'Conservar y soltar',
  'keeping.what':
    'Las decisiones se conservan {n} años después de que dejan de valer, y con ellas sus ejecuciones. Un borrado anterior se rechaza, y no se borra nada que antes no se haya exportado. Primero van las reglas propias de la operadora.',
  'keeping.notKept': 'Este navegador no guarda nada de esta página: {why}',
  'keeping.export': 'Exportar todo',
  'keeping.exportWhat':
    '{runs} ejecuciones y {decisions} decisiones, con las notas y los hallazgos vistos de otra manera, en un archivo.',
  'keeping.exportDo': 'Exportar todo',
  'keeping.exported': 'Exportado. Huella del archivo: {digest}…',
  'keeping.refused': 'Eso se rechazó: {why}',
  'keeping.kept': 'Hay que conservar',
  'keeping.noneKept': 'Aquí todavía no se ha tomado ninguna decisión.',
  'keeping.decided': 'Decidido',
  'keeping.due': 'Se puede soltar',
  'keeping.dueWhat':
    'Ejecuciones que ya ninguna decisión retiene aquí, o sobre las que no se tomó ninguna. Exporte primero.',
  'keeping.noneDue': 'Nada.',
  'keeping.undecided': 'nada decidido',
  'keeping.sure': '¿Borrarla para siempre?',
  'keeping.yes': 'Borrar para siempre',
  'keeping.remove': 'Borrar',
  'keeping.removeNamed': 'Borrar la ejecución de {who}, {file}',
  'keeping.more': 'Y otras {n}.',

  'report.title': 'Informe de una ejecución',
  'report.back': 'Volver a la ejecución',
  'report.units': 'Unidades primeras',
  'report.us': 'De EE. UU., con SI al lado',
  'report.si': 'SI, con las de EE. UU. al lado',
  'report.hideMarks': 'Ocultar las notas numéricas',
  'report.print': 'Imprimir, o guardar en PDF',
  'report.save': 'Guardar el informe (HTML)',
};
