import type { Catalogue } from '../../catalogue.ts';
import { bareAll } from './grammar.ts';

export const siteTasks: Catalogue['siteTasks'] = {
  readOrder: { button: 'Leer la orden de trabajo', done: 'Se leyó la orden de trabajo.' },
  traceAtMain: {
    button: 'Identificar la acometida en la tubería principal',
    done: 'Se identificó la acometida en la tubería principal.',
  },
  traceAtMeter: {
    button: 'Identificar la acometida en el medidor',
    done: 'Se identificó la acometida en el medidor: es la de la orden.',
  },
  permit: { button: 'Comprobar que el permiso está a mano', done: 'Permiso visto y a mano.' },
  ignitionCleared: {
    button: 'Retirar las fuentes de ignición',
    done: 'Fuentes de ignición retiradas y mantenidas fuera.',
  },
  extinguisher: {
    button: 'Colocar el extintor',
    done: 'Extintor colocado a mano, del lado de donde viene el viento.',
  },
  barricade: { button: 'Poner las barreras', done: 'Barreras puestas; tráfico y público apartados.' },
  ladder: { button: 'Poner la escalera', done: 'Escalera puesta: una salida a menos de 25 ft.' },
  shoring: { button: 'Poner la entibación', done: 'Entibación puesta.' },
  callGasControl: {
    button: 'Llamar al control de gas',
    done: 'Se llamó al control de gas; saben de los trabajos.',
  },
  findShutoff: {
    button: 'Localizar las válvulas que cierran la tubería principal',
    done: 'Válvulas que cierran la tubería principal localizadas, con su llave en el lugar.',
  },
  shutCustomer: {
    button: 'Cortar el suministro al cliente',
    done: 'Cliente cortado en la válvula de acera y en la llave del medidor.',
  },
  tagCustomer: { button: 'Etiquetar la válvula del cliente', done: 'Válvula del cliente etiquetada.' },
  checkFarFeed: {
    button: 'Comprobar si llega gas por otro lado',
    done: 'Se comprobó: ¿recibe la acometida gas por otro lado?',
  },
  bringRig: {
    button: 'Acercar el equipo',
    done: 'Equipo acercado: silla, cadenas, junta y collar.',
  },
  bringSpares: {
    button: 'Acercar el tapón de repuesto y la tapa de la válvula',
    done: 'Tapón de repuesto y tapa de la válvula acercados.',
  },
  secondPerson: {
    button: 'Llamar a la segunda persona a la excavación',
    done: 'Segunda persona en la excavación: una en la varilla, otra en válvula y desfogue.',
  },
  supportPipe: {
    button: 'Apoyar el tubo junto al corte',
    done: 'Tubo apoyado a ambos lados del corte.',
  },
  ventilate: {
    button: 'Poner un ventilador para airear la excavación',
    done: 'Ventilador puesto arriba, con la manga hasta el fondo de la excavación.',
  },
  pumpOutWater: { button: 'Sacar el agua con la bomba', done: 'Agua sacada de la excavación.' },
  clearPublic: {
    button: 'Apartar a la gente y los vehículos',
    done: 'Gente y vehículos apartados; nadie fuma cerca de la excavación.',
  },
  measureVolts: {
    button: 'Medir la tensión entre los lados del corte',
    done: 'Tensión entre tubería principal y acometida medida.',
  },
  openMeterStop: {
    button: 'Ventear la acometida por la llave del medidor, al aire libre',
    done: 'Acometida venteada al aire libre por la llave del medidor.',
  },
  retrieveByLine: {
    button: 'Sacar a la persona con la cuerda',
    done: 'Persona sacada con la cuerda; nadie entró sin aire.',
  },
  changeDetector: { button: 'Tomar otro detector', done: 'Se tomó otro detector.' },
  changeGauge: {
    button: 'Poner otro manómetro en la tubería principal',
    done: 'Otro manómetro puesto en la tubería principal.',
  },
  coat: { button: 'Reparar el revestimiento', done: 'Revestimiento reparado.' },
  cover: {
    button: 'Tapar y dejar el terreno seguro',
    done: 'Excavación tapada y terreno seguro.',
  },
  layService: {
    button: 'Tender la acometida nueva hasta su subida',
    done: 'Acometida nueva tendida desde junto a la te hasta su subida, los dos extremos a mano.',
  },
  relightList: {
    button: 'Repasar la lista de reencendido del operador',
    done: 'Lista de reencendido repasada con el cliente: aparatos apagados, tubería de la casa comprobada, salidas libres.',
  },
  relight: { button: 'Reencender', done: 'Reencendido según el procedimiento del operador.' },
};

