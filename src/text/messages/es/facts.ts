import type { TroubleKind } from '../../../core/rig/index.ts';
import { troubles } from './troubles.ts';
import type { Catalogue, FactOf, FeltWords, Speech } from '../../catalogue.ts';
import { capital } from '../../sentence.ts';
import {
  BLOWS_FROM_PA,
  decibels,
  degrees,
  duration,
  finePercent,
  percent,
  PUSHES_FROM_PA,
  SEEPS_FROM_PA,
  turnsOf,
} from '../../units.ts';
import { actions } from './actions.ts';
import { and, of } from './grammar.ts';
import { defects } from './pieces.ts';
import * as places from './places.ts';
import * as renewal from './renewal.ts';
import { sights } from './sights.ts';
import { chainNo, clockwise, sideOf } from './turning.ts';

/** Everything that can happen, one sentence each, with what was read or felt. */
export const facts: Catalogue['facts'] = {
  ...renewal.factsBy(grip),
  done: ({ action }, s) => {
    const word = actions[action.kind].done as (a: typeof action, s: Speech) => string;
    return word(action, s);
  },
  'site.done': (f) => places.siteTasks[f.task].done + alsoFound(f.found),
  'detector.bumped': (f) =>
    f.passed
      ? f.shownShare === undefined
        ? 'El detector respondió al gas patrón como debía.'
        : `El detector respondió, pero marcó el ${percent(f.shownShare)} del gas patrón.`
      : 'El detector no superó la prueba con gas patrón: toma otro.',
  'detector.read': (f) =>
    `El detector ${places.detectorPlaces[f.where]} marca ${percent(f.lelShare)} del LIE y ${finePercent(f.oxygenShare)} de oxígeno.`,
  'gauge.zeroed': (f, s) =>
    `${capital(places.theGauge[f.gauge])} descansa en cero sin nada conectado${f.rangePa === undefined ? '' : `; su escala llega a ${s.units.pressure(f.rangePa)}`}.`,
  'gauge.read': (f, s) =>
    `${capital(places.theGauge[f.gauge])} marca ${s.units.pressure(f.readingGaugePa)}${f.zeroed ? '' : ', con el cero sin comprobar'}.`,
  looked: (f, s) => sights(f.at, f.saw, s.units),
  listened: (f) =>
    f.heard ? `Se oye gas, unos ${decibels(f.levelDb)}.` : 'No se oye nada por encima de la calle.',
  measured: (f, s) => `${capital(places.measures[f.what])}: ${s.units.length(f.readingM)}.`,
  cleaned: (f) => `${capital(nameOf(places.cleanPlaces, f.at))}: metal desnudo y sano a la vista.`,
  oiled: (f) =>
    `El aceite penetra en la rosca ${f.at === 'plug' ? 'del tapón superior' : 'de la te'}; hay que darle tiempo.`,
  'piece.cleaned': (f, s) =>
    f.cameOff.length === 0
      ? `${capital(s.thePiece(f.piece))}: se limpió, y no había nada.`
      : `${capital(s.thePiece(f.piece))}, limpio; salió: ${found(f.cameOff)}.`,
  'bleed.cleared': (f) =>
    f.cameOut
      ? 'Salió suciedad del desfogue; ya está libre.'
      : 'El alambre pasó por el desfogue sin tropezar.',
  marked: (f) => `Hecha ${nameOf(places.theMark, f.at)}.`,
  'leak.looked': (f) =>
    `Líquido detector en ${places.theLeak[f.at]} durante ${duration(f.watchS)}: ${places.bubbles[f.bubbles]}.`,
  'piece.inspected': (f, s) => `Revisión ${of(s.thePiece(f.piece))}: ${found(f.found)}.`,
  'piece.rejected': (f, s) =>
    `${capital(s.thePiece(f.piece))} queda aparte${f.doubtful ? '; había motivo de duda' : ''}.`,
  'piece.placed': (f, s) =>
    `${capital(s.thePiece(f.piece))} está ${f.fits ? 'en su sitio' : 'en su lugar, pero no asienta bien'}.`,
  'piece.removed': (f, s) =>
    f.pressureGaugePa > PUSHES_FROM_PA
      ? `${capital(s.thePiece(f.piece))} salió con ${s.units.pressure(f.pressureGaugePa)} detrás, empujando con ${s.units.force(f.thrustN)}.`
      : `${capital(s.thePiece(f.piece))} está fuera del equipo.`,
  'joint.turned': (f, s) =>
    `Giró la unión bajo ${s.thePiece(f.joint)}, y no la que está bajo ${s.thePiece(f.meant)}: nada la sujetaba.`,
  'chain.tapped': (f, s) =>
    f.settledM > 2e-5
      ? `Los eslabones de la ${chainNo(f.chain)} asentaron unos ${s.units.length(f.settledM)}; ha quedado más floja.`
      : `Los eslabones de la ${chainNo(f.chain)} están planos y no asientan más.`,
  'tensioner.turned': (f, s) =>
    `El tensor ${sideOf(f.side)} de la ${chainNo(f.chain)} está ${turnsOf(f.turns)} más allá del contacto y se nota ${grip(f.torqueNm, s)}.`,
  'chain.released': (f, s) =>
    `Se soltaron las cadenas con ${s.units.force(f.forceN)} en ellas y ${s.units.pressure(f.chamberGaugePa)} en el equipo.`,
  'valve.turned': (f, s) =>
    `La válvula de aislamiento está ${valveAt(f.openRad)}${f.stiffNm === undefined ? '' : `; su palanca se nota ${grip(f.stiffNm, s)}`}.`,
  'vent.turned': (f) =>
    f.open <= 0
      ? 'El venteo del cabezal de prueba está cerrado.'
      : `El venteo del cabezal de prueba está abierto un ${percent(f.open)}.`,
  pumped: (f, s) =>
    `Tras ${f.strokes === 1 ? 'una embolada' : `${f.strokes} emboladas`}, el manómetro del cabezal de prueba está cerca de ${s.units.pressure(f.headGaugePa)}.`,
  'bleed.turned': (f) =>
    f.openRad <= 0
      ? 'El desfogue está cerrado.'
      : `El desfogue está abierto ${degrees(f.openRad)}: ${f.puff ? 'sopla' : 'sin soplo'}.${alsoFound(f.found)}`,
  'bleed.quiet': (f) => `El desfogue quedó en silencio tras sisear ${duration(f.hissedS)}.`,
  'rod.moved': (f, s) => `La varilla está ${s.units.length(f.travelM)} abajo; ${push(f.feltN, s)}.`,
  'rod.engaged': (f) => `La punta ha llegado ${toLoad(f.with)} y lo tiene sujeto.`,
  'rod.turned': (f, s) =>
    `${capital(nameOf(loads, f.turning))}: ${clockwise(f.turns)}, y se nota ${grip(f.torqueNm, s)}.`,
  'rod.thrown': (f, s) =>
    `La varilla salió lanzada por ${s.units.force(f.thrustN)} a ${s.units.pressure(f.pressureGaugePa)}: un golpe de ${s.units.energy(f.energyJ)}.`,
  'rod.sank': (f, s) => `La varilla bajó por su propio peso hasta ${s.units.length(f.travelM)}.`,
  'load.dropped': () => 'Lo que colgaba del dado se cayó: la varilla sube ligera.',
  'socket.stuck': () => 'El dado no sale de la cabeza del tapón.',
  'rod.still': (f, s) =>
    `La varilla se quedó donde estaba, sin mano que la sujete; ${s.units.force(Math.abs(f.netN))} no bastan para moverla.`,
  'plug.turned': (f, s) =>
    `${f.slipped === true ? 'La llave patina en el cuadrado. ' : ''}El tapón superior está a ${turnsOf(f.sinceMark)} de su marca y se nota ${grip(f.torqueNm, s)}.`,
  'plug.free': (f, s) =>
    f.chamberClosed
      ? 'La rosca del tapón superior se soltó, dentro del equipo cerrado.'
      : `El tapón superior se soltó al aire con ${s.units.pressure(f.differenceGaugePa)} debajo: lo lanzaron ${s.units.force(f.thrustN)}.`,
  'tee.turned': (f, s) =>
    `La te está ${turnsOf(f.turnsBack)} ${f.turnsBack < 0 ? 'más apretada que antes' : 'atrás'} y se nota ${grip(f.torqueNm, s)}.`,
  'tee.free': (f, s) =>
    f.chamberClosed
      ? 'La rosca de la te se soltó, dentro del equipo cerrado.'
      : `La te se soltó al aire: la lanzaron ${s.units.force(f.thrustN)}.`,
  'tee.strained': (f) => `La te giró también, ${turnsOf(f.turns)}: nada la sujetaba.`,
  'keeper.turned': (f, s) =>
    `El tapón de retención ha entrado ${turnsOf(f.engagedTurns)} y se nota ${grip(f.torqueNm, s)}.`,
  'stopper.squeezed': (f, s) =>
    `La varilla interior lleva ${turnsOf(f.turns)} y se notan ${s.units.fingerTorque(f.torqueNm)}${f.inBore ? '' : '; nada empuja por igual'}.`,
  'stopper.torn': () => 'Algo cedió bajo los dedos: la goma se ha rasgado.',
  'stopper.left': () => 'El portaobturador soltó el obturador.',
  'stopper.slipped': (f, s) =>
    `El obturador se deslizó ${s.units.length(f.byM)}: ${s.units.force(f.thrustN)} sobre él, y su agarre era de ${s.units.force(f.holdsN)}.`,
  'stopper.pushed': (f, s) =>
    `El vástago del tapón de retención apoya en el obturador y lo ha empujado ${s.units.length(f.byM)} hacia abajo.`,
  'stopper.dropped': (f) => `El obturador cayó ${nameOf(fellInto, f.into)}.`,
  'closing.turned': (f, s) =>
    `El tapón de cierre ha entrado ${turnsOf(f.engagedTurns)} y se nota ${grip(f.torqueNm, s)}${f.crossed ? '; salta y se traba' : ''}.`,
  'collarBolt.turned': (f) =>
    `Los tornillos del collar partido están ${turnsOf(f.bolts[0])} y ${turnsOf(f.bolts[1])} más allá del contacto.`,
  'branch.cut': (f, s) => {
    const what = nameOf(cut, f.part) + alsoFound(f.found);
    if (f.pressureGaugePa > BLOWS_FROM_PA)
      return `${what} Sale gas con fuerza, con ${s.units.pressure(f.pressureGaugePa)} detrás.`;
    return f.pressureGaugePa > SEEPS_FROM_PA ? `${what} Sale un poco de gas.` : `${what} No sale nada.`;
  },
  'bond.sparked': () => 'Saltó una chispa al cerrar la segunda pinza del cable de puente.',
  'gaugeRing.tried': (f, s) =>
    f.passes
      ? 'El anillo calibrador pasa por el círculo que barre la te.'
      : `El anillo calibrador no pasa: la te barre ${s.units.length(f.sweptM)}.`,
  'service.purged': () => 'La acometida fuera de servicio está purgada de gas.',
  'record.written': (f) => `Registro, ${places.recordFields[f.field]}: ${f.value}`,
  signed: (f) => `El punto de control ${f.holdPoint} está firmado.`,
  withdrawn: (f) => `La firma de ${f.holdPoint} está retirada.`,
  'gas.alarm': (f) => alarm(f),
  'gas.flammable': (f, s) =>
    `El aire de la excavación supera el límite inferior cerca de la fuga: ${percent(f.lelShare)} del LIE de media, inflamable hasta ${s.units.length(f.nearReachM)}.`,
  'gas.ignited': (f) => `El gas se prendió con ${percent(f.lelShare)} del LIE.`,
  'relief.lifted': (f, s) => `El alivio del cabezal de prueba abrió a ${s.units.pressure(f.headGaugePa)}.`,
  'relief.shut': (f, s) =>
    `El alivio del cabezal de prueba volvió a cerrar a ${s.units.pressure(f.headGaugePa)}.`,
  'blow.began': (f, s) =>
    `Sale gas a la excavación por ${nameOf(sources, f.from)}, ${s.units.massFlow(f.kgPerS)}.`,
  'blow.ended': (f, s) =>
    `Terminó la salida de gas por ${nameOf(sources, f.from)}; ${s.units.mass(f.lostKg)} fueron a la excavación.`,
  'saddle.lifted': (f, s) =>
    `La silla se levantó de su asiento: ${s.units.pressure(f.chamberGaugePa)} empujaron con ${s.units.force(f.forceN)}.`,
  referred: (f) => `El trabajo está parado y devuelto: ${places.referReasons[f.reason]}.`,
  ended: (f) => ended[f.ending.kind],
};

