import type { grasp as english } from '../en/grasp.ts';

/** What is said by the pointer: what is under it, how it is moved, how it resists. */
export const grasp: Readonly<Record<keyof typeof english, string>> = {
  'grasp.title': 'Lo que se puede asir',
  'grasp.show': 'Asideros',
  'grasp.valve': 'Palanca de la válvula',
  'grasp.rod': 'Varilla',
  'grasp.inner': 'Volante de la varilla interior',
  'grasp.wrenchOnPlug': 'Llave en el tapón superior',
  'grasp.wrenchOnTee': 'Llave en la te',
  'grasp.turn': 'Arrastre a la derecha para girar en sentido horario, a la izquierda para volver atrás.',
  'grasp.open': 'Arrastre a la izquierda para abrir, a la derecha para cerrar.',
  'grasp.slideOrTurn': 'Arrastre hacia abajo o arriba para deslizar, a la derecha o izquierda para girar.',
  'grasp.stroke': 'Arrastre hacia abajo o hacia arriba para bombear.',
  'grasp.pull': 'Arrastre a la derecha para apretar; suelte al llegar al par que quiera.',
  'grasp.reads': 'la llave marca {torque}',
  'grasp.light': 'corre suelto',
  'grasp.drags': 'roza',
  'grasp.firm': 'está firme',
  'grasp.hard': 'todo lo que da una mano',
  'kit.drag': 'Arrástrela hasta el equipo para ponerla en su sitio.',
};
