import type { NoteWords } from './words.ts';

/** Las notas de quien revisa un ejercicio. */
export const spanishNotes: NoteWords = {
  stopsForReason: {
    says: 'Una cuadrilla serena se detiene y devuelve el trabajo a las {clock}: {about}.',
    suggests: 'Corrija el campo, o haga que detenerse sea el final previsto.',
  },
  endsOtherwise: {
    says: 'Una cuadrilla serena llega a otro final a las {clock}: {about}.',
    suggests: 'Pida el final al que lleva este trabajo.',
  },
  failsSteady: {
    says: 'Una cuadrilla serena termina como se pide y no aprueba: {about}, a las {clock}.',
    suggests: 'Vea qué encontró allí; nadie puede hacerlo mejor.',
  },
  deadEnd: {
    says: '{witnessFailures} estados no tienen camino a un final seguro. A uno se llega por: {about}.',
    suggests: 'Ponga en el tablero la pieza que lo cerraría, o localice las válvulas de la principal.',
  },
  searchOpen: {
    says: 'La búsqueda se detuvo tras {states} estados y aún no demuestra nada.',
    suggests: 'Déjela llegar a su fin.',
  },
  renewalUnsearched: {
    says: 'Los callejones sin salida se buscan entre las piezas de un abandono, hasta la te sacada y su tapón de cierre.',
    suggests: 'Lo que se renueva después solo lo muestran las manos: mire una de ellas hasta el final.',
  },
  handPasses: {
    says: 'Una mano descuidada aprueba con {score} puntos: {about}.',
    suggests: 'Haga crítico el punto de control que elude, o suba la nota de corte.',
  },
  goodWorkCosts: {
    says: 'Una cuadrilla serena pierde {points} puntos por un trabajo que no podía hacer mejor: {about}, a las {clock}.',
    suggests: 'Quite lo que no podía saber, o deje que una comprobación exigida lo muestre.',
  },
  holdPointNotReached: {
    says: 'Nadie llega a {about} en este trabajo.',
    suggests: 'Quítelo de la lista; su peso no es de nadie.',
  },
  holdPointLeftOut: {
    says: '{about} no está en la lista, aunque aquí se hace su trabajo.',
    suggests: 'Póngalo en la lista: lo que guarda puede dejar salir gas.',
  },
  holdPointHeavy: {
    says: '{about} lleva {share} de todos los puntos de control.',
    suggests: 'Una sola firma decide entonces el apartado. Reparta el peso.',
  },
  weightsAddUp: { says: 'Los pesos de los apartados suman {sum}.', suggests: 'Haga que sumen 100.' },
  weightWithoutCause: {
    says: '{points} puntos son para condiciones anormales y no hay ninguna puesta.',
    suggests: 'Todos los reciben. Ponga una falla, o dé los puntos a otro apartado.',
  },
  headingHeavy: {
    says: 'Un apartado tiene {points} de 100 puntos: {about}.',
    suggests: 'Los demás apenas cuentan. Reparta el peso.',
  },
  cutAboveSteady: {
    says: 'Una cuadrilla serena obtiene {score}; la nota de corte es {cutScore}.',
    suggests: 'Baje la nota de corte.',
  },
  cutBelowHasty: {
    says: 'Una mano descuidada alcanza la nota de corte con {score} puntos: {about}.',
    suggests: 'Suba la nota de corte.',
  },
  timeShort: {
    says: 'Una cuadrilla serena necesita {steady}; el límite es {limit}.',
    suggests: 'Déjele un quinto más de lo que necesita.',
  },
  faultHidden: {
    says: '{about}: nada que una cuadrilla vea, oiga o lea la muestra antes de que dañe.',
    suggests: 'Deje que una comprobación exigida la muestre, o diga en las notas que está oculta.',
  },
  faultUncaught: {
    says: '{about}: seguir a pesar de ella no cuesta nada.',
    suggests: 'Dele más peso, o un punto de control que pregunte por ella.',
  },
  fewNoticed: {
    says: 'De los deslices que importan se notan {share}; no, por ejemplo: {about}.',
    suggests:
      'Dé más peso a su apartado o a su punto de control, o haga que una comprobación pregunte por ello.',
  },
  harmlessPunished: {
    says: '{punished} deslices inofensivos cuestan puntos, por ejemplo: {about}.',
    suggests: 'Vea los límites con los que tropiezan.',
  },
};
