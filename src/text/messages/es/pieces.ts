import type { Catalogue } from '../../catalogue.ts';
import type { PieceKind } from '../../../core/catalogue/index.ts';
import { nouns } from './glossary.ts';

const what: Readonly<Record<PieceKind, string>> = {
  main: 'La tubería principal de acero, con gas, sobre la que está el manguito.',
  coupling: 'El manguito roscado, soldado en lo alto de la tubería principal; en él se enrosca la te.',
  serviceTee:
    'La te roscada que hay que quitar: extremo macho en el manguito, cuerpo vertical, derivación hacia la acometida y tapón arriba.',
  topPlug: 'El tapón de cabeza cuadrada en el extremo superior de la te.',
  serviceLine: 'El tubo desde la derivación hasta la válvula de acera y la llave del medidor.',
  seatRing:
    'Anillo metálico plano con goma adherida, del tamaño de la te; sella entre el resalte y la silla.',
  saddle:
    'El cuerpo estanco que se pone sobre la te y se sujeta con cadenas a la tubería principal. Se usa dos veces.',
  cradleBlock:
    'Bloque ranurado bajo una tubería principal pequeña, para que la cadena tenga dónde apoyar; uno por cadena.',
  chain: 'Sujeta la silla; se tensa con un tensor a la izquierda y otro a la derecha.',
  isolationValve:
    'Válvula de bola de paso total sobre la silla: cerrada, lo que hay encima se puede cambiar con la tubería principal en servicio.',
  lowerSpool: 'Tubo corto de extensión para debajo de la válvula de aislamiento, donde falta altura.',
  upperSpool: 'Tubo de extensión para encima de la válvula de aislamiento, donde cabe la te.',
  sightCap:
    'Tapa roscada con una ventana gruesa y su propio desfogue, para mirar por el paso con una lámpara.',
  testHead:
    'Manómetro, bomba de mano con válvula de retención, venteo manual y un alivio que abre por sí solo.',
  rodBarrel:
    'Cuerpo cerrado por el que desliza la varilla a través de un prensaestopas, con llave de desfogue y su manguera puesta a tierra.',
  rod: 'Trabaja a través del cilindro: lo que cuelga de su punta se baja, se gira y se sube bajo presión.',
  socket: 'Punta para cabeza cuadrada, por tamaño; retiene lo que ha desenroscado.',
  stopperHolder:
    'Punta de giro para el obturador. Se suelta en sentido horario, de modo que apretar nunca lo libera.',
  magnet: 'Punta para sacar por la válvula una pieza caída.',
  depthCollar:
    'Se aprieta en la varilla para que se detenga, solo hacia abajo, en el recorrido que se midió.',
  boreStopper:
    'Goma entre dos arandelas, por tamaño; la varilla interior la aprieta hacia fuera contra el paso inferior.',
  keeperPlug:
    'Tapón roscado con vástago, puesto en lo alto de la te sobre el obturador para que nada pueda expulsarlo.',
  cupGasket: 'Goma moldeada sobre la te recortada; sella en el contorno del manguito.',
  splitCollar:
    'Dos mitades atornilladas alrededor del manguito; respaldan la junta de copa y dan a la silla su segundo asiento.',
  closingPlug: 'Tapón macizo de acero que cierra el manguito para siempre. Hay otro de repuesto.',
  valveCap: 'Tapa para la válvula de aislamiento siempre que no haya otra cosa sobre ella.',
  gaugeRing: 'Anillo algo menor que el paso del equipo: lo que pasa por él puede subir por el equipo.',
  serviceCap: 'Tapa para el extremo de la acometida fuera de servicio.',
  renewalTee:
    'Te de cuerpo redondo que pasa por el equipo, con su propio obturador y su tapón de retención ya puestos.',
  newTopPlug:
    'Tapón de cabeza cuadrada para lo alto de la te de renovación, enroscado a través de la válvula.',
  tieIn: 'Niple y unión que enlazan la línea probada con la derivación de la te nueva.',
  testSet:
    'Manómetro, bomba de mano y venteo con manguera: para la te de renovación en el banco y luego para la acometida.',
  purgeRiser:
    'Tubo vertical con llave para el extremo de la casa: deja salir al aire libre, por arriba, el aire purgado.',
};

export const pieces = Object.fromEntries(
  (Object.keys(nouns) as PieceKind[]).map((kind) => [kind, { name: nouns[kind].name, what: what[kind] }]),
) as Catalogue['pieces'];

export const defects: Catalogue['defects'] = {
  oRingNickCdAM2: 'su junta tórica tiene un corte',
  gritCdAM2: 'tiene arenilla en la goma',
  seatPassingCdAM2: 'su bola está rayada',
  glandWeepCdAM2: 'su prensaestopas está gastado',
  rubberWornCdAM2: 'su goma está gastada',
  oily: 'su goma está aceitosa',
  bleedBlocked: 'su desfogue está atascado con suciedad',
  gaugeStuckPa: 'su aguja se atasca',
  gaugeOffsetPa: 'su aguja no descansa en cero',
  ventNotShuttingCdAM2: 'su venteo no cierra bien',
  pumpCheckLeakCdAM2: 'la retención de su bomba deja volver el aire',
  crackedWindow: 'su ventana está agrietada',
  weakDetent: 'su encastre está flojo',
  sizeNotAsStamped: 'no es del tamaño que lleva grabado',
  wrongThread: 'su rosca no es de esta norma',
  stiffNm: 'su palanca va dura',
  filingsCdAM2: 'tiene limaduras en el asiento',
  sealantSmeared: 'tiene sellador en la goma',
  pinchedCdAM2: 'su labio está pellizcado',
  looseNm: 'su unión está floja',
  looseGrip: 'su muelle de retención está flojo',
  jams: 'se agarra a la cabeza',
  screwSlips: 'su tornillo de apriete patina',
  stemLongM: 'su vástago es demasiado largo',
  stemShortM: 'su vástago es demasiado corto',
  bottomsTurns: 'su rosca es demasiado larga para el manguito',
};
