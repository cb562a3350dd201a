import type { Catalogue, Speech } from '../../catalogue.ts';
import { degrees, percent, PUSHES_FROM_PA, turnsOf } from '../../units.ts';
import { clockwise, withHold } from './turning.ts';

/*
 * The words of a renewal in Spanish: the new tee, its own test, the line that leaves it.
 */

const strokes = (n: number): string => (n === 1 ? 'una embolada' : `${n} emboladas`);
const opening = (change: number): string => (change < 0 ? 'hacia cerrado' : 'hacia abierto');
const where = {
  bench: 'a la te de renovación en el banco',
  line: 'al extremo de la casa de la línea',
} as const;

type Of<T, K extends keyof T> = Pick<T, K>;

export const actions: Of<
  Catalogue['actions'],
  | 'keeper.turn'
  | 'testSet.join'
  | 'testSet.pump'
  | 'testSet.vent'
  | 'temperature.read'
  | 'riser.turn'
  | 'riser.read'
> = {
  'keeper.turn': {
    button: (a) => `Girar el tapón de retención ${clockwise(a.turns)} con llave${withHold(a.holdBack)}`,
    done: (a) => `Girado el tapón de retención ${clockwise(a.turns)} con llave${withHold(a.holdBack)}.`,
  },
  'testSet.join': {
    button: (a) =>
      a.to === null ? 'Quitar el equipo de prueba' : `Conectar el equipo de prueba ${where[a.to]}`,
    done: (a) =>
      a.to === null ? 'Quitado el equipo de prueba.' : `Conectado el equipo de prueba ${where[a.to]}.`,
  },
  'testSet.pump': {
    button: (a) => `Bombear ${strokes(a.strokes)} con el equipo de prueba`,
    done: (a) => `Bombeado con el equipo de prueba: ${strokes(a.strokes)}.`,
  },
  'testSet.vent': {
    button: (a) => `Girar el venteo del equipo de prueba ${percent(Math.abs(a.open))} ${opening(a.open)}`,
    done: (a) => `Girado el venteo del equipo de prueba ${percent(Math.abs(a.open))} ${opening(a.open)}.`,
  },
  'temperature.read': {
    button: () => 'Leer la temperatura de la línea y anotarla',
    done: () => 'Leída y anotada la temperatura de la línea.',
  },
  'riser.turn': {
    button: (a) => `Girar la llave del tubo de purga ${percent(Math.abs(a.open))} ${opening(a.open)}`,
    done: (a) => `Girada la llave del tubo de purga ${percent(Math.abs(a.open))} ${opening(a.open)}.`,
  },
  'riser.read': {
    button: () => 'Leer la parte de gas en el tubo de purga',
    done: () => 'Leída la parte de gas en el tubo de purga.',
  },
};

export const factsBy = (
  grip: (torqueNm: number, speech: Speech) => string,
): Of<
  Catalogue['facts'],
  | 'renewal.turned'
  | 'newPlug.turned'
  | 'stopper.drawn'
  | 'testSet.joined'
  | 'testSet.pumped'
  | 'testSet.vented'
  | 'temperature.read'
  | 'riser.turned'
  | 'riser.read'
