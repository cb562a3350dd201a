/** The places of the workplace, by their ids on the page, with what each is headed. */
export const places = [
  ['rig', 'picture.title'],
  ['hands', 'hands.title'],
  ['instruments', 'instruments.title'],
  ['order', 'order.title'],
] as const;
