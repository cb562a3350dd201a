import type { Catalogue } from '../../catalogue.ts';
import * as renewal from './renewal.ts';

export const stages: Catalogue['stages'] = {
  ...renewal.stages,
  s1: {
    title: 'Preparar',
    aim: 'Conocer el trabajo, la acometida y la presión; hacer de la excavación un sitio donde trabajar.',
  },
  s2: {
    title: 'Sellar sobre la te',
    aim: 'Metal desnudo, el anillo del tamaño de la te, la silla derecha y bajada por igual, la válvula encima.',
  },
  s3: {
    title: 'Probar la primera cámara',
    aim: 'Demostrar que nada fuga antes de abrir nada, incluido el propio asiento de la válvula.',
  },
  s4: {
    title: 'Sacar el tapón superior',
    aim: 'Subir el tapón por la válvula abierta, encerrarlo, desfogar, y solo entonces quitar el cilindro.',
  },
  s5: { title: 'Mirar por el paso', aim: 'Ver que el paso inferior está limpio para el obturador.' },
  s6: {
    title: 'Obturar el paso',
    aim: 'Poner el obturador bajo la derivación, apretarlo y demostrar con el desfogue que la acometida está muerta.',
  },
  s7: {
    title: 'Asegurar la obturación',
    aim: 'Poner el tapón de retención sobre el obturador para que nada lo expulse, y quitar el equipo.',
  },
  s8: {
    title: 'Separar la acometida',
    aim: 'Cortar la acometida muerta, recortar la te hasta que pase, purgar y tapar lo que queda.',
  },
  s9: {
    title: 'Sellar sobre el manguito',
    aim: 'Junta y collar alrededor del manguito, la silla encima, y la segunda cámara probada.',
  },
  s10: {
    title: 'Sacar la te',
    aim: 'Desenroscar la te por su tapón de retención y subirla por el equipo.',
  },
  s11: {
    title: 'Cerrar el manguito',
    aim: 'Poner el tapón de cierre, firme y sin forzar, y demostrar que aguanta.',
  },
  s12: {
    title: 'Probar y entregar',
    aim: 'Probar las fugas de lo que queda enterrado, repararlo todo y anotar lo que de verdad se leyó.',
  },
  done: { title: 'Terminado', aim: 'No queda nada pendiente.' },
};

export const holdPoints: Catalogue['holdPoints'] = {
  ...renewal.holdPoints,
  H1: {
    title: 'Listo para empezar',
    guards: 'la primera llave en tapón o te',
    evidence: [
      'La principal leída en un manómetro con el cero comprobado: dentro de la nominal y cerca de la orden; el segundo manómetro coincide',
      'Cliente cortado y etiquetado, sin gas por otro lado',
      'Resalte, manguito, pared y envoltura mirados',
      'Detector probado con gas patrón; aire por debajo del 10 % del LIE y con oxígeno suficiente',
      'Extintor, salida y entibación según la profundidad; la manguera de desfogue termina fuera de la excavación',
      'Localizado el cierre de la tubería principal; aviso al control de gas',
      'Revisadas todas las piezas que se usarán',
    ],
  },
  H2: {
    title: 'Primera cámara probada',
    guards: 'girar el tapón superior más de 1/8 de vuelta desde su marca',
    evidence: [
      'Primero una etapa baja, luego la presión de la principal y no más de 5 psi por encima, válvula abierta, venteo y bomba cerrados',
      'Estabilizada y luego cinco minutos sin rellenar y sin caída apreciable',
      'Líquido detector en asiento, unión de la válvula y cabezal: sin burbujas',
      'Asiento de la válvula probado: la lectura vuelve a lo que dicen los volúmenes',
      'Venteada, cerrada y observada dos minutos: sin subida',
    ],
  },
  H3: {
    title: 'Paso visto',
    guards: 'bajar el obturador más allá de la bola',
    evidence: [
      'Se miró por la tapa con mirilla y la lámpara después de sacar el tapón, válvula abierta del todo: paso limpio',
    ],
  },
  H4: {
    title: 'Acometida obturada',
    guards: 'soltar el obturador, y el tapón de retención',
    evidence: [
      'El desfogue primero siseó y luego calló',
      'Abierto y en silencio un minuto; el obturador ajustado otra vez cuando cedió la goma',
      'Dos minutos cerrado con la varilla sujeta, abierto otra vez: sin soplo',
    ],
  },
  H5: {
    title: 'Obturador colocado',
    guards: 'el tapón de retención',
    evidence: [
      'Desfogado, y visto por la mirilla: derecho, bajo la derivación, seco',
      'Al menos un minuto de silencio con el desfogue abierto antes de poner el tapón de retención',
    ],
  },
  H6: {
    title: 'Obturación asegurada',
    guards: 'cualquier corte',
    evidence: [
      'Tapón de retención del tamaño de la te, apretado al par de la empresa con contrallave, y marcado',
      'Válvula abierta, desfogado, cerrado y sin soplo antes de quitar el equipo',
      'Líquido detector en el tapón de retención: sin burbujas',
    ],
  },
  H7: {
    title: 'Muerta en el corte',
    guards: 'cortar más allá del orificio piloto',
    evidence: [
      'La acometida correcta, identificada en ambos extremos; cable de puente sobre metal desnudo a ambos lados del corte',
      'Evidencia de la obturación de no más de media hora',
      'Un minuto en el orificio piloto sin flujo; aire por debajo del 10 % del LIE',
    ],
  },
  H8: {
    title: 'La te pasa, el equipo a mano',
    guards: 'romper el agarre de la te',
    evidence: [
      'El anillo calibrador pasa por la te recortada',
      'Extremo de la acometida tapado',
      'Junta y collar sobre metal liso, tornillos iguales; silla, cadenas y tapón a mano',
    ],
  },
  H9: {
    title: 'Segunda cámara probada',
    guards: 'girar la te más de 1/8 de vuelta desde su marca',
    evidence: [
      'Antes de bombear: dos minutos cerrada, sin subida',
      'Etapa baja, presión de la principal, estabilizada, cinco minutos de espera, líquido detector, prueba del asiento y venteo como en la primera cámara',
      'Nunca más de 5 psi sobre la principal; la marca del tapón de retención sin moverse',
    ],
  },
  H10: {
    title: 'Listo para abrir el manguito',
    guards: 'girar la te más de 3 vueltas atrás',
    evidence: [
      'Tapón de cierre del tamaño con sellador, tapón de repuesto y tapa de la válvula a mano',
      'Dos personas en la excavación; la principal leída otra vez y dentro de la nominal; aire por debajo del 10 % del LIE',
    ],
  },
  H11: {
    title: 'Manguito cerrado',
    guards: 'aflojar las cadenas o abrir el equipo',
    evidence: [
      'La rosca del manguito vista antes',
      'Tapón apretado a mano y luego las vueltas debidas, firme y sin forzar',
      'Válvula abierta, desfogue en silencio un minuto, dos minutos cerrado, abierto: sin soplo',
      'Visto por la tapa con mirilla: derecho y del todo dentro',
    ],
  },
  H12: {
    title: 'Entregado',
    guards: 'tapar y cerrar el registro',
    evidence: [
      'Líquido detector un minuto en tapón, manguito, soldadura y extremo cortado, a la presión de la principal: sin burbujas',
      'Detector a cero en la excavación y junto a ella',
      'Acometida desconectada, purgada y sellada',
      'Revestimiento reparado, puente quitado, registro escrito con lo que de verdad se leyó',
    ],
  },
};

