import { cradleMains, sizedBy, teeSizeSchema, type KitEntry, type KitKind } from '../../../core/rig/index.ts';

type Size = NonNullable<KitEntry['stamped']>;

const cradle: readonly Size[] = (['1-1/4', '1-1/2', '2', '3'] as const).filter((nps) =>
  cradleMains.includes(nps),
);

/** Sizes a kind of piece is made in; none where it is made in one only. */
export function sizesOf(kind: KitKind): readonly Size[] {
  if (sizedBy[kind] === 'one') return [];
  return sizedBy[kind] === 'main' ? cradle : teeSizeSchema.options;
}