const ended = {
  complete: 'El trabajo se entrega como completo.',
  referred: 'El trabajo está parado, en estado seguro y devuelto.',
  isolated: 'La tubería principal está cerrada en sus válvulas; la excavación, despejada y segura.',
  hurt: 'El ejercicio termina aquí: alguien habría salido herido.',
} as const;

const loads: Readonly<Record<string, string>> = {
  plug: 'tapón superior',
  stopper: 'obturador',
  tee: 'te',
  keeper: 'tapón de retención',
  closing: 'tapón de cierre',
  renewal: 'te de renovación',
  newPlug: 'tapón superior nuevo',
  latch: 'encastre del portaobturador',
  nothing: 'punta, en el vacío',
};

function toLoad(load: string): string {
  const name = nameOf(loads, load);
  return load === 'tee' ? `a la ${name}` : `al ${name}`;
}

/** Where gas can blow into the hole, by the opening it comes from. */
export const sources: Readonly<Record<string, string>> = {
  open: 'lo alto del equipo, abierto',
  serviceEnd: 'el extremo cortado de la acometida',
  lineOpen: 'el extremo abierto de la línea nueva',
  tieIn: 'la unión con la te',
  pilot: 'el orificio piloto',
  stub: 'el extremo cortado en la te',
  bore: 'la te abierta',
  plug: 'lo alto de la te',
  keeper: 'el tapón de retención',
  teeThread: 'la rosca de la te en el manguito',
  closing: 'el manguito abierto',
  seat: 'el asiento de la silla',
  gland: 'el prensaestopas de la varilla',
  relief: 'el alivio del cabezal de prueba',
  bleed: 'la manguera de desfogue',
  pumpCheck: 'la bomba de mano',
  'joint:isolationValve': 'la unión bajo la válvula de aislamiento',
  'joint:lowerSpool': 'la unión del carrete inferior',
  'joint:upperSpool': 'la unión del carrete superior',
  'joint:top': 'la unión de la pieza de arriba',
};

