import type { Catalogue } from '../../catalogue.ts';
import { degrees, duration, percent } from '../../units.ts';
import { of, to } from './grammar.ts';
import * as places from './places.ts';
import * as renewal from './renewal.ts';
import { chainNo, clockwise, sideOf, tighter, withHold } from './turning.ts';

const strokes = (n: number): string => (n === 1 ? 'una embolada' : `${n} emboladas`);
const endOf = (end: 'tee' | 'service'): string => (end === 'tee' ? 'de la te' : 'de la acometida');

/** Every act of a hand, as a button says it and as the log tells it afterwards. */
export const actions: Catalogue['actions'] = {
  ...renewal.actions,
  'site.do': {
    button: (a) => places.siteTasks[a.task].button,
    done: (a) => places.siteTasks[a.task].done,
  },
  'detector.bump': {
    button: () => 'Probar el detector con gas patrón',
    done: () => 'Se probó el detector con gas patrón.',
  },
  'detector.read': {
    button: (a) => `Leer el detector de gas ${places.detectorPlaces[a.where]}`,
    done: (a) => `Se leyó el detector de gas ${places.detectorPlaces[a.where]}.`,
  },
  'gauge.zero': {
    button: (a) => `Comprobar el cero ${of(places.theGauge[a.gauge])}`,
    done: (a) => `Se comprobó el cero ${of(places.theGauge[a.gauge])}.`,
  },
  'gauge.read': {
    button: (a) => `Leer ${places.theGauge[a.gauge]} y anotarlo`,
    done: (a) => `Se leyó ${places.theGauge[a.gauge]} y se anotó.`,
  },
  look: {
    button: (a) => `Mirar: ${places.lookPlaces[a.at]}`,
    done: (a) => `Se miró: ${places.lookPlaces[a.at]}.`,
  },
  listen: { button: () => 'Quedarse quieto y escuchar', done: () => 'Quietos, se escuchó.' },
  measure: {
    button: (a) => `Medir: ${places.measures[a.what]}`,
    done: (a) => `Medido: ${places.measures[a.what]}.`,
  },
  clean: {
    button: (a) => `Limpiar ${places.theClean[a.at]}`,
    done: (a) => `Se limpió ${places.theClean[a.at]} hasta el metal sano.`,
  },
  'leakFluid.apply': {
    button: (a) => `Líquido detector en ${places.theLeak[a.at]}, observar ${duration(a.watchS)}`,
    done: (a) => `Se puso líquido detector en ${places.theLeak[a.at]} y se observó ${duration(a.watchS)}.`,
  },
  'oil.apply': {
    button: (a) => `Aceite penetrante en la rosca ${oiled[a.at]}`,
    done: (a) => `Se puso aceite penetrante en la rosca ${oiled[a.at]}.`,
  },
  mark: {
    button: (a) => `Hacer ${places.theMark[a.at]}`,
    done: (a) => `Se hizo ${places.theMark[a.at]}.`,
  },
  'piece.inspect': {
    button: (a, s) => `Revisar ${s.thePiece(a.piece)}`,
    done: (a, s) => `Se revisó ${s.thePiece(a.piece)}.`,
  },
  'piece.reject': {
    button: (a, s) => `Apartar ${s.thePiece(a.piece)} por duda`,
    done: (a, s) => `Se apartó ${s.thePiece(a.piece)} por duda.`,
  },
  'piece.clean': {
    button: (a, s) => `Limpiar con un trapo ${s.thePiece(a.piece)}`,
    done: (a, s) => `Se limpió con un trapo ${s.thePiece(a.piece)}.`,
  },
  'piece.place': {
    button: (a, s) => `Montar ${s.thePiece(a.piece)}${withHold(a.holdBack)}`,
    done: (a, s) => `Se montó ${s.thePiece(a.piece)}${withHold(a.holdBack)}.`,
  },
  'piece.remove': {
    button: (a, s) => `Quitar ${s.thePiece(a.piece)}${withHold(a.holdBack)}`,
    done: (a, s) => `Se quitó ${s.thePiece(a.piece)}${withHold(a.holdBack)}.`,
  },
  'chain.hook': {
    button: (a) => `${a.hooked ? 'Enganchar' : 'Desenganchar'} la ${chainNo(a.chain)}`,
    done: (a) => `Se ${a.hooked ? 'enganchó' : 'desenganchó'} la ${chainNo(a.chain)}.`,
  },
  'chain.tap': {
    button: (a) => `Asentar a golpes los eslabones de la ${chainNo(a.chain)}`,
    done: (a) => `Se asentaron a golpes los eslabones de la ${chainNo(a.chain)}.`,
  },
  'tensioner.turn': {
    button: (a) => `Tensor ${sideOf(a.side)} de la ${chainNo(a.chain)}: ${tighter(a.turns)}`,
    done: (a) => `Se giró el tensor ${sideOf(a.side)} de la ${chainNo(a.chain)}, ${tighter(a.turns)}.`,
  },
  'valve.turn': {
    button: (a) => `Girar la válvula de aislamiento ${degrees(Math.abs(a.angleRad))}, ${opening(a.angleRad)}`,
    done: (a) =>
      `Se giró la válvula de aislamiento ${degrees(Math.abs(a.angleRad))}, ${opening(a.angleRad)}.`,
  },
  'vent.turn': {
    button: (a) => `Girar el venteo del cabezal de prueba ${percent(Math.abs(a.open))}, ${opening(a.open)}`,
    done: (a) => `Se giró el venteo del cabezal de prueba ${percent(Math.abs(a.open))}, ${opening(a.open)}.`,
  },
  'pump.stroke': {
    button: (a) => `Bombear ${strokes(a.strokes)}`,
    done: (a) => `Se bombeó ${strokes(a.strokes)}.`,
  },
  'bleed.turn': {
    button: (a) => `Girar la llave de desfogue ${degrees(Math.abs(a.angleRad))}, ${opening(a.angleRad)}`,
    done: (a) => `Se giró la llave de desfogue ${degrees(Math.abs(a.angleRad))}, ${opening(a.angleRad)}.`,
  },
  'bleed.clear': {
    button: () => 'Pasar un alambre por la llave de desfogue',
    done: () => 'Se pasó un alambre por la llave de desfogue.',
  },
  'hose.lead': {
    button: (a) => `Llevar la manguera de desfogue ${outlet(a.outlet)}`,
    done: (a) => `Se llevó la manguera de desfogue ${outlet(a.outlet)}.`,
  },
  'rod.fit': {
    button: (a, s) =>
      a.tip === null ? 'Quitar la punta de la varilla' : `Poner ${s.thePiece(a.tip)} en la varilla`,
    done: (a, s) =>
      a.tip === null ? 'Se quitó la punta de la varilla.' : `Se puso ${s.thePiece(a.tip)} en la varilla.`,
  },
  'rod.load': {
    button: (a, s) =>
      a.piece === null ? 'Quitar la pieza de la punta' : `Poner ${s.thePiece(a.piece)} en la punta`,
    done: (a, s) =>
      a.piece === null ? 'Se quitó la pieza de la punta.' : `Se puso ${s.thePiece(a.piece)} en la punta.`,
  },
  'rod.hold': {
    button: (a) => (a.held ? 'Sujetar la varilla' : 'Soltar la varilla'),
    done: (a) => (a.held ? 'Se sujetó la varilla.' : 'Se soltó la varilla.'),
  },
  'rod.move': {
    button: (a, s) => `Mover la varilla ${s.units.length(Math.abs(a.lengthM))} ${rodWay(a.lengthM)}`,
    done: (a, s) =>
      `Se movió la varilla ${rodWay(a.lengthM)}, como mucho ${s.units.length(Math.abs(a.lengthM))}.`,
  },
  'rod.turn': {
    button: (a) => `Girar la varilla ${clockwise(a.turns)}`,
    done: (a) => `Se giró la varilla ${clockwise(a.turns)}.`,
  },
  'innerRod.turn': {
    button: (a) => `Girar con los dedos la varilla interior ${clockwise(a.turns)}`,
    done: (a) => `Se giró con los dedos la varilla interior ${clockwise(a.turns)}.`,
  },
  'collar.set': {
    button: (a, s) =>
      a.travelM === null
        ? 'Soltar el collarín de profundidad'
        : `Fijar el collarín de profundidad a ${s.units.length(a.travelM)} de recorrido`,
    done: (a, s) =>
      a.travelM === null
        ? 'Se soltó el collarín de profundidad.'
        : `Se fijó el collarín de profundidad a ${s.units.length(a.travelM)} de recorrido.`,
  },
  'plug.turn': {
    button: (a) => `Girar el tapón superior ${clockwise(a.turns)}${withHold(a.holdBack)}`,
    done: (a) => `Se giró el tapón superior ${clockwise(a.turns)}${withHold(a.holdBack)}.`,
  },
  'tee.turn': {
    button: (a) => `Girar la te ${clockwise(a.turns)}${withHold(a.holdBack)}`,
    done: (a) => `Se giró la te ${clockwise(a.turns)}${withHold(a.holdBack)}.`,
  },
  'keeper.pull': {
    button: (a, s) => `Apretar el tapón de retención a ${s.units.torque(a.torqueNm)}${withHold(a.holdBack)}`,
    done: (a, s) => `Se apretó el tapón de retención a ${s.units.torque(a.torqueNm)}${withHold(a.holdBack)}.`,
  },
  'sealant.apply': {
    button: (a, s) => `Dar sellador de roscas ${to(s.thePiece(a.piece))}`,
    done: (a, s) => `Se dio sellador de roscas ${to(s.thePiece(a.piece))}.`,
  },
  'bond.clamp': {
    button: (a) => `${a.clamped ? 'Sujetar' : 'Quitar'} el cable de puente del lado ${endOf(a.end)}`,
    done: (a) => `Se ${a.clamped ? 'sujetó' : 'quitó'} el cable de puente del lado ${endOf(a.end)}.`,
  },
  'branch.cut': { button: (a) => cuts[a.part].button, done: (a) => cuts[a.part].done },
  'tee.trim': { button: (a) => trims[a.how].button, done: (a) => trims[a.how].done },
  'gaugeRing.try': {
    button: () => 'Probar el anillo calibrador sobre la te',
    done: () => 'Se probó el anillo calibrador sobre la te.',
  },
  'service.purge': {
    button: () => 'Purgar la acometida fuera de servicio',
    done: () => 'Se purgó la acometida fuera de servicio, lejos de la excavación.',
  },
  'collarBolt.turn': {
    button: (a) => `Tornillo n.º ${a.bolt + 1} del collar partido: ${tighter(a.turns)}`,
    done: (a) => `Se giró el tornillo n.º ${a.bolt + 1} del collar partido, ${tighter(a.turns)}.`,
  },
  'record.write': {
    button: (a) => `Anotar en el registro: ${places.recordFields[a.field]}`,
    done: (a) => `Se anotó en el registro, ${places.recordFields[a.field]}: ${a.value}`,
  },
  sign: {
    button: (a) => `Firmar el punto de control ${a.holdPoint}`,
    done: (a) => `Se firmó el punto de control ${a.holdPoint}.`,
  },
  withdraw: {
    button: (a) => `Retirar la firma de ${a.holdPoint}`,
    done: (a) => `Se retiró la firma de ${a.holdPoint}.`,
  },
  refer: {
    button: (a) => `Parar el trabajo y devolverlo: ${places.referReasons[a.reason]}`,
    done: (a) => `Se paró el trabajo, se dejó seguro y se devolvió: ${places.referReasons[a.reason]}.`,
  },
  'main.isolate': {
    button: () => 'Hacer cerrar la tubería principal en sus válvulas',
    done: () => 'Se hizo cerrar la tubería principal en sus válvulas.',
  },
  leaveHole: {
    button: () => 'Salir de la excavación, contra el viento',
    done: () => 'Todos salieron de la excavación, contra el viento, primero las personas.',
  },
  finish: { button: () => 'Terminar: entregar el trabajo', done: () => 'Se entregó el trabajo.' },
};

