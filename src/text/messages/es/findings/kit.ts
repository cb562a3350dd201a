import type { FindingWords } from '../../../catalogue.ts';
import { percent } from '../../../units.ts';
import { conditions } from '../conditions.ts';
import { endingItems } from '../evidence.ts';
import { to } from '../grammar.ts';
import { itemsOf, numberOf, piecesOf, timesOf } from './shared.ts';

export const kitFindings = {
  wrongSize: {
    title: 'Tamaño equivocado',
    happened: (f, s) => `Se usó ${piecesOf(f, s)}, que no es del tamaño que pide este trabajo.`,
    why: 'Una pieza de otro tamaño no sella nada, o se suelta cuando hace falta.',
    next: 'Elige cada pieza por su grabado y compárala con la obra.',
  },
  unfitUsed: {
    title: 'Pieza no apta usada',
    happened: (f, s) =>
      `Se usó ${piecesOf(f, s)} en mal estado, ${numberOf(f, 'looked') > 0 ? 'aunque se había revisado' : 'y no se había revisado'}.`,
    why: 'Un defecto que el ojo encuentra en el banco lo encuentra si no el gas en la excavación.',
    next: 'Revisa cada pieza; aparta la dudosa y toma otra.',
  },
  usedUninspected: {
    title: 'Usada sin mirar',
    happened: (f, s) => `Sin revisar antes de usarse: ${piecesOf(f, s)}.`,
    why: 'Nadie sabe qué le pasa a una pieza que nadie miró.',
    next: 'Revisa todas las piezas antes de empezar el trabajo.',
  },
  noCradleBlocks: {
    title: 'Faltaron los calzos',
    happened: (f) => `Calzos bajo la tubería principal: ${numberOf(f, 'blocks')} de 2.`,
    why: 'Alrededor de una tubería pequeña la cadena no tiene dónde apoyar y la silla se balancea.',
    next: 'Un calzo del tamaño de la tubería principal bajo cada cadena.',
  },
  noSealant: {
    title: 'Tapón de cierre sin sellador',
    happened: (f, s) => `Se enroscó en seco ${piecesOf(f, s)}.`,
    why: 'Una rosca cónica en seco rezuma; esta se queda enterrada.',
    next: 'Da sellador al tapón antes de ponerlo en el dado.',
  },
  sealantOnRubber: {
    title: 'Sellador sobre goma',
    happened: (f, s) => `Se dio sellador de roscas ${to(piecesOf(f, s))}.`,
    why: 'El sellador hace que la goma resbale y se hinche.',
    next: 'El sellador es para roscas. La goma va limpia y seca.',
  },
} as const satisfies Readonly<Record<string, FindingWords>>;

export const abnormalFindings = {
  wentOnAboveRating: {
    title: 'Se siguió por encima de la presión nominal',
    happened: (f, { units }) =>
      `El trabajo siguió con la principal a ${units.pressure(numberOf(f, 'mainGaugePa'))}; la nominal es ${units.pressure(numberOf(f, 'ratingGaugePa'))}.`,
    why: 'Por encima de su presión nominal no está demostrado que aguante nada del equipo.',
    next: 'Para y devuelve el trabajo. Es el final correcto de un trabajo así.',
  },
  wentOnBossBeyondUse: {
    title: 'Se siguió con un resalte inservible',
    happened: () => 'La silla se puso sobre un resalte en el que ningún anillo puede sellar.',
    why: 'El primer sello del trabajo sería el más débil, con el paso abierto debajo.',
    next: 'Limpia, mira, y si es inservible para y devuelve el trabajo.',
  },
  abnormalNotNoticed: {
    title: 'No advertido',
    happened: (f) =>
      `Empezó un trabajo al que esto pone en peligro, sin haberlo advertido: ${itemsOf(f, conditions)}.`,
    why: 'Una cuadrilla que no lo busca trabaja como si todo estuviera bien.',
    next: 'Haz completas las lecturas y miradas de la preparación; cada una está para una de estas cosas.',
  },
  abnormalWrongReaction: {
    title: 'Advertido, pero sin respuesta',
    happened: (f) => `Se mostró y el trabajo siguió: ${itemsOf(f, conditions)}.`,
    why: 'Verlo es la mitad; la otra mitad es parar.',
    next: 'Para en el estado seguro más cercano y resuélvelo, o devuelve el trabajo.',
  },
  workedInAlarm: {
    title: 'Se trabajó con la alarma',
    happened: (f) =>
      `Se siguió trabajando ${timesOf(f)} con la alarma alta, ${percent(numberOf(f, 'lelShare'))} del LIE al empezar.`,
    why: 'La alarma alta significa que el aire va camino de arder.',
    next: 'Fuera, contra el viento, primero las personas. Vuelve cuando el aire esté bueno.',
  },
  needlessStop: {
    title: 'Parado sin causa a la vista',
    happened: () => 'Se paró el trabajo, pero nada de lo leído o visto desaconsejaba seguir.',
    why: 'Un cliente y una tubería principal esperan un trabajo que se pudo terminar.',
    next: 'Para siempre que dudes, y di lo que viste.',
  },
} as const satisfies Readonly<Record<string, FindingWords>>;

export const endingFindings = {
  stoppedUnsafe: {
    title: 'Parado en un estado inseguro',
    happened: (f) => `Cuando se paró el trabajo, ${itemsOf(f, endingItems)}.`,
    why: 'Parar significa llegar antes al estado seguro más cercano.',
    next: 'Ve al estado seguro más cercano, atrás o adelante, y solo entonces vete.',
  },
  completedUndone: {
    title: 'Entregado sin terminar',
    happened: (f) => `El trabajo se entregó como completo, pero ${itemsOf(f, endingItems)}.`,
    why: 'Una acometida que queda conectada, abierta o sin sellar no está abandonada.',
    next: 'Termina todos los pasos, o para y di lo que falta.',
  },
  thrown: {
    title: 'Alguien habría salido herido',
    happened: (f) => `El ejercicio terminó: ${itemsOf(f, endingItems)}.`,
    why: 'La presión no espera. En el campo el día acaba aquí, y no bien.',
    next: 'Averigua qué hay detrás de cada unión antes de acercar la mano.',
  },
} as const satisfies Readonly<Record<string, FindingWords>>;
