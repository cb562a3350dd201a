export { clockFigure, momentFigure } from './figures.ts';
export { tell, type WordKey } from './tell.ts';
