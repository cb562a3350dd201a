export { default as Caution } from './Caution.svelte';
export { default as Log } from './Log.svelte';
export { default as Settings } from './Settings.svelte';
export { default as Wide } from './Wide.svelte';
export { default as ClockBar } from './bar/ClockBar.svelte';
export { default as Masthead } from './bar/Masthead.svelte';
export { default as Player } from './bar/Player.svelte';
export { rarely } from './bar/rarely.ts';
export { default as StripChart } from './charts/StripChart.svelte';
export { default as Timeline } from './charts/Timeline.svelte';
export { columnsOf, tableRows } from './charts/columns.ts';
export { feltOf, graspOf, nameOf } from './hands/grasp.ts';
export { gripOf } from './hands/grip.ts';
export { lookAtOf } from './hands/lookAt.ts';
export { default as Hands } from './hands/Hands.svelte';
export { things } from './hands/things.ts';
export { thingOf, thingOfKind } from './hands/thingOf.ts';
export { faces as dialFaces, pointerAngle } from './instruments/dial.ts';
export { default as Gauge } from './instruments/Gauge.svelte';
export { pieceOffers } from './kit/pieceOffers.ts';
export { default as Instruments } from './instruments/Instruments.svelte';
export { default as Order } from './order/Order.svelte';
export type { PictureHands } from './picture/hands.ts';
export { default as HoldPoint } from './order/HoldPoint.svelte';
export { default as Moment } from './picture/Moment.svelte';
export { default as Rig } from './picture/Rig.svelte';
export { followLanguage, showLanguage } from './language.svelte.ts';
export {
  coachChoices,
  keepPreferences,
  languageShown,
  longestName,
  parsePreferences,
  preferences,
  rigChoices,
  showPreferences,
} from './preferences.svelte.ts';
export { lastSaid, noticed, refusalSaid } from './told.ts';
export { stageOfHoldPoint } from './order/holdPoints.ts';
export {
  briefOf,
  clockFigure,
  exerciseTitle,
  exerciseWords,
  momentFigure,
  tell,
  type WordKey,
} from './words/index.ts';
