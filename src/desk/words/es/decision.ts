import type { decision as english } from '../en/decision.ts';

export const decision: Readonly<Record<keyof typeof english, string>> = {
  'decision.title': 'Decidir sobre esta ejecución',
  'decision.notBelieved':
    'Esta ejecución no se puede creer tal como está, así que no se puede dar nada por demostrado con ella.',
  'decision.name': 'Nombre de quien evalúa',
  'decision.role': 'Cargo de quien evalúa',
  'decision.individual': 'Persona evaluada',
  'decision.task': 'Tarea cubierta',
  'decision.method':
    'Método: simulación. Un simulador entrena y puede ser una parte de una evaluación; no cualifica a nadie. El programa escrito de la operadora decide para qué vale este registro.',
  'decision.what': 'Decisión',
  'decision.demonstrated': 'Demostrado',
  'decision.demonstratedMeans': 'La tarea se mostró aquí, en simulación.',
  'decision.notYet': 'Todavía no demostrado',
  'decision.notYetMeans': 'Antes, más práctica; se acepta otra ejecución.',
  'decision.notAccepted': 'Ejecución no aceptada',
  'decision.notAcceptedMeans': 'La ejecución no puede servir de evidencia de nada.',
  'decision.validity': 'Validez',
  'decision.counts': 'Vale por un tiempo, según el programa de la operadora',
  'decision.from': 'Desde',
  'decision.until': 'Hasta',
  'decision.abnormal': 'Condiciones anormales vistas y atendidas',
  'decision.abnormalWhat':
    'Empieza con lo que encontró la máquina. Diga de cada condición de esta ejecución si se vio y se atendió.',
  'condition.none': 'no está en esta ejecución',
  'condition.answered': 'vista y bien atendida',
  'condition.unanswered': 'vista, mal atendida',
  'condition.unseen': 'no vista',
  'decision.replaces':
    'Tu decisión sobre esta ejecución está en pie. No se cambia nunca: esta será un registro nuevo que se refiere a ella.',
  'decision.beside': 'Otro evaluador ha decidido sobre esta ejecución. La tuya quedará junto a la suya.',
  'decision.why': 'Por qué ya no vale la decisión anterior',
  'decision.carries':
    'El registro lleva {aside} hallazgos sin efecto, {added} añadidos y {notes} notas, y al lado el juicio de la máquina.',
  'decision.sign': 'Decidir y refrendar',
  'decision.cannotStand': 'Así no puede quedar: {why}',
  'decision.notSigned': 'No se firmó ni se guardó: {why}',

  'decided.by': '{name}, {role}, el {when}',
  'decided.countsNot': 'no vale por ningún tiempo',
  'decided.counts': 'del {from} al {until}',
  'decided.keep': 'Se conserva hasta',
  'decided.replaces': 'Ocupa el lugar de la decisión {digest}: {why}',
  'decided.replaced': 'Una decisión posterior ocupa el lugar de esta.',
  'decided.checking': 'Comprobando la firma …',
  'decided.soundHere':
    'El refrendo encaja: firmado con la clave de esta instalación, sin cambios desde entonces.',
  'decided.soundElsewhere': 'El refrendo encaja con la clave {key}…, que no es la de esta instalación.',
  'decided.unsound': 'El refrendo no encaja: este registro se cambió después de firmarlo.',
  'decided.digest': 'Huella del registro',
  'decided.save': 'Guardar esta decisión en un archivo',

  'proof.title': 'Qué demuestra un refrendo',
  'proof.link': 'Qué demuestra el refrendo y qué no',
  'proof.what':
    'Decidir sobre una ejecución escribe un registro y lo firma con una clave que este navegador creó y guarda. La clave no se puede leer ni copiar; solo puede firmar.',
  'proof.proves': 'Demuestra',
  'proof.yes1': 'que el registro está exactamente como cuando se firmó, hasta la última letra;',
  'proof.yes2': 'que se firmó en el navegador que tiene la clave de abajo, y en ningún otro;',
  'proof.yes3':
    'de qué ejecución trata: el registro nombra la huella de ese archivo, así que otro archivo no encaja.',
  'proof.provesNot': 'No demuestra',
  'proof.no1': 'quién estaba al teclado: el nombre y el cargo son lo que alguien escribió;',
  'proof.no2': 'quién realizó la ejecución: el archivo dice un nombre y nadie lo comprobó;',
  'proof.no3': 'cuándo se firmó: la hora es la del reloj de este equipo;',
  'proof.no4':
    'que alguien esté cualificado: una simulación entrena, y el programa escrito de la operadora decide qué vale;',
  'proof.no5':
    'nada una vez borrados los datos de este navegador: entonces la clave desaparece, y las firmas viejas solo muestran que van juntas.',
  'proof.key': 'Clave pública de esta instalación',
  'proof.keyWhat':
    'Apúntela en otro lugar. Quien la tenga puede comprobar cada decisión firmada aquí, con cualquier herramienta que conozca Ed25519 (RFC 8032).',
  'proof.noKey': 'Ninguna: este navegador no pudo crear una clave.',
  'proof.heldByPage':
    'Este navegador no tiene Ed25519 propio, así que la clave queda legible en su almacenamiento. Aquí no vale el segundo punto de arriba: quien pueda leer ese almacenamiento puede firmar.',
  'proof.check': 'Comprobar un archivo de decisión',
  'proof.checkWhat': 'La firma cubre el texto JSON canónico del registro (RFC 8785) sin la firma misma.',
  'proof.choose': 'Elegir un archivo de decisión',
  'proof.fits': 'La firma encaja. Clave {key}…, {name}, el {when}.',
  'proof.fitsNot': 'La firma no encaja: este archivo no está como se firmó.',
  'proof.noDecision': 'Esto no es un archivo de decisión: {why}',
};