function opening(change: number): string {
  return change < 0 ? 'cerrando' : 'abriendo';
}

function rodWay(lengthM: number): string {
  return lengthM < 0 ? 'hacia arriba' : 'hacia abajo';
}

function outlet(where: 'inHole' | 'away'): string {
  return where === 'away' ? 'afuera, a favor del viento y sobre el suelo' : 'a la excavación';
}

const oiled = { plug: 'del tapón superior', tee: 'de la te' } as const;

const cuts = {
  pilot: {
    button: 'Abrir un orificio piloto en el corte',
    done: 'Se abrió un orificio piloto en el corte.',
  },
  plugPilot: { button: 'Tapar el orificio piloto', done: 'Se tapó el orificio piloto.' },
  through: {
    button: 'Cortar la derivación con la sierra de mano',
    done: 'Se cortó la derivación con la sierra de mano.',
  },
} as const;

const trims = {
  saw: {
    button: 'Serrar el cubo de la te a ras del cuerpo',
    done: 'Se serró el cubo de la te a ras del cuerpo.',
  },
  dress: {
    button: 'Rebajar las esquinas de la te hasta el aro',
    done: 'Se rebajaron las esquinas de la te hasta el aro.',
  },
  file: { button: 'Limar los bordes de la te', done: 'Se limaron los bordes de la te.' },
} as const;
