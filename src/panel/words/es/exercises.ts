import type { ExerciseWords } from '../exercise.ts';

/** What the shipped exercises tell of themselves, by id; one that is not here is shown as it was written. */
const briefs: Readonly<Record<string, string>> = {
  'abandon-1in-tee-on-4in-main':
    'La casa del fondo del patio se va a derribar. Su acometida se abandona en la te: obturar el paso, cortar la acometida, sacar la te a través del equipo y cerrar el manguito, con la tubería principal siempre en servicio. Todo está sano, corre un aire ligero y nadie tiene prisa.',
  'abandon-114in-tee-on-3in-main':
    'La acometida grande y vieja de la lavandería se retira. Su te es la mayor que admite este equipo, en una tubería principal pequeña para ella, y el almacén ha enviado dos anillos de asiento donde bastaba uno.',
  'abandon-114in-tee-on-4in-main':
    'La acometida de la panadería se abandona esta mañana. La orden es de la semana pasada y a la cuadrilla le han pedido rapidez.',
  'abandon-114in-tee-on-6in-main':
    'La sala de calderas de la escuela está vacía y su acometida se abandona. Es la te mayor y casi la presión más alta para la que vale el equipo: todo empuja más.',
  'abandon-1in-tee-on-10in-main':
    'La tubería principal va honda aquí, bajo lo que fue la vía del tranvía. La excavación pasa de cinco pies, le entra poco viento, y hay que pensar bien cómo se entra y cómo se sale.',
  'abandon-1in-tee-on-2in-main':
    'La granja está muy lejos del camino, así que hay 200 ft de acometida detrás de la te. Todo ese gas tiene que salir por un pequeño desfogue antes de que nadie pueda decir que el paso está obturado.',
  'abandon-1in-tee-on-6in-main':
    'Una acometida corta hasta una farola que ya nadie enciende. La excavación se abrió ayer, la tubería principal está desnuda salvo por su vieja envoltura, y hace buen día.',
  'abandon-1in-tee-on-8in-main':
    'Se ha derribado un taller junto a la puerta este. Las piezas para este trabajo las preparó el turno de noche; están todas en el tablero, con un repuesto de lo que más se gasta.',
  'abandon-34in-tee-on-112in-main':
    'La casa de bombas detrás del embalse pasó a otro suministro. Su te no se ha tocado desde que se tendió la tubería principal, y la presión aquí es de las más altas que usa el patio.',
  'abandon-34in-tee-on-114in-main':
    'Una casita vieja junto al muro del huerto lleva años sin gas, y su corta acometida sale de una tubería principal pequeña. Nada está mal en el trabajo, pero una cadena alrededor de un tubo tan delgado casi no tiene dónde apoyar, y cada pieza es una talla menor que las que más usa el patio.',
  'abandon-34in-tee-on-12in-main':
    'El calefactor de una parada de autobús se alimentaba de la tubería grande del camino del norte. La presión es baja, la tubería principal es grande y la te es la menor que hay.',
  'abandon-34in-tee-on-3in-main':
    'La te pasó cuarenta años en arcilla mojada junto al arroyo. La acometida se abandona como todas las de la fila, y las otras fueron bien.',
  'drill-prove-a-chamber':
    'La silla está sobre la te, las cadenas tensadas y la válvula de aislamiento puesta. Pruebe esta cámara: bombear, mirar con líquido detector, mantener, probar el asiento de la propia válvula, desahogar y observar. Firme cuando lo haya visto y entregue.',
  'drill-draw-the-plug':
    'La cámara está probada y firmada. Saque el tapón superior a través de la válvula, llévelo al banco sin un soplo en la cara de nadie y mire por el paso. Firme lo que vio y entregue.',
  'drill-stop-the-bore':
    'El tapón está fuera y el paso limpio. Mida para el obturador, colóquelo y demuestre por el desfogue que la acometida de detrás está muerta; son 200 ft. Mire el obturador, firme dos veces y entregue.',
  'drill-lock-the-stop':
    'El obturador está puesto y visto. Ponga encima el tapón de retención, escuche una vez más antes de quitar el equipo, apriételo como dice su ficha con dos llaves y márquelo. Firme y entregue.',
  'drill-part-the-service':
    'El cierre está asegurado y marcado. Demuestre que el ramal está muerto antes de que la sierra lo atraviese, separe la acometida, recorte la te hasta que pase el anillo calibrador y deje la acometida purgada y tapada. Firme y entregue.',
  'drill-seal-on-the-coupling':
    'La acometida ya no está y la te está recortada. Afloje su primer agarre y vuelva a ajustarla, selle sobre el manguito en una tubería principal tan delgada que necesita calzos, y pruebe la segunda cámara sin empujar el obturador hacia abajo. Firme y entregue.',
  'drill-draw-the-tee':
    'La segunda cámara está probada. Todo a mano; luego la te se desenrosca a través del equipo y el tapón de cierre entra detrás. Entre el último hilo de la te y el sello del tapón hay una sola pared y no hay vuelta atrás: siga hasta que esté cerrado.',
  'drill-hand-back':
    'El manguito está cerrado y el equipo fuera. Pruebe lo que queda en el suelo, despeje el aire, deje todo como estaba y escriba lo que de verdad se leyó: la cuadrilla anterior dejó sus cifras. Firme, cubra y entregue.',
  'fault-sizes':
    'Desaparece una fila de garajes y con ella su acometida. El tablero se llenó desde dos almacenes; cada tamaño va grabado.',
  'fault-faces':
    'La te alimentaba un horno de ladrillos y ha visto cuarenta inviernos húmedos. Hoy se abandona, en la tubería grande de poca presión.',
  'fault-kit':
    'Tres casitas junto a la presa no comparten más que el camino. La primera acometida se retira. Las piezas volvieron anoche de otra cuadrilla.',
  'fault-workpiece':
    'La curtiduría cerró hace mucho; su acometida sigue viva hasta la acera. El manguito parece tan bueno como cualquiera del patio.',
  'fault-system':
    'Una caseta de señales de la vieja línea tuvo calefactor. La etiqueta se escribió en verano.',
  'fault-site':
    'Se rehace la escalera de la cantera y antes se retira la acometida de debajo. Un generador zumba tras la valla.',
  'fault-several-first': 'La imprenta se muda y se lleva sus prensas. La acometida nos la deja.',
  'fault-several-second': 'El transbordador dejó de navegar y su sala de espera se cierra para siempre.',
  'fault-several-third':
    'El secadero de lúpulo es ahora un granero. Su acometida se descubre donde sale de una tubería pequeña con buena presión.',
  'fault-several-fourth':
    'El muelle del velero está seco y su sótano ya no se inunda. La tubería de debajo se tendió a mano.',
  'fault-early-first':
    'La casa del pozo tiene ahora su propia caldera. La tubería pasa junto a ella por suelo mojado.',
  'fault-early-second': 'El invernadero se calienta ahora de otro sitio. La zanja se abrió al amanecer.',
  'fault-early-third':
    'La caseta del peaje se fue con el peaje. Su farol cuelga de la tubería grande, que es baja, según dicen todos.',
  'renew-1in-tee-on-4in-main':
    'La acometida de la casita del patio es de acero viejo y desnudo. Se renueva desde el mismo manguito: sacar la te vieja, enroscar la te de renovación, probar sola la línea nueva, unirla, sacar tapón de retención y obturador, tapar, purgar y reencender. La tubería principal sigue siempre en servicio.',
  'renew-34in-tee-on-2in-main':
    'El calefactor de la portería recibe una línea nueva desde el manguito viejo. La tubería principal es pequeña y su presión baja: las cadenas piden sus calzos, y una línea nueva probada a 50 psig queda muy por encima de lo que la principal podría contrarrestar.',
  'renew-114in-tee-on-6in-main':
    'La caldera del horno está en una acometida vieja y grande que ha perdido su envoltura. Su línea nueva se prueba a 90 psig, porque la principal trabaja aquí por encima de 40, y todo en esta te empuja más.',
  'reconnect-1in-tee-on-4in-main':
    'La te de la acometida de la capilla rezuma por la rosca y se va a cambiar. La línea está sana y vuelve al uso: cortarla, purgarla, cambiar la te, probar la línea vieja como si fuera nueva, unirla y devolver el gas a la capilla.',
  'discontinue-1in-tee-on-4in-main':
    'La casa está vacía y quizá se alquile otra vez, o quizá no: en la oficina nadie quiso decirlo. La cuadrilla anterior creyó que bastaba un tapón en la acometida. La orden dice lo que se quiere.',
};

