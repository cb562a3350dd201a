import type { sitting as english } from '../en/sitting.ts';

/** How a run is sat: coach, assessment, watching, tour; and what the debrief tells beside the figures. */
export const sitting: Readonly<Record<keyof typeof english, string>> = {
  'coach.level.fading': 'Según lo necesite',
  'coach.level.shown': 'Muestra lo que toca',
  'coach.level.asked': 'Solo si pregunto',
  'coach.level.off': 'En silencio',
  'coach.ask': 'Preguntar qué toca',
  'coach.costs': 'Queda contado en el registro; aquí cuesta {n} puntos.',
  'coach.costsNothing': 'Queda contado en el registro; aquí no cuesta puntos.',
  'coach.askedTimes': 'Preguntas hasta ahora: {n}',
  'coach.faded': 'Ya superaste esta etapa antes, así que nada se muestra sin preguntar.',
  'amiss.title': 'Fíjate en eso',
  'amiss.consequence': 'Qué pasó',
  'amiss.cause': 'Qué lo causó',
  'amiss.rule': 'La regla',
  'amiss.dismiss': 'Visto',
  'assess.title': 'Evaluación',
  'assess.says':
    'En silencio y una sola vez: sin guía, sin vuelta atrás, el equipo visto solo como lo ve la cuadrilla, y esperas de un minuto como mucho. Empieza al pulsar el botón y acaba cuando terminas el trabajo, lo paras o lo entregas. El registro dice que fue una evaluación.',
  'assess.begin': 'Empezar la evaluación',
  'assess.handIn': 'Entregar tal como está',
  'assess.sure': '¿Entregar ahora? Después no se puede seguir.',
  'assess.yes': 'Entregarla',
  'assess.no': 'Seguir',
  'practise.title': 'Práctica',
  'practise.says':
    'Con la guía hasta donde quieras, el equipo en sección, y vuelta atrás a cualquier momento.',
  'watch.link': 'Ver primero cómo se hace',
  'watch.title': 'Ver cómo se hace',
  'watch.says':
    'Una mano firme hace todo el trabajo, y la guía dice por qué. Páralo donde quieras y avanza acto por acto.',
  'watch.performing': 'Haciendo el trabajo …',
  'watch.now': 'Se está haciendo',
  'watch.try': 'Ahora pruébalo',
  'play.play': 'Reproducir',
  'play.stop': 'Parar',
  'play.speed': 'Velocidad',
  'story.title': 'Lo que se hizo, en palabras',
  'story.deviation': 'Primera desviación',
  'story.due': 'Entonces tocaba: {what}.',
  'story.done': 'Se hizo: {what}.',
  'story.none': 'Nada se apartó de lo debido de manera que costara algo.',
  'story.waitDue': 'esperar {length}',
  'next.title': 'Una cosa para la próxima vez',
  'next.sound': 'No se perdió nada. Toma un ejercicio que aún no hayas aprobado, o haz este como evaluación.',
  'next.retry': 'Volver a {clock} e intentarlo otra vez',
  'next.retrySays':
    'Como una práctica nueva: lo que se hizo desde ahí queda en su gráfica como una línea gris fina.',
  'physics.title': 'Qué hizo el gas, y por qué',
  'physics.quiet': 'Se quedó donde debía: nada sopló, se levantó ni salió lanzado.',
  'physics.blow.began':
    'Un agujero abierto deja pasar gas a la velocidad del sonido en cuanto la principal pasa de unos 12 psig; solo su área y la presión deciden cuánto.',
  'physics.blow.ended':
    'El flujo acabó al cerrarse la abertura o agotarse la presión; lo que salió queda en la excavación hasta que el aire lo limpia.',
  'physics.rod.thrown':
    'El empuje es presión por área de la varilla, menos su peso y el roce del prensaestopas: a 60 psig, más de lo que una mano puede parar.',
  'physics.rod.sank': 'Con poca presión debajo, la varilla pesa más de lo que el prensaestopas sujeta.',
  'physics.saddle.lifted':
    'La presión por el área del asiento superó lo que sujetaban las cadenas; el sello se abrió como un alivio.',
  'physics.stopper.slipped':
    'La presión por el área del paso empujó más de lo que la goma apretada podía agarrarse a la pared.',
  'physics.relief.lifted':
    'La bomba llevó el cabezal a la presión del alivio; desde ahí deja salir lo que entra.',
  'physics.gas.flammable':
    'La excavación es una caja de aire que se mezcla: lo que entra de gas menos lo que limpia el viento. Junto a la fuga es rica mucho antes de que lo diga la media.',
  'physics.gas.ignited': 'Aire entre sus límites encontró una fuente.',
  'tour.title': 'Recorrido de dos minutos',
  'tour.step': '{n} de {of}',
  'tour.next': 'Siguiente',
  'tour.before': 'Atrás',
  'tour.skip': 'Saltar el recorrido',
  'tour.end': 'Eso es todo',
  'tour.home':
    '¿Primera vez aquí? Empieza con un trabajo en buen estado; lo acompaña un recorrido de dos minutos.',
  'tour.begin': 'Empezar aquí',
  'tour.clock':
    'Aquí solo corre el reloj. Déjalo correr o páralo; los botones de espera hacen pasar el tiempo de golpe, y se paran solos si algo sobresalta.',
  'tour.rig':
    'El equipo, en sección: el gas y el aire se colorean según la presión. Arrástralo para girarlo, o léelo: «En palabras» cuenta todo lo que muestra.',
  'tour.hands':
    'Tus manos. Elige una cosa y luego qué hacer con ella. Cada acto es tuyo, en cualquier orden; solo se rechaza lo que una mano no puede hacer.',
  'tour.instruments':
    'Lo que una cuadrilla lee y oye: manómetros, detector, desfogue, empuje de la varilla. Leer un manómetro en el panel de manos anota la cifra.',
  'tour.order':
    'La orden de trabajo, sus etapas y puntos de control. Un punto de control pregunta si sabes lo que firmas; el trabajo que guarda no debe empezar antes.',
  'tour.said':
    'Lo que pasó, lo último primero, y la guía: qué toca y por qué. Se va callando según aprendes el trabajo, y puedes silenciarlo arriba.',
  'tour.way':
    'Puedes volver a cualquier momento e intentarlo de nuevo. Al final el repaso dice qué pasó, por qué, y una cosa para la próxima vez. Teclas: «?» las enumera.',
  'parts.title': 'Todas las piezas de la pantalla en todos los temas',
  'parts.says':
    'De qué está hecha cada pantalla, para quien la cambie. Colores y tamaños salen de un solo archivo.',
  'parts.colours': 'Colores',
  'parts.type': 'Letra y botones',
  'parts.instruments': 'Instrumentos',
  'parts.charts': 'Gráficas',
  'parts.hold': 'Punto de control',
};
