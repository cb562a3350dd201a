/** Where a number comes from. Shown beside the number wherever a user can see it. */
export type Source = `published: ${string}` | `from memory: ${string}` | 'assumed' | `computed: ${string}`;

export const B36: Source = 'published: ASME B36.10M schedule 40';
export const B36_MEMORY: Source = 'from memory: ASME B36.10M schedule 40';
export const B1201: Source = 'published: ASME B1.20.1 Table 2';
export const B1611: Source = 'published: ASME B16.11-2016 Table 5, class 3000 threaded';
export const B163: Source = 'from memory: ASME B16.3 class 150';
export const B1614: Source = 'from memory: ASME B16.14 square-head plug';
export const ASSUMED: Source = 'assumed';
