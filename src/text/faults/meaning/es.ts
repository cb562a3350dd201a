import type { MeaningWords } from './words.ts';

/** En qué queda una avería de tal tamaño en el trabajo que se tiene delante. */
export const spanishMeanings: MeaningWords = {
  byCost: {
    firstChamber: 'A la presión de la principal cuesta {first} por minuto en la prueba de la primera cámara.',
    secondChamber:
      'A la presión de la principal cuesta {second} por minuto en la prueba de la segunda cámara.',
    bothChambers:
      'A la presión de la principal cuesta {first} por minuto en la prueba de la primera cámara y {second} en la segunda.',
    looseJoint:
      'La junta aprieta {size} como mucho: eso cuesta {first} por minuto en la prueba de la primera cámara y {second} en la segunda.',
    plugPasses: 'Deja que la primera cámara, ya venteada, suba {rises} por minuto.',
    ballPasses: 'Deja que el espacio sobre la bola cerrada, ya venteado, suba {rises} por minuto.',
    gasLost: 'A la presión de la principal deja pasar {lost} de gas por hora.',
    holeLel:
      'Con el aire fresco del lugar, la excavación se queda en {lel} del límite inferior de explosividad.',
    drift:
      'Una cámara cerrada marca {pa} de diferencia a la presión de la principal cuando ha tomado el cambio.',
    hiss: 'Vaciar la acometida tarda {share} veces lo que dice su longitud.',
  },
  byFault: {
    bleedBlocked: 'Está tapado {size} de la abertura de la purga.',
    closingPlugBottoms: 'Toca fondo a {size} de apretado a mano.',
    coldRubber: 'El anillo y el obturador piden {size} más de apriete.',
    detectorFailsBump: 'Muestra {left} del gas que hay.',
    detectorReadsLow: 'Muestra {left} del gas que hay.',
    gaugeReadsLow: 'Marca {size} menos de lo que hay.',
    gaugeStuck: 'Su aguja se queda en {at}, haya lo que haya.',
    gaugeUnfit: 'Su escala llega hasta {at}.',
    hoseDrifts: 'Vuelve a la excavación {size} de lo que sale por la manguera.',
    hoseKinked: 'Queda {left} de la abertura de la manguera.',
    keeperStemLong: 'Al vástago le sobran {size}.',
    keeperStemShort: 'Al vástago le faltan {size}.',
    mainFalling: 'La principal baja hasta {main}.',
    mainOutOfRound: 'La principal está ovalada en {size}.',
    mainRisesAfterStop: 'La principal sube hasta {main}.',
    pipeSprings: 'Salta {size} al separarla.',
    plugRounded: 'La llave resbala desde {size}.',
    plugSeized: 'Pide {size} para soltarse.',
    pressureAboveRating: 'La principal está a {main}.',
    pressureAboveTag: 'La principal está a {main}.',
    regulatorCreep: 'La principal sube hasta {main}.',
    scaleUnderChain: 'Un lado de la cadena pierde {size} de recorrido por la cascarilla.',
    stillAir: 'Queda {left} del aire fresco del lugar.',
    strayVolts: 'Hay {size} entre los lados del corte.',
    teeSeized: 'Pide {size} para soltarse.',
    valveStiff: 'Su manija pide {size}.',
    waterInHole: 'Queda {left} del aire de la excavación.',
  },
};