> => ({
  'renewal.turned': (f, s) =>
    `La te de renovación lleva ${turnsOf(f.engagedTurns)} de rosca y se nota ${grip(f.torqueNm, s)}; su derivación queda ${degrees(Math.abs(f.offHeadingRad))} ${f.offHeadingRad < 0 ? 'antes de' : 'más allá de'} su rumbo${f.crossed ? '; salta y se traba' : ''}.`,
  'newPlug.turned': (f, s) =>
    `El tapón superior nuevo lleva ${turnsOf(f.engagedTurns)} de rosca y se nota ${grip(f.torqueNm, s)}${f.crossed ? '; salta y se traba' : ''}.`,
  'stopper.drawn': (f, s) =>
    f.differenceGaugePa > PUSHES_FROM_PA
      ? `El obturador salió de su paso con ${s.units.pressure(f.differenceGaugePa)} de diferencia: lo empujaron hacia arriba ${s.units.force(f.thrustN)}.`
      : 'El obturador salió de su paso sin que nada lo empujara.',
  'testSet.joined': (f) =>
    f.to === null
      ? 'El equipo de prueba está quitado.'
      : `El equipo de prueba está conectado ${where[f.to]}.`,
  'testSet.pumped': (f, s) =>
    `Tras ${strokes(f.strokes)} el manómetro de prueba marca cerca de ${s.units.pressure(f.gaugePa)}${f.onStopper ? '; el aire carga también sobre el obturador de la te' : ''}.`,
  'testSet.vented': (f) =>
    f.open <= 0
      ? 'El venteo del equipo de prueba está cerrado.'
      : `El venteo del equipo de prueba está abierto al ${percent(f.open)}.`,
  'temperature.read': (f, s) => `La línea está a ${s.units.temperature(f.readingK)}.`,
  'riser.turned': (f) =>
    f.open <= 0
      ? 'La llave del tubo de purga está cerrada.'
      : `La llave del tubo de purga está abierta al ${percent(f.open)}.`,
  'riser.read': (f) => `Lo que sale del tubo de purga es gas en un ${percent(f.gasShare)}.`,
});

export const stages: Of<Catalogue['stages'], 'r1' | 'r2' | 'r3' | 'r4' | 'r5' | 'r6'> = {
  r1: {
    title: 'Probar la te de renovación en el banco',
    aim: 'Mostrar que su obturador y su tapón de retención aguantan desde abajo la presión de la principal antes de bajarla.',
  },
  r2: {
    title: 'Enroscar la te de renovación',
    aim: 'Bajarla por el equipo, encontrar la rosca y llevar su derivación al rumbo avanzando siempre.',
  },
  r3: {
    title: 'Probar la acometida sola',
    aim: 'Tapada en el extremo de la principal y sin unir a la te: presión según la principal, tiempo, temperatura y líquido detector.',
  },
  r4: {
    title: 'Unir, y probar la cámara sobre la te nueva',
    aim: 'Una sola unión; tapón de retención aflojado y reapretado con dos llaves; el equipo de la primera cámara otra vez, y probado.',
  },
  r5: {
    title: 'Sacar retención y obturador, poner el tapón superior nuevo',
    aim: 'Aflojar un poco el obturador, dejar que las presiones se igualen, sacarlo y enroscar el tapón nuevo.',
  },
  r6: {
    title: 'Probar con gas, purgar y reencender',
    aim: 'Líquido detector a la presión de la principal, el aire expulsado por el tubo de purga, y la lista del operador.',
  },
};