/** Lines that every order has, with their figures left as they stand. */
const lines: readonly (readonly [RegExp, string])[] = [
  [
    /^Abandon an? (\S+)-inch service tee on a live (\S+)-inch main(?:, (\d+) ft of service)?$/,
    'Abandonar una te de servicio de $1 in en una tubería principal de $2 in con gas',
  ],
  [
    /^Abandon an? (\S+)-inch service tee on a live (\S+)-inch main, bay (\d+)$/,
    'Abandonar una te de servicio de $1 in en una tubería principal de $2 in con gas, zona $3',
  ],
  [
    /^Drill: prove a chamber over a (\S+)-inch tee$/,
    'Ejercicio corto: probar una cámara sobre una te de $1 in',
  ],
  [
    /^Drill: draw the top plug of a (\S+)-inch tee$/,
    'Ejercicio corto: sacar el tapón superior de una te de $1 in',
  ],
  [/^Drill: stop the bore of a (\S+)-inch tee$/, 'Ejercicio corto: obturar el paso de una te de $1 in'],
  [/^Drill: lock the stop of a (\S+)-inch tee$/, 'Ejercicio corto: asegurar el obturador de una te de $1 in'],
  [
    /^Drill: part the service of a (\S+)-inch tee$/,
    'Ejercicio corto: separar la acometida de una te de $1 in',
  ],
  [
    /^Drill: seal over the coupling of a (\S+)-inch tee$/,
    'Ejercicio corto: sellar sobre el manguito de una te de $1 in',
  ],
  [
    /^Drill: draw a (\S+)-inch tee over a live coupling, and close it$/,
    'Ejercicio corto: sacar una te de $1 in de un manguito con gas y cerrarlo',
  ],
  [/^Drill: hand back after a (\S+)-inch tee$/, 'Ejercicio corto: entregar después de una te de $1 in'],
  [
    /^Renew an? (\S+)-inch service on a live (\S+)-inch main$/,
    'Renovar una acometida de $1 in en una tubería principal de $2 in con gas',
  ],
  [
    /^Put an? (\S+)-inch service back on a live (\S+)-inch main$/,
    'Reponer una acometida de $1 in en una tubería principal de $2 in con gas',
  ],
  [
    /^Take an? (\S+)-inch service out of use on a live (\S+)-inch main$/,
    'Retirar del uso una acometida de $1 in en una tubería principal de $2 in con gas',
  ],
  [
    /^Renew service at the main: NPS (\S+) tee in a welded coupling, NPS (\S+) steel main; renewal tee in the same coupling\.$/,
    'Renovar la acometida en la tubería principal: te NPS $1 en un manguito soldado, tubería principal de acero NPS $2; te de renovación en el mismo manguito.',
  ],
  [
    /^Change the tee at the main: NPS (\S+) tee in a welded coupling, NPS (\S+) steel main; renewal tee in the same coupling\.$/,
    'Cambiar la te en la tubería principal: te NPS $1 en un manguito soldado, tubería principal de acero NPS $2; te de renovación en el mismo manguito.',
  ],
  [
    /^Main pressure on the tag: (\d+) psig\. Rig and fittings rated (\d+) psig\. New service tested at (\d+) psig or more, alone, for fifteen minutes\.$/,
    'Presión de la principal en la etiqueta: $1 psig. Equipo y accesorios con presión nominal de $2 psig. La acometida nueva se prueba sola a $3 psig o más durante quince minutos.',
  ],
  [
    /^Main pressure on the tag: (\d+) psig\. Rig and fittings rated (\d+) psig\. The service, disconnected for the work, is tested at (\d+) psig or more, alone, for fifteen minutes\.$/,
    'Presión de la principal en la etiqueta: $1 psig. Equipo y accesorios con presión nominal de $2 psig. La acometida, desconectada para el trabajo, se prueba sola a $3 psig o más durante quince minutos.',
  ],
  [
    /^Old service: (\d+) ft of NPS (\S+) steel, to be abandoned\. New service: (\d+) ft of NPS (\S+) beside it\.$/,
    'Acometida vieja: $1 ft de acero NPS $2, que se abandona. Acometida nueva: $3 ft de NPS $4 a su lado.',
  ],
  [
    /^Service: (\d+) ft of NPS (\S+) steel, to be put back in use\.$/,
    'Acometida: $1 ft de acero NPS $2, que vuelve al uso.',
  ],
  [
    /^Chamber proofs held five minutes \(operator’s setting\)\. Keeper pulled to at least (\d+) N·m\.$/,
    'Pruebas de cámara de cinco minutos (ajuste de la empresa). Tapón de retención apretado al menos a $1 N·m.',
  ],
  [
    /^Purge outdoors to (\d+) % gas for a minute; relight by the operator’s list\.$/,
    'Purgar al aire libre hasta $1 % de gas durante un minuto; reencender según la lista de la empresa.',
  ],
  [
    /^A stop left in a connected service is not what this order asks for\.$/,
    'Un obturador dejado en una acometida conectada no es lo que pide esta orden.',
  ],
  [/^Harrow Vale Gas, training yard$/, 'Harrow Vale Gas, patio de prácticas'],
  [/^Yard bay (\d+), (.+)$/, 'Zona $1 del patio, $2'],
  [
    /^Abandon service at the main: NPS (\S+) malleable street tee in a welded coupling, NPS (\S+) steel main\.$/,
    'Abandonar la acometida en la tubería principal: te de servicio maleable NPS $1 en un manguito soldado, tubería principal de acero NPS $2.',
  ],
  [
    /^Main pressure on the tag: (\d+) psig\. Rig and fittings rated (\d+) psig\.$/,
    'Presión de la principal en la etiqueta: $1 psig. Equipo y accesorios con presión nominal de $2 psig.',
  ],
  [
    /^Service: (\d+) ft of NPS (\S+) steel, customer off at the curb valve and meter stop\.$/,
    'Acometida: $1 ft de acero NPS $2, cliente cortado en la válvula de acera y en la llave del medidor.',
  ],
  [
    /^Kit’s card for NPS (\S+): stopper firm at (\d)\.(\d) to (\d)\.(\d) N·m; keeper pulled to at least (\d+) N·m \((\d+) lbf·ft\); closing plug (\d)\.(\d+) to (\d)\.(\d+) turns past hand-tight\.$/,
    'Ficha de las piezas para NPS $1: obturador firme de $2,$3 a $4,$5 N·m; tapón de retención apretado al menos a $6 N·m ($7 lbf·ft); tapón de cierre de $8,$9 a $10,$11 vueltas después de apretar a mano.',
  ],
  [
    /^Chamber proofs held five minutes \(operator’s setting\)\.$/,
    'Pruebas de cámara de cinco minutos (ajuste de la empresa).',
  ],
  [
    /^Chamber proofs held five minutes \(operator’s setting\)\. Keeper pulled to at least (\d+) N·m \((\d+) lbf·ft\)\.$/,
    'Pruebas de cámara de cinco minutos (ajuste de la empresa). Tapón de retención apretado al menos a $1 N·m ($2 lbf·ft).',
  ],
  [
    /^Main of NPS (\S+): one cradle block under each chain\.$/,
    'Tubería principal NPS $1: un calzo bajo cada cadena.',
  ],
  [
    /^Stop and refer back if the boss is beyond use, the main is above the rating, or the wrong service is found\.$/,
    'Parar y devolver el trabajo si el resalte es inservible, la principal está por encima de la presión nominal o la acometida no es la de la orden.',
  ],
  [
    /^Stop and refer back if the boss is beyond use, the main is above the rating, the wrap is suspect, or the wrong service is found\.$/,
    'Parar y devolver el trabajo si el resalte es inservible, la principal está por encima de la presión nominal, la envoltura es sospechosa o la acometida no es la de la orden.',
  ],
];

function line(written: string): string {
  const known = lines.find(([is]) => is.test(written));
  if (known === undefined) return written;
  const said = written.replace(known[0], known[1]);
  const longService = /, (\d+) ft of service$/.exec(written);
  return longService === null ? said : `${said}, ${longService[1]} ft de acometida`;
}

/** A shipped exercise in Spanish. A line nobody has put into Spanish stays as it was written. */
export function exerciseInSpanish(id: string, written: ExerciseWords): ExerciseWords {
  if (!Object.hasOwn(briefs, id)) return written;
  return {
    title: line(written.title),
    brief: briefs[id],
    operator: line(written.operator),
    address: line(written.address),
    says: written.says.map(line),
  };
}
