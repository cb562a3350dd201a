import type { FindingWords } from '../../../catalogue.ts';
import { degrees, turnsOf } from '../../../units.ts';
import { cleanPlaces, leakPlaces } from '../places.ts';
import { itemsOf, numberOf, piecesOf, seats, timesOf } from './shared.ts';

/** Seal, plug, valve and rod: how the work was done. */
export const techniqueFindings = {
  tensionUneven: {
    title: 'Cadena tensada de forma desigual',
    happened: (f) =>
      `Con la silla ${itemsOf(f, seats)}, izquierda y derecha de una cadena diferían en ${turnsOf(numberOf(f, 'apartTurns'))}; lo máximo es ${turnsOf(numberOf(f, 'limitTurns'))}.`,
    why: 'Una silla bajada por un lado se inclina, y su goma se abre por el otro.',
    next: 'Un poco de cada lado por turnos, e igual al final.',
  },
  notTapped: {
    title: 'Eslabones sin asentar, o sin volver a tensar',
    happened: (f) => `${numberOf(f, 'chains')} de las cadenas, silla ${itemsOf(f, seats)}.`,
    why: 'Eslabones y cascarilla asientan con la carga, y la tensión se va con ellos.',
    next: 'Asienta los eslabones a golpes y vuelve a tensar.',
  },
  chainOverloaded: {
    title: 'Cadena sobrecargada',
    happened: (f, { units }) =>
      `${units.force(numberOf(f, 'legForceN'))} en un ramal; lo máximo es ${units.force(numberOf(f, 'limitN'))}.`,
    why: 'Una cadena que se rompe suelta la silla.',
    next: 'Basta firme con la llave del equipo; sin tubo de palanca.',
  },
  chainLetGo: {
    title: 'Cadena soltada bajo presión',
    happened: (f, { units }) =>
      `Las cadenas se soltaron con ${units.pressure(numberOf(f, 'chamberGaugePa'))} en la cámara y ${units.force(numberOf(f, 'forceN'))} en ellas.`,
    why: 'La silla se levanta, el gas sale por todo el contorno y la cadena azota.',
    next: 'Las cadenas se aflojan al final, cuando está demostrado que aguanta el manguito o el tapón de retención.',
  },
  plugNotCracked: {
    title: 'Agarre del tapón sin romper',
    happened: () => 'El equipo se puso sobre un tapón superior que no se había movido.',
    why: 'Un tapón agarrotado se descubre tarde: con el equipo encima no llega ninguna llave.',
    next: 'Como mucho un octavo de vuelta atrás, contrallave en la te, y ajustar.',
  },
  plugNotSnugged: {
    title: 'Tapón sin volver a ajustar',
    happened: (f) => {
      const back = numberOf(f, 'turnsBack');
      const fluid = numberOf(f, 'looked') > 0 ? '' : ' y no se miró con líquido detector';
      return `El tapón estaba ${back > 0.02 ? `${turnsOf(back)} atrás` : 'como antes'}${fluid} cuando se puso la silla.`;
    },
    why: 'Un tapón que deja pasar alimenta la cámara y esconde una fuga en la prueba.',
    next: 'Ajústalo hasta que calle bajo el líquido detector.',
  },
  plugNotMarked: {
    title: 'Tapón sin marcar',
    happened: () => 'No había marca de pintura entre tapón y te antes de girarlo.',
    why: 'Sin marca nadie sabe cuánto ha girado.',
    next: 'Primero marca, luego gira.',
  },
  noHoldBack: {
    title: 'Sin contrallave',
    happened: (f) => `Se giró ${timesOf(f)} sin una segunda llave que sujete.`,
    why: 'Gira la rosca más floja, y puede ser la que tiene gas.',
    next: 'Siempre dos llaves: una para girar, otra para sujetar.',
  },
  wrongJointTurned: {
    title: 'Giró la unión equivocada',
    happened: (f, s) => `Giró la unión bajo ${piecesOf(f, s)}.`,
    why: 'Una unión bajo la bola que gira abre la cámara con gas.',
    next: 'Deja de girar, sujeta, ajústala, desfoga, marca y prueba.',
  },
  valveNotWorked: {
    title: 'Válvula sin accionar',
    happened: () => 'La válvula de aislamiento no se abrió y cerró antes de confiar en ella.',
    why: 'Después es la única pared. Una manija dura se descubre antes.',
    next: 'Ábrela, ciérrala, y entonces monta encima.',
  },
  valveOpenedQuickly: {
    title: 'Válvula abierta de golpe',
    happened: (f) => `Se abrió ${degrees(numberOf(f, 'turnedRad'))} de una vez, ${timesOf(f)}, bajo presión.`,
    why: 'La varilla recibe un golpe, y una unión mala de arriba no avisa.',
    next: 'Ábrela un poco, mira, y sigue.',
  },
  valveOpenedBleedOpen: {
    title: 'Válvula abierta con el desfogue abierto',
    happened: (f, { units }) =>
      `El desfogue estaba abierto ${degrees(numberOf(f, 'bleedOpenRad'))} con ${units.pressure(numberOf(f, 'differenceGaugePa'))} entre los dos lados de la válvula.`,
    why: 'Entonces la tubería principal sopla por el desfogue.',
    next: 'Desfogue cerrado antes de tocar la válvula.',
  },
  rodNotHeld: {
    title: 'Varilla sin sujetar',
    happened: (f, { units }) =>
      `La válvula se abrió ${timesOf(f)} sin nadie en la varilla, con ${units.pressure(numberOf(f, 'differenceGaugePa'))}.`,
    why: 'La presión empuja la varilla hacia arriba; a presión alta, vuela.',
    next: 'Sujeta la varilla, con la cara apartada, y abre la válvula poco a poco.',
  },
  rodThrown: {
    title: 'Varilla lanzada',
    happened: (f, { units }) =>
      `${units.force(numberOf(f, 'thrustN'))} a ${units.pressure(numberOf(f, 'pressureGaugePa'))} la lanzaron hacia arriba: ${units.energy(numberOf(f, 'energyJ'))}.`,
    why: 'Una varilla lanzada golpea a quien se inclina sobre ella.',
    next: 'Sujétala desde antes de abrir la válvula hasta después de cerrarla.',
  },
  newJointUnchecked: {
    title: 'Unión nueva sin mirar',
    happened: (f) =>
      `La unión del cilindro quedó sin líquido detector ${timesOf(f)}, de ${numberOf(f, 'of')}.`,
    why: 'Cada vez que se monta una pieza su unión es nueva, y ninguna prueba la cubre.',
    next: 'Abre un poco la válvula, líquido detector en la unión nueva, y sigue.',
  },
  noCrackCheck: {
    title: 'Sin segunda mirada al desfogue',
    happened: (f) =>
      `El cilindro se quitó ${timesOf(f)}, de ${numberOf(f, 'of')}, sin cerrar el desfogue y volver a abrirlo.`,
    why: 'Un desfogue abierto también calla con una válvula que deja pasar despacio.',
    next: 'Silencio, cerrar, esperar, abrir: sin soplo. Entonces se quita.',
  },
  overPumped: {
    title: 'Bombeo excesivo',
    happened: (f, { units }) =>
      `La cámara llegó a ${units.pressure(numberOf(f, 'highestGaugePa'))}; lo máximo es ${units.pressure(numberOf(f, 'limitGaugePa'))}.`,
    why: 'Más presión no prueba nada más, y guarda más para soltar.',
    next: 'Lee mientras bombeas; de una en una cerca del final.',
  },
  reliefLifted: {
    title: 'Abrió el alivio',
    happened: (f, { units }) => `El alivio abrió a ${units.pressure(numberOf(f, 'headGaugePa'))}.`,
    why: 'El alivio es el último guardián de la presión nominal, no un modo de encontrarla.',
    next: 'Deja de bombear bastante antes.',
  },
} as const satisfies Readonly<Record<string, FindingWords>>;