export const holdPoints: Of<Catalogue['holdPoints'], 'R1' | 'R2' | 'R3' | 'R4' | 'R5' | 'R6'> = {
  R1: {
    title: 'Te de renovación probada en el banco',
    guards: 'bajar la te de renovación',
    evidence: [
      'Obturador y tapón de retención puestos; la presión de la principal o más desde abajo, cinco minutos, sin caída apreciable',
      'Líquido detector en su derivación abierta: sin burbujas',
    ],
  },
  R2: {
    title: 'Te nueva puesta',
    guards: 'abrir el equipo',
    evidence: [
      'Vistas las roscas del manguito; vueltas y par dentro del margen, sin cruzar',
      'Derivación a menos de 10° de su rumbo, alcanzado avanzando, nunca atrás',
      'Válvula abierta, desfogue en silencio un minuto, cerrado dos minutos, abierto: sin soplo',
    ],
  },
  R3: {
    title: 'Acometida probada sola',
    guards: 'la unión con la te',
    evidence: [
      'Sin unir a la te y tapada en el extremo de la principal; una línea vieja, purgada antes de gas',
      'Al menos 50 psig si la principal trabaja a 40 o menos, 90 psig por encima',
      'El tiempo del operador, sin caída una vez descontada la temperatura, líquido detector en sus uniones',
    ],
  },
  R4: {
    title: 'Cámara probada sobre la te nueva',
    guards: 'girar el tapón de retención más de 1/8 de vuelta desde su marca',
    evidence: [
      'Tapón de retención aflojado con dos llaves y reapretado; la marca de la te sin mover',
      'Probada como la primera cámara: etapa baja, presión de la principal, espera, líquido detector, asiento, sin subida',
    ],
  },
  R5: {
    title: 'Tapón superior nuevo puesto',
    guards: 'abrir el equipo',
    evidence: [
      'Las vueltas debidas más allá del apriete a mano, firme, sin cruzar',
      'Válvula abierta, desfogue en silencio un minuto, cerrado dos minutos, abierto: sin soplo; visto a escuadra',
    ],
  },
  R6: {
    title: 'Purgada',
    guards: 'reencender',
    evidence: [
      'Líquido detector en la unión, el tapón nuevo y la rosca de la te con gas a la presión de la principal: sin burbujas',
      'Un flujo continuo hasta el tubo de purga al aire libre, hasta ser 90 % gas, durante un minuto',
      'La lista de reencendido del operador, completa',
    ],
  },
};

const tight = {
  quiet: 'un minuto de silencio con el desfogue abierto',
  shutIn: 'dos minutos cerrado',
  noPuff: 'ningún soplo al volver a abrir',
};

export const evidenceBy = (
  proof: Readonly<Record<string, string>>,
): Of<Catalogue['evidenceItems'], 'R1' | 'R2' | 'R3' | 'R4' | 'R5' | 'R6'> => ({
  R1: {
    atPressure: 'la presión de la principal desde abajo en el banco',
    held: 'la espera completa',
    noDrop: 'ninguna caída durante la espera',
    fluid: 'líquido detector en la derivación abierta: sin burbujas',
  },
  R2: {
    ...tight,
    threads: 'las roscas del manguito vistas antes',
    turns: 'vueltas dentro del margen más allá del apriete a mano',
    torque: 'firme, y no forzado',
    notCrossed: 'una rosca que entró bien',
    heading: 'la derivación en su rumbo',
    onward: 'una te que nunca se giró atrás',
  },
  R3: {
    alone: 'una línea sin unir a la te',
    gasFree: 'una línea vieja purgada de gas antes de meter aire',
    atPressure: 'la presión de prueba que corresponde a la principal',
    held: 'el tiempo completo del operador',
    temperature: 'la temperatura leída con ambas lecturas',
    noDrop: 'ninguna caída una vez descontada la temperatura',
    fluid: 'líquido detector en las uniones de la línea: sin burbujas',
  },
  R4: {
    ...proof,
    'fluid.spoolJoint': 'líquido detector en la unión del carrete',
    rise: 'venteada, cerrada y observada: sin subida',
    cracked: 'el tapón de retención aflojado y reapretado con dos llaves',
    teeMark: 'la marca de la te hecha y sin mover',
  },
  R5: {
    ...tight,
    turns: 'vueltas suficientes más allá del apriete a mano',
    torque: 'firme, y no forzado',
    notCrossed: 'una rosca que entró bien',
    square: 'el tapón visto a escuadra y del todo dentro',
  },
  R6: {
    'fluid.tieIn': 'líquido detector en la unión con gas a la presión de la principal',
    'fluid.newPlug': 'líquido detector en el tapón superior nuevo con gas a la presión de la principal',
    'fluid.teeThread': 'líquido detector en la rosca de la te nueva con gas a la presión de la principal',
    continuous: 'un flujo continuo, lleno de gas durante un minuto',
    share: 'al menos 90 % de gas en el tubo de purga',
    list: 'la lista de reencendido del operador',
  },
});
