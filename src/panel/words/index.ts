export { briefOf } from './brief.ts';
export { clockFigure, momentFigure } from './figures.ts';
export { exerciseTitle, exerciseWords, type ExerciseWords } from './exercise.ts';
export { tell, type WordKey } from './tell.ts';
