/**
 * What can be wrong with a document, as the core says it in English, and how that is said in Spanish. Figures, names
 * and places are taken over as they stand.
 */
const said: readonly (readonly [RegExp, string])[] = [
  [/^The work is (.+); the job is laid out to (.+)\.$/, 'El trabajo es $1; lo dispuesto es para $2.'],
  [/^A renewal needs limits of its own\.$/, 'Una renovación necesita límites propios.'],
  [/^A renewal needs a (.+); the kit has none\.$/, 'Una renovación necesita $1; no hay ninguna pieza así.'],
  [
    /^A renewal needs 2 serviceCap: old end and new line\.$/,
    'Una renovación necesita 2 serviceCap: extremo viejo y línea nueva.',
  ],
  [/^Two pieces are called (.+)\.$/, 'Dos piezas se llaman $1.'],
  [/^A (.+) is made in one size and carries no stamp\.$/, '$1 se hace en un solo tamaño y no lleva marca.'],
  [/^A (.+) is stamped with its size\.$/, '$1 lleva su tamaño marcado.'],
  [/^A (.+) is made in (.+) only\.$/, '$1 solo se hace en $2.'],
  [
    /^A real size needs a stamp that it differs from\.$/,
    'Un tamaño real necesita una marca de la que difiera.',
  ],
  [/^The job needs (\d+) (.+); the kit has (\d+)\.$/, 'El trabajo necesita $1 $2; el equipo tiene $3.'],
  [
    /^The first of the two, (.+), must be less than the second, (.+)\.$/,
    'El primero de los dos, $1, debe ser menor que el segundo, $2.',
  ],
  [
    /^The points of a schedule follow one another in time: (.+) s is not after (.+) s\.$/,
    'Los puntos de un programa se siguen en el tiempo: $1 s no va después de $2 s.',
  ],
  [
    /^The pressure before the regulator, (.+) Pa, must be above its setting, (.+) Pa\.$/,
    'La presión antes del regulador, $1 Pa, debe superar su ajuste, $2 Pa.',
  ],
  [
    /^The weights of the five headings must sum to 100; they sum to (.+)\.$/,
    'Los pesos de los cinco apartados deben sumar 100; suman $1.',
  ],
  [/^Hold point (.+) is listed twice\.$/, 'El punto de control $1 figura dos veces.'],
  [/^At least one hold point must carry weight\.$/, 'Al menos un punto de control debe tener peso.'],
  [/^The fault (.+) has no degrees\.$/, 'La avería $1 no tiene grados.'],
  [
    /^The severity of (.+) lies between (.+) and (.+); it is (.+)\.$/,
    'La gravedad de $1 va de $2 a $3; es $4.',
  ],
  [/^The fault (.+) sits on no piece of the kit\.$/, 'La avería $1 no va en ninguna pieza del equipo.'],
  [
    /^The fault (.+) sits on one of (.+), and the kit has none of that name\.$/,
    'La avería $1 va en una de $2, y el equipo no tiene ninguna con ese nombre.',
  ],
  [/^The fault (.+) is set off by (.+)\.$/, 'La avería $1 la desencadena $2.'],
  [/^This entry is missing\.$/, 'Falta esta entrada.'],
  [/^This entry is not known here\.$/, 'Esta entrada no se conoce aquí.'],
  [/^A set of named entries belongs here, not (.+)\.$/, 'Aquí va un conjunto de entradas con nombre, no $1.'],
  [/^A number belongs here, not (.+)\.$/, 'Aquí va un número, no $1.'],
  [/^The number must be finite\.$/, 'El número debe ser finito.'],
  [/^A whole number belongs here, not (.+)\.$/, 'Aquí va un número entero, no $1.'],
  [/^A text belongs here, not (.+)\.$/, 'Aquí va un texto, no $1.'],
  [/^Either true or false belongs here, not (.+)\.$/, 'Aquí va verdadero o falso, no $1.'],
  [/^A list belongs here, not (.+)\.$/, 'Aquí va una lista, no $1.'],
  [/^The number must be at least (.+); it is (.+)\.$/, 'El número debe ser al menos $1; es $2.'],
  [/^The number must be at most (.+); it is (.+)\.$/, 'El número debe ser como mucho $1; es $2.'],
  [/^At least (.+) must stand here\.$/, 'Aquí debe haber al menos $1.'],
  [/^No more than (.+) may stand here\.$/, 'Aquí no puede haber más de $1.'],
  [
    /^The text (.+) has a form that is not allowed here\.$/,
    'El texto $1 tiene una forma que aquí no se admite.',
  ],
  [/^One of (.+) belongs here, not (.+)\.$/, 'Aquí va uno de $1, no $2.'],
  [/^(.+) belongs here, not (.+)\.$/, 'Aquí va $1, no $2.'],
  [/^The text is longer than (.+) bytes\.$/, 'El texto pasa de $1 bytes.'],
  [
    /^Line (\d+), column (\d+): the text is not JSON from here on\.$/,
    'Línea $1, columna $2: desde aquí el texto no es JSON.',
  ],
  [
    /^Line (\d+), column (\d+): the document is nested deeper than (\d+) levels\.$/,
    'Línea $1, columna $2: el documento está anidado a más de $3 niveles.',
  ],
  [
    /^Line (\d+), column (\d+): half a character stands in the text\.$/,
    'Línea $1, columna $2: en el texto hay medio carácter.',
  ],
  [
    /^Line (\d+), column (\d+): no entry may be called (.+)\.$/,
    'Línea $1, columna $2: ninguna entrada puede llamarse $3.',
  ],
  [
    /^Line (\d+), column (\d+): the entry (.+) stands here twice\.$/,
    'Línea $1, columna $2: la entrada $3 está aquí dos veces.',
  ],
  [
    /^Line (\d+), column (\d+): the number (.+) is larger than can be kept\.$/,
    'Línea $1, columna $2: el número $3 es mayor de lo que se puede guardar.',
  ],
  [
    /^Line (\d+), column (\d+): the number (.+) is smaller than can be kept\.$/,
    'Línea $1, columna $2: el número $3 es menor de lo que se puede guardar.',
  ],
  [
    /^Line (\d+), column (\d+): minus zero would not read back as itself\.$/,
    'Línea $1, columna $2: menos cero no se leería igual que se escribió.',
  ],
  [
    /^Minus zero is not a number a rule can show\.$/,
    'Menos cero no es un número que una regla pueda mostrar.',
  ],
  [/^The document is nested too deeply\.$/, 'El documento está anidado demasiado hondo.'],
  [/^No hand could have done this there: (.+)\.$/, 'Ninguna mano podría haber hecho esto ahí: $1.'],
  [/^(.+) is listed twice\.$/, '$1 figura dos veces.'],
  [
    /^The set has (\d+) exercises; (\d+) of them cannot be passed\.$/,
    'El conjunto tiene $1 ejercicios; no se pueden aprobar $2.',
  ],
  [
    /^A drill says from which stage to which it goes\.$/,
    'Un ejercicio corto dice de qué etapa a qué etapa va.',
  ],
  [/^Only a drill is a part of a job\.$/, 'Solo un ejercicio corto es parte de un trabajo.'],
  [/^This work has no stage (.+)\.$/, 'Este trabajo no tiene la etapa $1.'],
  [
    /^A steady crew ends this work before stage (.+)\.$/,
    'Una cuadrilla serena termina este trabajo antes de la etapa $1.',
  ],
  [/^Stage (.+) comes before (.+)\.$/, 'La etapa $1 va antes que $2.'],
  [/^The action is earlier than the one before it\.$/, 'La acción es anterior a la que la precede.'],
  [
    /^An NPS (.+) main has no room for the coupling of an NPS (.+) tee; it takes (.+)\.$/,
    'Una principal NPS $1 no tiene sitio para el manguito de una te NPS $2; admite $3.',
  ],
  [/^The file is larger than (.+) bytes\.$/, 'El archivo pasa de $1 bytes.'],
  [/^The file is not UTF-8 text\.$/, 'El archivo no es texto UTF-8.'],
  [/^The file is nested deeper than (.+) levels\.$/, 'El archivo está anidado a más de $1 niveles.'],
  [/^The file is not its own canonical form\.$/, 'El archivo no está en su propia forma canónica.'],
  [/^The file is not JSON\.$/, 'El archivo no es JSON.'],
];

/** What is wrong with a document, in Spanish; what nobody has put into Spanish stays as it was said. */
export function problem(says: string): string {
  const known = said.find(([is]) => is.test(says));
  return known === undefined ? says : says.replace(known[0], known[1]);
}
