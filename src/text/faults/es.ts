import type { FaultWords } from './words.ts';

/** Every fault: what it is, how it is noticed, what to do. */
export const spanishFaults: FaultWords = {
  mislabelledSeatRing: {
    what: 'Lleva grabado un tamaño y es de otro: su goma cae fuera del resalte y no cierra nada.',
    noticed: 'Revísalo contra el resalte; asienta mal y la cámara no sube de presión.',
    act: 'Apártalo y toma uno que sea lo que dice.',
  },
  mislabelledStopper: {
    what: 'Un obturador de otro tamaño queda suelto en el paso o no entra.',
    noticed: 'Revísalo; nunca aprieta y el desfogue no se apaga.',
    act: 'Apártalo y toma uno del tamaño del paso.',
  },
  mislabelledSocket: {
    what: 'No encaja en el cuadrado para el que está grabado.',
    noticed: 'Pruébalo en un cuadrado antes de ponerlo en la varilla.',
    act: 'Apártalo y toma otro.',
  },
  keeperWrongThread: {
    what: 'Una rosca de otra norma se agarra pronto y no cierra.',
    noticed: 'Revisa su rosca; se agarra a la vuelta o dos.',
    act: 'Apártalo y toma el tapón de retención correcto.',
  },
  closingPlugWrongThread: {
    what: 'Una rosca de otra norma deja paso al gas en la única unión que queda enterrada.',
    noticed: 'Revisa su rosca; el líquido detector hace burbujas en ella.',
    act: 'Toma el segundo tapón; si no hay, cierra la tubería principal.',
  },
  keeperStemLong: {
    what: 'El vástago toca el obturador antes de apretar la rosca: puede empujarlo, o el tapón de retención queda flojo.',
    noticed: 'Mide el vástago; el tapón de retención deja de girar pronto.',
    act: 'Toma un tapón de retención con el vástago correcto.',
  },
  keeperStemShort: {
    what: 'El obturador puede pasar la toma antes de tocar el vástago: nada lo sujeta.',
    noticed: 'Mide el vástago antes de ponerlo.',
    act: 'Toma un tapón de retención con el vástago correcto.',
  },
  closingPlugBottoms: {
    what: 'Topa abajo antes de apretar la rosca, y parece firme sin cerrar.',
    noticed: 'Revísalo; se pone duro con pocas vueltas tras el apriete a mano.',
    act: 'Toma el segundo tapón; si no hay, cierra la tubería principal.',
  },
  bossPitted: {
    what: 'Las picaduras piden más apriete para que el anillo cierre.',
    noticed: 'Mira el resalte cuando esté limpio.',
    act: 'Aprieta bien y prueba; si la prueba falla, devuelve el trabajo.',
  },
  bossBeyondUse: {
    what: 'Tan comido que ningún anillo puede cerrar en él.',
    noticed: 'Mira el resalte, antes y después de limpiarlo.',
    act: 'Para y devuelve el trabajo.',
  },
  scaleUnderChain: {
    what: 'Los eslabones la aplastan y el apriete baja después.',
    noticed: 'Mira la pared donde irán las cadenas.',
    act: 'Limpia hasta el metal; golpea los eslabones y aprieta otra vez.',
  },
  gritOnRing: {
    what: 'Un grano en la goma la separa del resalte.',
    noticed: 'Revisa el anillo; la prueba cae y el asiento hace burbujas.',
    act: 'Limpia el anillo o toma otro, y prueba otra vez.',
  },
  weldBeadUnderGasket: {
    what: 'La junta debe ir sobre metal parejo, no sobre un cordón.',
    noticed: 'Mira el manguito donde cerrará la junta.',
    act: 'Límalo parejo o asienta la junta fuera de él; prueba.',
  },
  boreScale: {
    what: 'El obturador se apoya en cascarilla y deja pasar gas.',
    noticed: 'Mira el paso con la lámpara.',
    act: 'Cepilla el paso y mira otra vez.',
  },
  filingsOnSeat: {
    what: 'Lo limado de la te raya el asiento: la válvula deja pasar.',
    noticed: 'Revisa la válvula tras recortar; vuelve un soplo sobre la bola cerrada.',
    act: 'Límpiala o toma otra, y prueba el asiento otra vez.',
  },
  sealantOnRubber: {
    what: 'La goma untada resbala donde debe agarrar.',
    noticed: 'Revisa el obturador antes de engancharlo.',
    act: 'Límpialo o toma otro.',
  },
  oRingNicked: {
    what: 'Una junta tórica cortada fuga más con poca presión.',
    noticed: 'Revisa la junta de la unión; el líquido detector hace burbujas y la prueba cae.',
    act: 'Desarma la unión, toma una pieza sana y prueba otra vez.',
  },
  stopperWorn: {
    what: 'Deja pasar gas por mucho que se apriete.',
    noticed: 'Revísalo; el desfogue vuelve a soplar tras cerrarlo.',
    act: 'Sácalo y toma otro, o devuelve el trabajo.',
  },
  stopperOily: {
    what: 'El aceite quita el agarre: sube con la presión.',
    noticed: 'Revísalo; se mueve al abrir el desfogue.',
    act: 'Sujétalo, sácalo, límpialo y ponlo otra vez.',
  },
  weakDetent: {
    what: 'Un movimiento brusco de la varilla suelta el obturador.',
    noticed: 'Revisa el portaobturador antes de usarlo.',
    act: 'Toma otro portaobturador; saca con imán el obturador caído.',
  },
  glandWeeping: {
    what: 'Pasa gas por la varilla a la excavación donde está la cuadrilla.',
    noticed: 'Revisa el cilindro; líquido detector en el prensaestopas.',
    act: 'Toma otro cilindro.',
  },
  bleedBlocked: {
    what: 'El silencio no dice entonces que esté vacío: no se sabe.',
    noticed: 'Sisea demasiado, o nunca; revísalo.',
    act: 'Pásale un alambre y desfoga otra vez.',
  },
  valvePassing: {
    what: 'La única pared entre la tubería y el equipo abierto no lo es.',
    noticed: 'Revisa la bola; la prueba del asiento y el soplo lo dicen.',
    act: 'Toma otra válvula, o devuelve el trabajo antes de sacar el tapón.',
  },
  valveStiff: {
    what: 'Con prisa no se puede cerrar a tiempo.',
    noticed: 'Muévela abierta y cerrada antes de fiarte.',
    act: 'Toma otra válvula.',
  },
  gaugeStuck: {
    what: 'Una aguja atascada no cae, fugue lo que fugue.',
    noticed: 'No descansa en cero ni sigue a la bomba.',
    act: 'Toma otro cabezal de prueba.',
  },
  gaugeReadsLow: {
    what: 'La cámara tiene más presión de la que parece.',
    noticed: 'Comprueba su cero y compáralo con la tubería.',
    act: 'Toma otro cabezal de prueba.',
  },
  gaugeUnfit: {
    what: 'Sus divisiones son tan grandes como lo que importa.',
    noticed: 'Lee la escala al comprobar el cero.',
    act: 'Pon uno de escala adecuada.',
  },
  ventNotShutting: {
    what: 'La prueba cae aunque asiento y uniones aguanten.',
    noticed: 'Revisa el cabezal; la prueba cae sin burbujas.',
    act: 'Toma otro cabezal de prueba y prueba otra vez.',
  },
  pumpCheckLeaks: {
    what: 'Una caída falsa: el aire vuelve por la bomba.',
    noticed: 'Revisa el cabezal; la prueba cae sin burbujas.',
    act: 'Toma otro cabezal de prueba y prueba otra vez.',
  },
  hoseKinked: {
    what: 'Estrangulado suena como vacío.',
    noticed: 'Mira la manguera; el desfogue sisea demasiado.',
    act: 'Tiéndela sin dobleces y desfoga otra vez.',
  },
  hoseDrifts: {
    what: 'Lo desfogado cae sobre la cuadrilla.',
    noticed: 'Mira el extremo; el detector sube al desfogar.',
    act: 'Deja de desfogar y tiéndela lejos otra vez.',
  },
  gasketPinched: {
    what: 'Un labio atrapado por el collar fuga.',
    noticed: 'Revísala; la segunda prueba cae y el asiento hace burbujas.',
    act: 'Quítala, toma otra y prueba otra vez.',
  },
  gasketBlows: {
    what: 'Con la te fuera cada barrera es única: el gas sopla a la excavación.',
    noticed: 'Sopla gas en la silla.',
    act: 'Tapona ya, o sal y cierra la tubería principal.',
  },
  windowCracked: {
    what: 'Puede reventar en la cara que mira.',
    noticed: 'Revisa la tapa con mirilla.',
    act: 'Retírala y toma otra.',
  },
  looseJoint: {
    what: 'Gira la unión más floja, no la que quieres.',
    noticed: 'Burbujas en la unión, prueba que cae, un giro no buscado.',
    act: 'Para, contra-sujeta, rehaz la unión y prueba.',
  },
  socketLetsGo: {
    what: 'El tapón se cae al subir y queda en el camino de la válvula.',
    noticed: 'La varilla sube ligera.',
    act: 'No fuerces la válvula; baja, agarra otra vez y sube despacio.',
  },
  socketHolds: {
    what: 'Se agarra al tapón de cierre; aflojar el equipo abriría la tubería.',
    noticed: 'La varilla no sube.',
    act: 'El equipo se queda; muévelo hasta soltarlo, nunca aflojes.',
  },
  stopperLetsGo: {
    what: 'Un tornillo barrido pierde el apriete al soltar el portaobturador.',
    noticed: 'El obturador cae; la varilla sube sin él.',
    act: 'Sácalo con imán y toma otro; el perdido en la tubería se informa.',
  },
  detectorFailsBump: {
    what: 'Callaría con gas.',
    noticed: 'Pruébalo con gas patrón antes de trabajar.',
    act: 'Toma otro detector.',
  },
  detectorReadsLow: {
    what: 'Responde, pero da por bueno un aire peligroso.',
    noticed: 'Compara lo que marca con el gas patrón.',
    act: 'Toma otro detector.',
  },
  plugPassing: {
    what: 'El gas de abajo llena la cámara y esconde una fuga en la prueba.',
    noticed: 'Líquido detector en el tapón; la cámara venteada y cerrada sube.',
    act: 'Reaprieta el tapón y prueba otra vez, o devuelve el trabajo.',
  },
  plugSeized: {
    what: 'Ninguna llave rompe su agarre.',
    noticed: 'No se mueve con lo máximo de la llave.',
    act: 'Aceite y tiempo; si no, devuelve el trabajo.',
  },
  plugRounded: {
    what: 'La llave patina antes de romper el agarre.',
    noticed: 'La llave patina en el cuadrado.',
    act: 'Aceite y tiempo; si no, devuelve el trabajo.',
  },
  teeSeized: {
    what: 'Sacarla torcería manguito y tubería.',
    noticed: 'No se mueve con lo máximo de la llave.',
    act: 'Aceite y tiempo; si no, devuelve el trabajo con el muñón tapado.',
  },
  weldLeaks: {
    what: 'Fuga la unión que queda enterrada.',
    noticed: 'Líquido detector en la soldadura.',
    act: 'Deja el equipo puesto como contención y devuelve el trabajo.',
  },
  weldWeepsAfterBite: {
    what: 'Romper el agarre de la te abre una grieta.',
    noticed: 'Líquido detector en la soldadura tras romper el agarre.',
    act: 'Reaprieta la te, pon el equipo tapado y devuelve el trabajo.',
  },
  couplingThreadWorn: {
    what: 'Un tapón de cierre no cierra en ella.',
    noticed: 'Mira la rosca; líquido detector en el tapón.',
    act: 'Segundo tapón; si no, el equipo queda tapado y se cierra la tubería.',
  },
  curbPassing: {
    what: 'La casa cortada no lo está del todo.',
    noticed: 'Comprueba si llega gas por otro lado.',
    act: 'Ventea por la llave del medidor, al aire libre, y avisa al control de gas.',
  },
  farFeed: {
    what: 'Obturar el paso no la deja muerta.',
    noticed: 'Comprueba si llega gas por otro lado; el desfogue no se apaga.',
    act: 'No cortes; devuelve el trabajo.',
  },
  unknownBranch: {
    what: 'Cuelga más gas de la acometida, y quizá otra entrada.',
    noticed: 'El desfogue sisea mucho más de lo debido.',
    act: 'Busca adónde va antes de la sierra.',
  },
  secondHouse: {
    what: 'También se apaga y hay que reencenderla.',
    noticed: 'Sigue la acometida hasta el medidor.',
    act: 'Avisa al control de gas y ponla en la lista de reencendido.',
  },
  excessFlowDevice: {
    what: 'El desfogue no sisea y la acometida sigue llena.',
    noticed: 'El desfogue se apaga demasiado pronto.',
    act: 'No es silencio, es duda: ventea por la llave del medidor.',
  },
  insertInService: {
    what: 'Plástico o cobre dentro del acero: otro procedimiento, y estática.',
    noticed: 'El orificio piloto lo muestra.',
    act: 'Para y devuelve el trabajo.',
  },
  mainOutOfRound: {
    what: 'Las cadenas tiran torcida la silla.',
    noticed: 'Mira la pared; la prueba dice si cierra.',
    act: 'Prueba; si falla, devuelve el trabajo.',
  },
  thinWall: {
    what: 'Las cadenas apoyarían en metal que quizá no aguante.',
    noticed: 'Mira la pared bajo las cadenas.',
    act: 'Devuelve el trabajo.',
  },
  suspectWrap: {
    what: 'La envoltura vieja puede llevar amianto.',
    noticed: 'Mira la envoltura antes de tocarla.',
    act: 'Para; la quita un especialista.',
  },
  wrongService: {
    what: 'La acometida seguida no es la de la orden.',
    noticed: 'Síguela en los dos extremos.',
    act: 'Para y devuelve el trabajo.',
  },
  pressureAboveTag: {
    what: 'La orden se escribió para otra presión.',
    noticed: 'Lee la tubería con un manómetro de cero comprobado.',
    act: 'Pregunta antes de seguir: devuelve el trabajo.',
  },
  pressureAboveRating: {
    what: 'El equipo no está hecho para ella.',
    noticed: 'Lee la tubería con un manómetro de cero comprobado.',
    act: 'Para y devuelve el trabajo.',
  },
  regulatorCreep: {
    what: 'Un regulador no cierra: lo probado ya no basta.',
    noticed: 'Vuelve a leer la tubería antes de cada prueba.',
    act: 'Avisa al control de gas; sigue la nueva lectura o devuelve el trabajo.',
  },
  mainRisesAfterStop: {
    what: 'Volver abriría más que seguir.',
    noticed: 'Vuelve a leer la tubería antes de abrir el manguito.',
    act: 'Adelante hasta el estado cerrado más cercano; avisa al control de gas.',
  },
  mainFalling: {
    what: 'Otra cuadrilla trabaja en ella, o puede entrar aire.',
    noticed: 'Vuelve a leer la tubería.',
    act: 'Para y llama al control de gas.',
  },
  temperatureDrift: {
    what: 'El sol o la helada mueven la aguja sin que nada fugue.',
    noticed: 'Mira alrededor; la lectura cambia sin burbujas.',
    act: 'Espera a que se asiente y prueba otra vez; no condenes el anillo.',
  },
  odourAbsent: {
    what: 'La nariz no avisaría.',
    noticed: 'No huele a nada cuando sopla el desfogue.',
    act: 'Fíate del detector; avisa al control de gas.',
  },
  liquidFromBleed: {
    what: 'Líquido en la tubería: arde y atasca.',
    noticed: 'Sale líquido por el desfogue.',
    act: 'Ciérralo, aléjate y avisa al control de gas.',
  },
  otherLeak: {
    what: 'Entra en la excavación gas que no es del equipo.',
    noticed: 'El detector marca antes de abrir nada.',
    act: 'Sal, ventila y búscala; si no, devuelve el trabajo.',
  },
  stillAir: {
    what: 'Lo que rezuma se queda en la excavación.',
    noticed: 'Mira alrededor: no corre nada de viento.',
    act: 'Pon un ventilador.',
  },
  ignitionSource: {
    what: 'Una llama, chispa o motor al alcance.',
    noticed: 'Búscala antes de trabajar.',
    act: 'Retírala.',
  },
  ignitionArrives: {
    what: 'Un vehículo o quemador se acerca durante el trabajo.',
    noticed: 'Mira otra vez alrededor antes de desfogar.',
    act: 'Cierra el desfogue y retírala.',
  },
  publicApproaches: {
    what: 'Alguien fumando se acerca a la excavación.',
    noticed: 'Mira alrededor.',
    act: 'Apártala; cierra el desfogue.',
  },
  waterInHole: {
    what: 'Menos aire para diluir el gas, y mal apoyo.',
    noticed: 'Mira alrededor.',
    act: 'Sácala con la bomba.',
  },
  coldRubber: {
    what: 'Anillo y obturador piden más apriete y cierran más tarde.',
    noticed: 'Mira alrededor: helada.',
    act: 'Calienta la goma, reaprieta y vigila más tiempo.',
  },
  strayVolts: {
    what: 'La sierra sacaría una chispa, o algo peor.',
    noticed: 'Mide; la pinza del puente echa chispas.',
    act: 'Para; la busca un especialista.',
  },
  pipeSprings: {
    what: 'Salta al cortarla y tuerce la te.',
    noticed: 'Al apoyarla se nota la tensión.',
    act: 'Apóyala, alíviala y aléjate.',
  },
  workerDown: {
    what: 'Quien entre a por él puede caer también.',
    noticed: 'Mira dentro de la excavación.',
    act: 'Llama; nadie entra sin aire; sácalo con la cuerda.',
  },
};
