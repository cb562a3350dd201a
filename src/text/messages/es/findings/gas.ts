import { duration, percent } from '../../../units.ts';
import type { GasFinding } from '../../en/findings/gas.ts';
import type { FindingWords } from '../../../catalogue.ts';
import { of } from '../grammar.ts';
import { numberOf, piecesOf, timesOf } from './shared.ts';

const BURNS = 'Gas en la excavación es aire que puede arder y aire que no se puede respirar.';

export const gasFindings: Readonly<Record<GasFinding, FindingWords>> = {
  gasToHole: {
    title: 'Gas soltado en la excavación',
    happened: (f, { units }) =>
      `${units.mass(numberOf(f, 'toHoleKg'))} de gas fueron a la excavación; las piezas del equipo por sí solas dejan hasta ${units.mass(numberOf(f, 'partsLeaveKg'))}.`,
    why: BURNS,
    next: 'Desfoga cada espacio por la manguera hasta el silencio, y mira que nada vuelva, antes de abrirlo.',
  },
  largePuff: {
    title: 'Un soplo grande',
    happened: (f, { units }) =>
      `${units.mass(numberOf(f, 'puffKg'))} salieron en un solo soplo; más de ${units.mass(numberOf(f, 'limitKg'))} estaban bajo presión.`,
    why: 'Un soplo de ese tamaño va a la cara de quien abrió la unión.',
    next: 'Primero desfoga, espera, abre otra vez el desfogue: sin soplo. Entonces abre.',
  },
  lowAlarm: {
    title: 'Alarma de gas baja',
    happened: (f) =>
      `El aire de la excavación llegó al ${percent(numberOf(f, 'peakLelShare'))} del LIE y pasó ${duration(numberOf(f, 'overAlarmS'))} por encima del nivel bajo.`,
    why: BURNS,
    next: 'Busca de dónde viene y páralo; deja que el aire se limpie antes de seguir.',
  },
  highAlarm: {
    title: 'Alarma de gas alta',
    happened: (f) =>
      `El aire de la excavación llegó al ${percent(numberOf(f, 'peakLelShare'))} del LIE; el nivel alto es ${percent(numberOf(f, 'alarmLelShare'))}.`,
    why: `${BURNS} La media de la excavación esconde lo que hay cerca de la fuga.`,
    next: 'Fuera, contra el viento, primero las personas. Luego cierra lo que se pueda cerrar desde donde es seguro.',
  },
  flammableHole: {
    title: 'Aire inflamable en la excavación',
    happened: (f, { units }) =>
      `El aire podía arder: ${percent(numberOf(f, 'lelShare'))} del LIE de media, hasta ${units.distance(numberOf(f, 'nearReachM'))} de la fuga.`,
    why: 'Desde aquí basta una chispa: una herramienta, un teléfono, el clavo de una bota.',
    next: 'Mantén contenido en todo momento el paso con gas; sal con la alarma alta.',
  },
  flammableAtSource: {
    title: 'Aire inflamable con una fuente presente',
    happened: (f, { units }) =>
      `Inflamable hasta ${units.distance(numberOf(f, 'nearReachM'))}, ${percent(numberOf(f, 'lelShare'))} del LIE de media, con una fuente de ignición sin retirar.`,
    why: 'Gas y una fuente juntos son un incendio que todavía no ha ocurrido.',
    next: 'Retira todas las fuentes antes de la primera llave, y mantenlas fuera.',
  },
  gasIgnited: {
    title: 'El gas se prendió',
    happened: (f) => `Se prendió con ${percent(numberOf(f, 'lelShare'))} del LIE.`,
    why: 'Una cuadrilla dentro de la excavación no tiene tiempo de salir.',
    next: 'Ninguna fuente cerca de la excavación; nada se abre sin desfogar.',
  },
  airIntoMain: {
    title: 'Aire empujado a la tubería principal',
    happened: (f, { units }) =>
      `${units.mass(numberOf(f, 'airKg'))} de aire entraron en la tubería principal, más de ${units.mass(numberOf(f, 'limitKg'))}.`,
    why: 'El aire viaja por la tubería principal como un tapón y apaga llamas, o está él mismo cerca de arder.',
    next: 'Ventea la prueba antes de abrir nada de lo de abajo.',
  },
  bledIntoHole: {
    title: 'Desfogado en la excavación',
    happened: (f, { units }) =>
      `El desfogue se abrió ${timesOf(f)} con su manguera en la excavación, la primera vez con ${units.pressure(numberOf(f, 'aboveGaugePa'))}.`,
    why: 'El desfogue está para llevar el gas lejos de la cuadrilla, no hacia ella.',
    next: 'Lleva la manguera afuera, a favor del viento y sobre el suelo, antes del primer desfogue.',
  },
  openedUnderPressure: {
    title: 'Abierto bajo presión',
    happened: (f, s) => {
      const what =
        f.items.length === 0
          ? 'La válvula se abrió sin nada encima'
          : `La retirada ${of(piecesOf(f, s))} se hizo`;
      const thrust = numberOf(f, 'thrustN');
      const push = thrust > 0 ? `, que empujaban con ${s.units.force(thrust)}` : '';
      return `${what} con ${s.units.pressure(numberOf(f, 'pressureGaugePa'))} detrás${push}.`;
    },
    why: 'Lo que se suelta bajo presión sale lanzado a la cara de quien lo sujeta, y el gas va detrás.',
    next: 'Válvula cerrada, desfogado hasta el silencio, cerrado, espera, abierto otra vez: sin soplo. Solo entonces se quita, con la cara apartada.',
  },
  plugOutOpen: {
    title: 'Tapón superior fuera, al aire',
    happened: (f, { units }) =>
      `El tapón superior se soltó con ${units.pressure(numberOf(f, 'differenceGaugePa'))} debajo y nada encima; ${units.force(numberOf(f, 'thrustN'))} sobre el tapón.`,
    why: 'Entonces todo el paso de la te sopla a la excavación, y el tapón es un proyectil.',
    next: 'Más allá de un octavo de vuelta, el tapón solo se gira dentro de la cámara probada.',
  },
  teeOutOpen: {
    title: 'Te fuera, al aire',
    happened: (f, { units }) =>
      `La te se soltó sin nada encima; la lanzaron ${units.force(numberOf(f, 'thrustN'))}.`,
    why: 'Entonces el manguito sopla libre; no queda nada que cerrar salvo la tubería principal.',
    next: 'Más allá de un octavo de vuelta, la te solo se gira dentro de la segunda cámara, probada.',
  },
};