/** With their articles, for sentences. */
export const theLook: Catalogue['lookPlaces'] = {
  boss: 'el resalte',
  coupling: 'el manguito y su soldadura',
  wall: 'la pared de la tubería principal bajo las cadenas',
  wrap: 'la envoltura de la tubería principal',
  downBore: 'el paso, por la tapa con mirilla y con la lámpara',
  gasketSeat: 'el contorno del manguito donde sellará la junta de copa',
  chains: 'las cadenas y cómo apoyan',
  around: 'la excavación, su borde y lo que se acerca',
  hose: 'la manguera del desfogue hasta su extremo',
};
export const lookPlaces = bareAll(theLook);

export const theLeak: Catalogue['leakPlaces'] = {
  plug: 'el tapón superior',
  teeThread: 'la rosca de la te en el manguito',
  weld: 'la soldadura del manguito',
  keeper: 'el tapón de retención',
  seat: 'el asiento de la silla',
  valveJoint: 'la unión bajo la válvula de aislamiento',
  spoolJoint: 'las uniones de los carretes',
  topJoint: 'la unión de la pieza de arriba',
  gland: 'el prensaestopas de la varilla',
  closingPlug: 'el tapón de cierre',
  cutEnd: 'el extremo cortado de la acometida',
  benchTee: 'la derivación abierta de la te de renovación en el banco',
  lineEnds: 'los extremos y uniones de la línea en prueba',
  tieIn: 'la unión con la te',
  newPlug: 'el tapón superior nuevo',
};
export const leakPlaces = bareAll(theLeak);

export const theClean: Catalogue['cleanPlaces'] = {
  boss: 'el resalte',
  pipe: 'el tubo bajo las cadenas',
  coupling: 'el manguito',
  bore: 'el paso',
  closingPlug: 'el lugar y la rosca del tapón de cierre',
  weldBead: 'el cordón de soldadura bajo la junta, con lima',
};
export const cleanPlaces = bareAll(theClean);

export const theMark: Catalogue['markPlaces'] = {
  plug: 'la marca de pintura entre tapón superior y te',
  tee: 'la marca de pintura entre te y manguito',
  keeper: 'la marca de pintura entre tapón de retención y te',
  portLine: 'la línea del borde inferior interno de la derivación',
};
export const markPlaces = bareAll(theMark);

export const measures: Catalogue['measures'] = {
  stackHeight: 'altura del conjunto',
  seatToBoss: 'del asiento al resalte',
  bossToPort: 'del resalte al borde inferior de la derivación',
  tipOffset: 'saliente de la punta',
};

export const theGauge: Catalogue['gauges'] = {
  main: 'el manómetro de la principal',
  second: 'el segundo manómetro',
  head: 'el manómetro del cabezal de prueba',
  manometer: 'la columna de agua',
  test: 'el manómetro del equipo de prueba',
};
export const gauges = bareAll(theGauge);

export const detectorPlaces: Catalogue['detectorPlaces'] = {
  hole: 'en el fondo de la excavación',
  breathing: 'a la altura de la respiración',
  beside: 'en el suelo junto a la excavación',
};

export const recordFields: Catalogue['recordFields'] = {
  mainPressure: 'presión de la principal, como se leyó',
  proof1: 'prueba de la primera cámara',
  proof2: 'prueba de la segunda cámara',
  leakTest: 'prueba de fugas de tapón, soldadura y extremo cortado',
  disconnected: 'acometida desconectada',
  purged: 'acometida purgada',
  sealed: 'acometida sellada',
  testMedium: 'fluido de prueba',
  testDuration: 'cuánto se mantuvieron las pruebas, minutos',
  serviceTest: 'presión de prueba de la acometida',
  serviceTestDuration: 'cuánto se mantuvo la prueba de la acometida, minutos',
  gasPurge: 'parte de gas en el tubo de purga al terminar, por ciento',
  leaksFound: 'fugas y fallos, y qué se hizo con ellos',
  abandonedFacility: 'qué queda abandonado, y dónde está',
  operator: 'operador, y quién hizo las pruebas',
  crew: 'empleado responsable, y cuadrilla',
};

