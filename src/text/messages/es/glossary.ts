import type { PieceKind } from '../../../core/catalogue/index.ts';

interface Noun {
  readonly name: string;
  readonly feminine?: true;
}

/**
 * The pieces in Spanish, with their gender. This is the one place where their names are chosen; every sentence that
 * names a piece of the kit takes the name from here.
 */
export const nouns: Readonly<Record<PieceKind, Noun>> = {
  main: { name: 'tubería principal', feminine: true },
  coupling: { name: 'manguito' },
  serviceTee: { name: 'te de servicio', feminine: true },
  topPlug: { name: 'tapón superior' },
  serviceLine: { name: 'acometida', feminine: true },
  seatRing: { name: 'anillo de asiento' },
  saddle: { name: 'silla', feminine: true },
  cradleBlock: { name: 'calzo' },
  chain: { name: 'cadena', feminine: true },
  isolationValve: { name: 'válvula de aislamiento', feminine: true },
  lowerSpool: { name: 'carrete inferior' },
  upperSpool: { name: 'carrete superior' },
  sightCap: { name: 'tapa con mirilla', feminine: true },
  testHead: { name: 'cabezal de prueba' },
  rodBarrel: { name: 'cilindro de la varilla' },
  rod: { name: 'varilla', feminine: true },
  socket: { name: 'dado' },
  stopperHolder: { name: 'portaobturador' },
  magnet: { name: 'imán' },
  depthCollar: { name: 'collarín de profundidad' },
  boreStopper: { name: 'obturador' },
  keeperPlug: { name: 'tapón de retención' },
  cupGasket: { name: 'junta de copa', feminine: true },
  splitCollar: { name: 'collar partido' },
  closingPlug: { name: 'tapón de cierre' },
  valveCap: { name: 'tapa de la válvula', feminine: true },
  gaugeRing: { name: 'anillo calibrador' },
  serviceCap: { name: 'tapa de la acometida', feminine: true },
  renewalTee: { name: 'te de renovación', feminine: true },
  newTopPlug: { name: 'tapón superior nuevo' },
  tieIn: { name: 'unión con la te', feminine: true },
  testSet: { name: 'equipo de prueba' },
  purgeRiser: { name: 'tubo de purga' },
};

/**
 * Trade words: how each English word of the house is said in Spanish, as patterns that a test holds against every
 * pair of sentences. Where the English has the first, the Spanish must have the second.
 */
export const tradeWords: readonly (readonly [RegExp, RegExp])[] = [
  [/\bhold points?\b/i, /puntos? de control/i],
  [/\bisolation valve\b/i, /válvula de aislamiento/i],
  [/\bseat ring\b/i, /anillo de asiento/i],
  [/\bsight cap\b/i, /mirilla/i],
  [/\btest[- ]head\b/i, /cabezal/i],
  [/\bkeeper\b/i, /retención/i],
  [/\bstopper\b/i, /obturador/i],
  [/\bclosing plug\b/i, /tapón de cierre/i],
  [/\btop plug\b/i, /tapón superior/i],
  [/\bcup gasket\b/i, /junta de copa/i],
  [/\bsplit collar\b/i, /collar partido/i],
  [/\bdepth collar\b/i, /collarín/i],
  [/\bgauge ring\b/i, /anillo calibrador/i],
  [/\bcradle block/i, /calzo/i],
  [/\btensioner/i, /tensor/i],
  [/\bsaddle/i, /silla/i],
  [/\bcoupling/i, /manguito/i],
  [/\bboss\b/i, /resalte/i],
  [/\bbleed\b/i, /desfog/i],
  [/\bgland\b/i, /prensaestopas/i],
  [/\bleak fluid\b/i, /líquido detector/i],
  [/\bpilot hole\b/i, /orificio piloto/i],
  [/\bwork order\b/i, /orden de trabajo/i],
  [/\bgas control\b/i, /control de gas/i],
  [/\bbond cable\b/i, /cable de puente/i],
  [/\bsealant\b/i, /sellador/i],
];
