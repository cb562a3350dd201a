import type { shelf as english } from '../en/shelf.ts';

/** El marco del banco, su estante y lo que un ejercicio nuevo dice de sí mismo. */
export const shelf: Readonly<Record<keyof typeof english, string>> = {
  'bench.title': 'Banco de ejercicios',
  'bench.what':
    'Construya un ejercicio, demuestre que se puede terminar y que es justo, y entréguelo a una clase en un solo archivo.',
  'bench.pages': 'Páginas del banco',
  'bench.shelf': 'Ejercicios',
  'bench.notKept': 'Este navegador no guarda nada de esta página; guarde en un archivo lo que haga: {why}',
  'bench.notOpened': 'El banco no se pudo abrir: {why}',
  'bench.back': 'Volver al estante',
  'bench.lostExercise': 'Aquí no se guarda ningún ejercicio con ese nombre.',

  'shelf.own': 'Sus ejercicios',
  'shelf.none':
    'Todavía ninguno. Empiece con un lugar preparado, copie un ejercicio del producto o abra un archivo.',
  'shelf.col.title': 'Ejercicio',
  'shelf.col.changed': 'Cambiado',
  'shelf.col.state': 'Estado',
  'shelf.col.doing': 'Qué hacer',
  'shelf.state.unsound': 'borrador, con errores',
  'shelf.state.draft': 'borrador, sin demostrar',
  'shelf.state.stale': 'borrador, cambiado desde su demostración',
  'shelf.state.refused': 'borrador, su demostración tiene notas graves',
  'shelf.state.proved': 'demostrado',
  'shelf.edit': 'Editar',
  'shelf.editNamed': 'Editar {title}',
  'shelf.practise': 'Practicar',
  'shelf.practiseNamed': 'Practicar {title}',
  'shelf.save': 'Guardar archivo',
  'shelf.saveNamed': 'Guardar archivo: {title}',
  'shelf.copy': 'Copiar',
  'shelf.copyNamed': 'Copiar {title}',
  'shelf.remove': 'Borrar',
  'shelf.removeNamed': 'Borrar {title}',
  'shelf.removed': 'Se borró {title}.',
  'shelf.restore': 'Recuperarlo',
  'shelf.restored': '{title} está de vuelta.',
  'shelf.open': 'Abrir archivos de ejercicio',
  'shelf.opened': 'Se abrió {title}.',
  'shelf.openedAs': 'Se abrió {title} como {id}: ese nombre estaba ocupado.',
  'shelf.openedAlready': '{title} ya está aquí, palabra por palabra.',
  'shelf.notesOpened': 'Las notas quedaron junto a {title}.',
  'shelf.notesAlone': 'Estas notas son para {id}, y aquí no se guarda ningún ejercicio con ese nombre.',
  'shelf.refused': '{name} no se pudo abrir',
  'shelf.tooLarge': 'El archivo es mayor que cualquier ejercicio.',
  'shelf.whole': 'todo el archivo',
  'shelf.drop': 'También se pueden soltar aquí archivos de ejercicio (.json) y sus notas (.md).',
  'shelf.copyTitle': '{title}, copia',

  'shipped.title': 'Copiar un ejercicio del producto',
  'shipped.which': 'Ejercicio del producto',
  'shipped.copy': 'Copiarlo a mis ejercicios',

  'make.title': 'Empezar un ejercicio nuevo',
  'make.what':
    'Un trabajo en buen estado con el tablero completo. Las averías, los límites y los pesos vienen después.',
  'make.main': 'Principal, NPS',
  'make.tee': 'Te de servicio, NPS',
  'make.site': 'Lugar',
  'make.go': 'Empezar',
  'make.named': 'Abandonar una te de servicio de {tee} pulgadas en una principal de {main} pulgadas con gas',
  'make.operator': 'Harrow Vale Gas, patio de prácticas',
  'make.says.work':
    'Abandonar la acometida en la principal: te de calle maleable NPS {tee} en un manguito soldado, principal de acero NPS {main}.',
  'make.says.pressure':
    'Presión de la principal según la etiqueta: {pressure}. Equipo y accesorios para {rating}.',
  'make.says.service':
    'Acometida: {length} de acero NPS {tee}, cliente cortado en la válvula de acera y en la llave del medidor.',
  'make.says.card':
    'Tarjeta del equipo: obturador firme a {firm}; tapón de retención apretado al menos a {keeper}; tapón de cierre {turns} vueltas más allá del apriete a mano.',
  'make.says.hold': 'Pruebas de cámara sostenidas cinco minutos (ajuste de la empresa).',
  'make.says.stop':
    'Parar y devolver el trabajo si el resalte no sirve, la principal supera el régimen o la acometida es otra.',

  'site.meadow': 'Prado bajo: hoyo abierto, aire ligero',
  'site.meadow.address': 'Zona 4 del patio, Prado Bajo',
  'site.meadow.brief': 'La casa del final de la hilera se derriba, y su acometida se va con ella.',
  'site.roadside': 'Junto al camino: hoyo más ancho, gas que vuelve de la manguera',
  'site.roadside.address': 'Zona 9 del patio, Camino del Molino',
  'site.roadside.brief':
    'Un camino ensanchado se lleva el jardín, y con él la acometida vieja. Pasan vehículos cerca.',
  'site.deepHole': 'Hoyo hondo: poco aire en el fondo',
  'site.deepHole.address': 'Zona 12 del patio, Senda de la Cantera',
  'site.deepHole.brief': 'La principal está honda aquí, y el aire del fondo del hoyo apenas se mueve.',
  'site.longService': 'Acometida larga: mucho gas por dejar salir',
  'site.longService.address': 'Zona 15 del patio, Graneros Lejanos',
  'site.longService.brief': 'Un granero al final de un largo camino ya no necesita gas.',
  'site.winter': 'Invierno: suelo frío, goma fría',
  'site.winter.address': 'Zona 17 del patio, Puerta Norte',
  'site.winter.brief':
    'Helada en el suelo, y una tienda cerrada cuya acometida debe quitarse antes del deshielo.',
  'site.highMain': 'Principal alta: cerca del régimen',
  'site.highMain.address': 'Zona 20 del patio, Casa de Bombas',
  'site.highMain.brief': 'La principal trabaja aquí cerca de aquello para lo que está hecho el equipo.',
};
