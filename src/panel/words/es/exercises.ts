import type { ExerciseWords } from '../exercise.ts';

/** The exercises that come with the product, in Spanish, by id. `of` is the title whose words these are. */
export const exercises: Readonly<Record<string, ExerciseWords & { readonly of: string }>> = {
  'abandon-1in-tee-on-4in-main': {
    of: 'Abandon a 1-inch service tee on a live 4-inch main',
    title: 'Abandonar una te de servicio de 1 pulgada en una tubería principal de 4 pulgadas con gas',
    brief:
      'La casa del fondo del patio se va a derribar. Su acometida se abandona en la te: obturar el paso, cortar la acometida, sacar la te a través del equipo y cerrar el manguito, con la tubería principal siempre en servicio. Todo está sano, corre un aire ligero y nadie tiene prisa.',
    operator: 'Harrow Vale Gas, patio de prácticas',
    address: 'Zona 4 del patio, Low Meadow',
    says: [
      'Abandonar la acometida en la tubería principal: te de servicio maleable NPS 1 en un manguito soldado, tubería principal de acero NPS 4.',
      'Presión de la principal en la etiqueta: 35 psig. Equipo y accesorios con presión nominal de 60 psig.',
      'Acometida: 60 ft de acero NPS 1, cliente cortado en la válvula de acera y en la llave del medidor.',
      'Pruebas de cámara de cinco minutos (ajuste de la empresa). Tapón de retención apretado al menos a 135 N·m (100 lbf·ft).',
      'Parar y devolver el trabajo si el resalte es inservible, la principal está por encima de la presión nominal o la acometida no es la de la orden.',
    ],
  },
};