const fellInto: Readonly<Record<string, string>> = {
  main: 'en la tubería principal',
  tee: 'en la te',
  valve: 'en la válvula',
};

export const cut: Readonly<Record<string, string>> = {
  pilot: 'El orificio piloto está abierto.',
  plugPilot: 'El orificio piloto está tapado.',
  through: 'La derivación está cortada.',
};

export function nameOf(names: Readonly<Record<string, string>>, id: string): string {
  return Object.hasOwn(names, id) ? names[id] : id;
}

function found(faults: readonly string[]): string {
  if (faults.length === 0) return 'sin nada malo';
  return and(faults.map((fault) => nameOf(defects, fault)));
}

function grip(torqueNm: number, { units }: Speech): string {
  const size = Math.abs(torqueNm);
  if (size < 0.5) return 'suelto';
  const word =
    size < 10 ? 'ligero' : size < 45 ? 'suave' : size < 90 ? 'firme' : size < 180 ? 'duro' : 'muy duro';
  return `${word}, unos ${size < 5 ? units.fingerTorque(size) : units.torque(size)}`;
}

function push(feltN: number, { units }: Speech): string {
  if (Math.abs(feltN) < 8) return 'se queda sola';
  return feltN > 0
    ? `empuja hacia arriba con ${units.force(feltN)}`
    : `pesa hacia abajo ${units.force(-feltN)}`;
}

function valveAt(openRad: number): string {
  if (openRad <= 0.009) return 'cerrada';
  if (openRad >= 1.48) return 'abierta del todo';
  return `abierta ${degrees(openRad)}`;
}

export const felt: FeltWords = { grip, push, valveAt, loads };

function alarm(f: FactOf<'gas.alarm'>): string {
  if (f.step === 0) return 'La alarma de gas calla.';
  const at = `${percent(f.lelShare)} del LIE`;
  return f.step === 1
    ? `La alarma de gas suena en su nivel bajo, ${at}.`
    : `La alarma de gas suena en su nivel alto, ${at}: fuera, contra el viento, primero las personas.`;
}

/** What came to light beside it, as sentences of their own. */
export function alsoFound(found: readonly TroubleKind[] | undefined): string {
  return (found ?? []).map((what) => ` ${capital(troubles[what])}.`).join('');
}