export const bubbles: Catalogue['bubbles'] = {
  none: 'sin burbujas',
  fine: 'burbujas finas que crecen despacio',
  steady: 'un hilo continuo de burbujas',
  blowing: 'el gas se lleva el líquido',
};

export const referReasons: Catalogue['referReasons'] = {
  pressureAboveRating: 'presión de la principal por encima de la nominal',
  bossBeyondUse: 'resalte inservible',
  wallUnsound: 'pared de la tubería principal en mal estado',
  suspectWrap: 'envoltura sospechosa en la tubería principal',
  wrongService: 'no es la acometida de la orden',
  outOfRange: 'te o tubería principal fuera del alcance del método',
  plugSeized: 'tapón superior agarrotado',
  proofFails: 'la prueba de la cámara no aguanta',
  stopFails: 'el paso no se puede obturar',
  valvePassing: 'la válvula de aislamiento deja pasar',
  gasInHole: 'gas en la excavación',
  weldLeaks: 'la soldadura del manguito fuga',
  threadWorn: 'rosca del manguito gastada',
  teeSeized: 'te agarrotada en el manguito',
  strayVolts: 'tensión parásita en el tubo',
  insertFound: 'otro tubo dentro de la acometida',
  liquidInMain: 'líquido en la tubería principal',
  mainMoves: 'la presión de la tubería principal no se está quieta',
  kitUnfit: 'no hay pieza sana para ello',
  siteUnsafe: 'lugar no seguro para trabajar',
  other: 'otro motivo',
};

export const hindrances: Catalogue['hindrances'] = {
  ended: 'La práctica ha terminado.',
  busy: 'Tus manos siguen en la tarea anterior.',
  notOnBoard: 'Esa pieza no está en el tablero.',
  notFitted: 'Esa pieza no está en el equipo.',
  alreadyFitted: 'Eso ya está montado.',
  occupied: 'Ahí ya hay otra cosa.',
  nothingBelow: 'Ahí no hay nada sobre lo que ponerla.',
  covered: 'Está tapado; la mano no llega.',
  doesNotFit: 'Ahí no encaja.',
  ballInTheWay: 'Lo impide la bola de la válvula de aislamiento.',
  pieceInBall: 'Algo atraviesa la bola: la válvula no gira. No fuerces la manija.',
  atStop: 'Está en su tope y no va más allá por ese lado.',
  atCollar: 'El collarín de profundidad está en su tope.',
  needsTestHead: 'No hay cabezal de prueba en el equipo.',
  needsBleed: 'No hay desfogue en lo alto del equipo.',
  needsBarrel: 'No hay cilindro de la varilla en el equipo.',
  barrelOn: 'El cilindro de la varilla está montado; no se llega a la punta.',
  needsTip: 'La varilla no tiene punta.',
  needsLoad: 'No hay nada en la punta.',
  wrongTip: 'Esta punta no lo admite.',
  notReached: 'La punta todavía no llega.',
  tooTight: 'Está demasiado apretado para esta mano.',
  chained: 'Las cadenas sujetan la silla.',
  notHooked: 'Esa cadena no está enganchada.',
  noChains: 'La cadena no está en la tubería principal.',
  outOfReach: 'Desde aquí no se alcanza.',
  notCut: 'La derivación no está cortada.',
  alreadyDone: 'Eso ya está hecho.',
  heldByThread: 'Lo sujeta su rosca.',
  noHeadroom: 'No hay altura suficiente.',
  notPlaced: 'No está en su sitio.',
  rejected: 'Esa pieza se apartó por dudosa.',
  ratchetEnd: 'El tensor está al final de su rosca.',
  alreadyThere: 'Ya está ahí.',
};
