import type { ExerciseWords } from '../exercise.ts';

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

/** The line in Spanish, or null where nobody has put it so. */
function line(written: string): string | null {
  if (written === '') return '';
  const known = lines.find(([is]) => is.test(written));
  if (known === undefined) return null;
  const said = written.replace(known[0], known[1]);
  const longService = /, (\d+) ft of service$/.exec(written);
  return longService === null ? said : `${said}, ${longService[1]} ft de acometida`;
}

/** A shipped exercise in Spanish. One with a line that is not known stays as it was written, whole. */
export function exerciseInSpanish(written: ExerciseWords): ExerciseWords {
  const title = line(written.title);
  const operator = line(written.operator);
  const address = line(written.address);
  const says = written.says.map(line).filter((one) => one !== null);
  const whole = says.length === written.says.length;
  return whole && title !== null && operator !== null && address !== null
    ? { title, operator, address, says }
    : written;
}
