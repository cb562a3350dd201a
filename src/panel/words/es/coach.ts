import type { coach as english } from '../en/coach.ts';

/** Why the coach says a step is due: the purpose or the hazard, in one sentence. */
export const coach: Readonly<Record<keyof typeof english, string>> = {
  'coach.siteTask':
    'La excavación debe ser un sitio seguro donde trabajar, y quien deba saberlo debe saberlo, antes de mover una llave.',
  'coach.readInstrument': 'Solo cuenta una cifra leída; una etiqueta o un recuerdo, no.',
  'coach.zeroInstrument': 'Un manómetro que no descansa en cero está mal en todo lo demás.',
  'coach.lookRound': 'Personas, tiempo, agua y manguera pueden haber cambiado desde la última mirada.',
  'coach.answerFound': 'Se encontró, y nadie lo ha remediado todavía.',
  'coach.look': 'Lo que no se puede palpar ni medir hay que verlo.',
  'coach.rejectPiece': 'Lo que se halló defectuoso vuelve al almacén; el repuesto ocupa su lugar.',
  'coach.inspectPiece': 'Una pieza de otro tamaño o con un corte lo muestra ahora o bajo presión.',
  'coach.signHoldPoint': 'La evidencia está ahí. Firma solo lo que sabes.',
  'coach.withdrawSignature': 'Ha pasado algo que anula la evidencia. Retira la firma y pruébalo otra vez.',
  'coach.referBack': 'Así como está, no es un trabajo para este método. Parar es la respuesta correcta.',
  'coach.clean':
    'La goma sella sobre metal desnudo y sano, y las cadenas agarran en él; en la cascarilla, no.',
  'coach.breakPlugBite':
    'Rompe el agarre viejo mientras todo está a la vista: no más de un octavo de vuelta.',
  'coach.snugPlug':
    'Ajústalo hasta que calle bajo el líquido detector, o esconderá lo que la prueba debe mostrar.',
  'coach.mark': 'Una marca muestra después si se ha movido.',
  'coach.leakFluid': 'El líquido detector encuentra fugas que ningún manómetro de este equipo puede mostrar.',
  'coach.placePiece': 'Esto es lo siguiente que se monta.',
  'coach.hookChain': 'Las dos cadenas se reparten la carga, una a cada lado.',
  'coach.drawUpChain':
    'Un poco de cada lado por turnos: una silla bajada por un lado se levanta por el otro.',
  'coach.tapChain': 'Los eslabones que no están planos asientan con la carga y dejan floja la cadena.',
  'coach.workValve': 'Una válvula que se pega se descubre ahora, no con la principal debajo.',
  'coach.openValve':
    'Poco a poco: la cámara se llena sin ruido, y una unión nueva se delata antes de cargarse del todo.',
  'coach.shutValve': 'Lo que está encima solo puede quitarse con la bola cerrada y lo de arriba desfogado.',
  'coach.shutVent': 'Con el venteo abierto no se prueba nada.',
  'coach.openVent': 'Déjala bajar; entonces se puede observar desde cero.',
  'coach.pumpLowStage': 'Primero unos pocos psi: un mal asiento se delata mientras no puede hacer daño.',
  'coach.pumpToMain': 'Hasta la presión de la principal y un poco más; nunca más de lo que permite la orden.',
  'coach.settle': 'El aire sale caliente de la bomba y se enfría: una caída en este minuto no dice nada.',
  'coach.hold': 'Manos fuera. Rellenar durante la espera le quita todo valor.',
  'coach.readHead': 'El principio y el final de una espera se leen y se anotan los dos.',
  'coach.watchRise': 'Una subida desde cero significa que el tapón o la te deja pasar, y tapaba la prueba.',
  'coach.leadHose': 'El gas desfogado en la excavación es gas en el que estás de pie.',
  'coach.fitTip': 'La punta debe ser del tamaño de lo que va a sujetar.',
  'coach.loadRod': 'Se pone en la punta mientras la varilla está en el banco.',
  'coach.holdRod': 'Sin mano que la sujete, la varilla sale lanzada o baja en cuanto llega presión debajo.',
  'coach.lowerRod': 'Abajo hasta notarlo.',
  'coach.raiseRod': 'Arriba del todo, para que no haya nada en la bola cuando gire.',
  'coach.unscrewPlug': 'Desenrosca por la válvula abierta; el equipo cerrado guarda el gas.',
  'coach.openBleed': 'El desfogue debe sisear y luego callar. Lo que dice es la evidencia.',
  'coach.shutBleed': 'Cerrado, un rezume se acumula; abierto, pasaría sin oírse.',
  'coach.waitQuiet': 'Silencio el tiempo suficiente para estar seguro.',
  'coach.waitShutIn': 'Dos minutos cerrado: un rezume que ningún oído capta se vuelve un soplo.',
  'coach.takeOff': 'Desfogado y sin soplo: ahora se puede quitar.',
  'coach.measure': 'El recorrido se calcula con medidas, no se adivina.',
  'coach.clampCollar':
    'Altura del conjunto, del asiento al resalte y del resalte a la derivación, menos el saliente de la punta, y unos milímetros más abajo.',
  'coach.squeezeStopper': 'Con los dedos hasta que esté firme: con poco rezuma, con demasiado se rasga.',
  'coach.unlatch': 'Un cuarto en sentido horario: apretar nunca puede soltarlo, y esto nunca lo afloja.',
  'coach.screwKeeper': 'Nada puede empujar el obturador más allá del tapón de retención.',
  'coach.pullKeeper':
    'Al par de la orden, con contrallave en la te: no debe moverse cuando se gire la te con él.',
  'coach.slackenChain': 'También aquí un poco de cada lado por turnos.',
  'coach.bond': 'La corriente vagabunda salta en un corte; el cable se la lleva.',
  'coach.cutPilot': 'Un agujero pequeño, que se puede volver a tapar, muestra si la acometida está muerta.',
  'coach.watchPilot': 'Un minuto sin que salga nada es la evidencia.',
  'coach.cutThrough': 'Desde aquí no hay vuelta al servicio.',
  'coach.trimTee': 'La te gira al subir: todo el círculo que barre debe pasar por el equipo.',
  'coach.purge': 'Abandonada significa desconectada, sin gas y sellada.',
  'coach.breakTeeBite':
    'Como mucho un octavo de vuelta, con contrallave en el manguito, mientras el tapón de retención es la única pared.',
  'coach.snugTee': 'Ajustada otra vez hasta que rosca y soldadura callen bajo el líquido detector.',
  'coach.drawUpBolts': 'Por igual: una junta pellizcada fuga primero a baja presión.',
  'coach.sealThread': 'Listo en su dado antes de abrir el manguito: después no hay tiempo.',
  'coach.unscrewTee': 'Desde el último hilo, toda barrera es única. Sigue sin pausa.',
  'coach.findThread': 'Un poco atrás hasta que caiga: un tapón que empieza cruzado no puede cerrar.',
  'coach.screwClosing': 'Apretado a mano y luego las vueltas debidas: firme, sin forzar.',
  'coach.layService': 'Tiende la acometida nueva, con los dos extremos a mano.',
  'coach.joinTestSet': 'Conecta el equipo de prueba donde toca probar, o quítalo al terminar.',
  'coach.pumpTest': 'Bombea hasta la presión de prueba, y un poco más por el error del manómetro.',
  'coach.runInTee':
    'Enrosca la te de renovación, más allá del apriete a mano, y hasta su rumbo. Nunca atrás.',
  'coach.breakKeeper':
    'Afloja el tapón de retención con dos llaves, un octavo de vuelta a lo sumo, y reapriétalo.',
  'coach.drawKeeper': 'Desenrosca el tapón de retención y súbelo por la válvula.',
  'coach.slackenStopper':
    'Engancha el obturador y aflójalo un poco; luego espera a que las presiones se igualen.',
  'coach.drawStopper': 'Las presiones son iguales: afloja el obturador del todo y sácalo.',
  'coach.purgeLine': 'Expulsa el aire en un flujo continuo y lee el tubo de purga hasta que sea gas.',
  'coach.relight': 'Repasa la lista y luego reenciende.',
  'coach.writeRecord': 'Anota lo que de verdad se leyó.',
  'coach.cover': 'El terreno se deja seguro cuando el registro está hecho.',
  'coach.finish': 'Todo está probado y anotado. Entrégalo.',
  'coach.leaveHole':
    'Fuera de la excavación, contra el viento, primero las personas. Nada de ahí abajo vale más.',
  'coach.isolateMain':
    'Hace un minuto que sale gas y aquí nada lo detiene. La tubería principal se cierra en sus válvulas.',
  'coach.standBy': 'No hay nada más pendiente. Escucha, y no pierdas de vista los manómetros.',
};