/** Stopper, cut, tee and closing plug. */
export const laterTechniqueFindings = {
  stopperTorque: {
    title: 'Obturador sin firmeza, o forzado',
    happened: (f, { units }) =>
      `Quedó a ${units.fingerTorque(numberOf(f, 'torqueNm'))}; firme es de ${units.fingerTorque(numberOf(f, 'lowNm'))} a ${units.fingerTorque(numberOf(f, 'highNm'))}.`,
    why: 'Con poco, se corre al abrir el desfogue; con demasiado, se rasga la goma.',
    next: 'Con los dedos hasta que esté firme, y otra vez cuando ceda la goma.',
  },
  stopperTorn: {
    title: 'Obturador rasgado',
    happened: () => 'La goma se rasgó bajo la varilla interior.',
    why: 'Un obturador rasgado no sella nada.',
    next: 'Para cuando esté firme. Sácalo y pon uno nuevo.',
  },
  stopperDepth: {
    title: 'Obturador a otra profundidad',
    happened: (f, { units }) =>
      `Su arandela estaba ${units.length(numberOf(f, 'belowPortM'))} bajo la derivación; lo correcto es de ${units.length(numberOf(f, 'lowM'))} a ${units.length(numberOf(f, 'highM'))}.`,
    why: 'La goma junto a la derivación se abomba hacia ella y la acometida sigue recibiendo gas.',
    next: 'Mide hasta el borde inferior interno de la derivación, y deja que el collarín pare la varilla.',
  },
  stopperSlipped: {
    title: 'El obturador se deslizó',
    happened: (f, { units }) =>
      `Se deslizó ${units.length(numberOf(f, 'byM'))}: ${units.force(numberOf(f, 'thrustN'))} empujaban, ${units.force(numberOf(f, 'holdsN'))} sujetaban.`,
    why: 'Lo que se desliza un poco sigue deslizándose.',
    next: 'Paso seco, apriete firme, tapón de retención encima.',
  },
  stopperLost: {
    title: 'Obturador perdido en la tubería principal',
    happened: () => 'El obturador cayó en la tubería principal.',
    why: 'Viaja, y puede acabar en la válvula de alguien.',
    next: 'Cierra y avisa; el trabajo no está completo.',
  },
  depthNotMeasured: {
    title: 'Profundidad sin medir',
    happened: (f) =>
      `${numberOf(f, 'lengthsTaken')} de cuatro medidas tomadas, collarín de profundidad ${numberOf(f, 'collarClamped') > 0 ? 'fijado' : 'sin fijar'}.`,
    why: 'El cubo por fuera está más bajo que la derivación por dentro: el ojo se engaña.',
    next: 'Toma las cuatro medidas, súmalas y fija el collarín.',
  },
  cutStopUnproved: {
    title: 'Corte con la obturación sin probar',
    happened: (f, { units }) =>
      `La sierra entró con ${units.pressure(numberOf(f, 'pressureGaugePa'))} en la derivación y sin prueba de la obturación.`,
    why: 'Si el obturador deja pasar, la tubería principal sopla por el corte.',
    next: 'Desfogue, silencio, cerrar, sin soplo: luego el tapón de retención, luego el orificio piloto, luego el corte.',
  },
  pipeUnsupported: {
    title: 'Tubo sin apoyar',
    happened: () => 'La derivación se cortó con el tubo colgando.',
    why: 'Un tubo en tensión salta en el corte.',
    next: 'Primero apoya los dos lados, y apártate.',
  },
  edgesNotFiled: {
    title: 'Bordes sin limar',
    happened: () => 'La junta de copa pasó sobre bordes serrados.',
    why: 'Una rebaba corta la goma al pasar.',
    next: 'Redondea los bordes con la lima.',
  },
  teeNotSnugged: {
    title: 'Te sin volver a ajustar',
    happened: (f) => `La te estaba ${turnsOf(numberOf(f, 'turnsBack'))} atrás cuando se puso la silla.`,
    why: 'Una rosca floja alimenta la segunda cámara y estropea su prueba.',
    next: 'Rompe su agarre, como mucho un octavo de vuelta, y ajústala otra vez.',
  },
  couplingUnchecked: {
    title: 'Rosca y soldadura sin mirar',
    happened: (f) => `Sin líquido detector después de romper el agarre en: ${itemsOf(f, leakPlaces)}.`,
    why: 'Romper el agarre fuerza una soldadura vieja; con la silla puesta ya no se ve.',
    next: 'Líquido detector en rosca y soldadura antes de poner la junta.',
  },
  boltsUneven: {
    title: 'Tornillos del collar desiguales',
    happened: (f) =>
      `Los tornillos diferían en ${turnsOf(numberOf(f, 'apartTurns'))}; lo máximo es ${turnsOf(numberOf(f, 'limitTurns'))}.`,
    why: 'Un collar desigual pellizca la junta.',
    next: 'Un poco cada uno por turnos, e igual al final.',
  },
  valveNotCapped: {
    title: 'Válvula sin tapa',
    happened: () => 'Con el manguito abierto debajo, la válvula quedó sin su tapa.',
    why: 'Entonces el asiento de la bola es todo lo que hay entre la tubería principal y la excavación.',
    next: 'La tapa en la válvula siempre que no haya otra cosa.',
  },
  threadNotFound: {
    title: 'Rosca sin buscar primero',
    happened: () => 'El tapón de cierre se enroscó sin girar atrás para encontrar la rosca.',
    why: 'Un tapón cruzado se traba pronto, rezuma y ya no se puede sacar.',
    next: 'Gira atrás hasta que caiga, y luego adentro.',
  },
  facesNotCleaned: {
    title: 'Caras sin limpiar',
    happened: (f) => `Sin limpiar antes de usar: ${itemsOf(f, cleanPlaces)}.`,
    why: 'El óxido bajo la goma fuga, y la cascarilla bajo la cadena cede.',
    next: 'Metal desnudo y sano bajo cada sello y cada cadena.',
  },
  coachAsked: {
    title: 'Se preguntó a la guía',
    happened: (f) =>
      `Se preguntó a la guía ${timesOf(f)}; este ejercicio resta ${numberOf(f, 'each')} puntos por cada vez.`,
    why: 'Una cuadrilla que tiene que preguntar qué sigue dentro de la excavación aún no conoce el trabajo.',
    next: 'Practica hasta que salga sin preguntar.',
  },
} as const satisfies Readonly<Record<string, FindingWords>>;