export const safeStates: Catalogue['safeStates'] = {
  nothingOpened: 'Todavía no hay nada abierto: déjalo como está.',
  plugSnuggedRigOff: 'Tapón superior ajustado y callado bajo el líquido detector, equipo fuera.',
  plugBackBleedTested:
    'El tapón superior, o uno nuevo, otra vez dentro y probado con el desfogue; hasta entonces, la válvula tapada y vigilada.',
  stopperOutPlugIn: 'Obturador sujeto en su portaobturador, o sacado y el tapón superior otra vez dentro.',
  keeperInAttended: 'Tapón de retención dentro; vigilado, y no se deja de noche.',
  stubCappedKeeperIn: 'Tapón de retención dentro, el muñón tapado. La acometida no vuelve al servicio.',
  teeSnuggedRigCapped: 'Te ajustada, con el equipo encima y tapado como contención.',
  closingPlugIn:
    'Solo hacia delante: tapón de cierre dentro. Hasta entonces, el equipo tapado y vigilado, y la tubería principal cerrada si hace falta.',
  newTeeInKeeperIn:
    'Te nueva puesta con su obturador y su tapón de retención, la derivación tapada o unida a una línea sin gas; vigilada.',
  newPlugIn: 'Tapón superior nuevo puesto y en silencio; hasta entonces, el equipo tapado y vigilado.',
  handBack: 'Todo probado y reparado: entregar.',
};

export const outcomes: Catalogue['outcomes'] = {
  held: { word: 'respetado', means: 'Firmado con la evidencia, antes del trabajo que protege.' },
  missed: { word: 'saltado', means: 'El trabajo que protege empezó sin firma.' },
  false: { word: 'en falso', means: 'Firmado sin la evidencia.' },
  misled: {
    word: 'engañado',
    means:
      'Firmado con buena evidencia; la verdad era otra y ninguna comprobación exigida podía mostrarlo. Sin culpa.',
  },
  notReached: { word: 'no alcanzado', means: 'La práctica no llegó hasta él.' },
};

export const headings: Catalogue['headings'] = {
  holdPoints: 'Puntos de control',
  gasControl: 'Control de gas',
  technique: 'Técnica',
  kit: 'Elección de piezas',
  abnormal: 'Condiciones anormales',
};

export const verdicts: Catalogue['verdicts'] = {
  pass: 'Aprobado',
  fail: 'No aprobado',
  critical: 'Suspenso: hallazgo crítico',
};

export const endings: Catalogue['endings'] = {
  complete: {
    title: 'Completo y probado',
    says: 'La acometida está cortada, la te fuera y el manguito cerrado.',
  },
  referred: {
    title: 'Parado, en estado seguro y devuelto',
    says: 'El trabajo se paró en un estado seguro y se dio el motivo.',
  },
  isolated: {
    title: 'Asegurado por aislamiento',
    says: 'Se despejó la excavación y se cerró la tubería principal en sus válvulas.',
  },
  hurt: { title: 'Terminado por daño', says: 'En el campo alguien habría salido herido aquí.' },
  none: {
    title: 'Sin terminar',
    says: 'La práctica se detiene antes de entregar o devolver el trabajo.',
  },
};
