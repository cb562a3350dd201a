import type { pages as english } from '../en/pages.ts';

/** What the start page, the frame and the cautions say. */
export const pages: Readonly<Record<keyof typeof english, string>> = {
  'app.name': 'Stillmain',
  'app.skip': 'Ir a la página',
  'app.home': 'Stillmain, página de inicio',
  'caution.title': 'Lee esto primero',
  'caution.trains': 'Este simulador entrena. No habilita a nadie para trabajos regulados.',
  'caution.first':
    'El procedimiento escrito de la empresa, las normas locales y la práctica con licencia van primero, siempre.',
  'caution.numbers':
    'Sus números vienen de fuentes publicadas donde las hay; muchos son supuestos. Ninguno es un ajuste de campo.',
  'caution.short':
    'Entrena, no habilita. El procedimiento escrito, las normas locales y la práctica con licencia van primero.',

  'home.title': 'Ensaya el trabajo antes de que el gas sea de verdad.',
  'home.what':
    'Stillmain es un patio de prácticas para la cuadrilla que quita una te de servicio roscada de una tubería principal de acero con gas, sin dejar que sople. Tienes el equipo, las piezas, los manómetros y dos pares de manos. El gas se comporta como gas. Nada te impide hacer las cosas en mal orden, y cada punto de control pregunta si de verdad sabes lo que vas a firmar.',
  'home.model': 'Cómo se modela el gas, junto a números publicados, y dónde termina eso',
  'home.desk': 'Mesa de revisión: examinar ejecuciones, decidir sobre ellas y responder de ello',
  'home.bench': 'Banco de ejercicios: construir ejercicios y demostrarlos',
  'home.exercises': 'Ejercicios',
  'home.group.own': 'Propios',
  'home.group.abandon': 'Abandonar una acometida',
  'home.group.abandon.says':
    'Una acometida que ya no sirve se obtura, se corta y su manguito se cierra. Estos trabajos están en buen estado.',
  'home.group.renew': 'Renovar o reconectar una acometida',
  'home.group.renew.says':
    'Sale la te vieja, entra una probada, y la acometida se empalma, se purga y se vuelve a encender.',
  'home.group.fault': 'Cuando algo no es como dice la orden',
  'home.group.fault.says':
    'Una pieza, el terreno, la principal o el tiempo están en contra. A veces se puede remediar; a veces parar es la respuesta correcta. Cuál, te toca a ti averiguarlo.',
  'home.group.drill': 'Ejercicios cortos',
  'home.group.drill.says': 'Empiezan en mitad de un trabajo, para practicar una sola cosa hasta que salga.',
  'home.mainOf': 'principal NPS {nps}',
  'home.teeOf': 'te NPS {nps}',
  'home.holdsOf': '{n} puntos de control',
  'home.best.passed': 'aprobado',
  'home.best.tried': 'intentado',
  'home.best.working': 'en curso',
  'set.title': 'Conjuntos de habilitación',
  'set.says':
    'Ejercicios hechos uno tras otro como evaluaciones y juzgados juntos. De cada uno cuenta la evaluación más reciente a tu nombre en este navegador.',
  'set.order.asListed': 'En este orden.',
  'set.order.any': 'En cualquier orden.',
  'set.pass': 'Para aprobar: {n} de {of} aprobados y una media de al menos {mean} entre todos.',
  'set.noneCritical': 'Ninguno puede terminar en suspenso.',
  'set.nobody': 'Da tu nombre donde empieza una evaluación y aquí se dirá hasta dónde has llegado.',
  'set.far': '{done} de {of} evaluados, {passed} aprobados.',
  'set.pass.now': 'El conjunto está aprobado, con una media de {mean}.',
  'set.fail.now': 'El conjunto no está aprobado; su media es {mean}.',
  'set.state.pass': 'aprobado',
  'set.state.fail': 'no aprobado',
  'set.state.critical': 'suspenso',
  'set.state.working': 'en curso',
  'set.state.due': 'por hacer',
  'set.state.later': 'después de los anteriores',
  'set.score': '{n} de 100',
  'home.runs': 'Prácticas en este navegador',
  'home.noRuns':
    'Todavía ninguna. Una práctica se guarda aquí desde su primera acción y resiste una recarga o un fallo hasta la última.',
  'home.open': 'Abrir una práctica o un ejercicio',
  'home.openFailed': 'No se pudo abrir ese archivo: {why}',
  'home.resume': 'Seguir',
  'home.resumeNamed': 'Seguir con la práctica empezada el {when}',
  'home.debrief': 'Repaso',
  'home.debriefNamed': 'Repaso de la práctica empezada el {when}',
  'home.remove': 'Borrar',
  'home.removeNamed': 'Borrar la práctica empezada el {when}',
  'home.removeSure': '¿Borrar esta práctica para siempre? Su registro no se puede recuperar.',
  'home.removeYes': 'Borrar para siempre',
  'home.removeNo': 'Conservarla',
  'home.col.exercise': 'Ejercicio',
  'home.col.begun': 'Empezada',
  'home.col.reached': 'Reloj',
  'home.col.state': 'Estado',
  'home.col.doing': 'Qué hacer',
  'home.working': 'en curso',
  'home.verdict.pass': 'Aprobado',
  'home.verdict.fail': 'No aprobado',
  'home.verdict.critical': 'Suspenso',
  'home.finished': '{verdict}, {score} de 100',
  'home.notKept':
    'Este navegador no guarda nada de esta página, así que las prácticas duran solo hasta cerrarla: {why}',

  'route.lost': 'Aquí no hay ninguna página así.',
  'route.back': 'Volver a la página de inicio',
  'route.loading': 'Abriendo …',
  'route.failed':
    'No se pudo abrir esta parte de la página. Comprueba la conexión con el lugar que la sirve e inténtalo otra vez.',
  'route.again': 'Intentar otra vez',
};
