import type { NoteWords } from './words.ts';

/** A reviewer's notes on an exercise, in English. */
export const englishNotes: NoteWords = {
  stopsForReason: {
    says: 'A steady crew stops and refers back at {clock}: {about}.',
    suggests: 'Mend the field, or make stopping the intended ending.',
  },
  endsOtherwise: {
    says: 'A steady crew comes to another ending at {clock}: {about}.',
    suggests: 'Ask for the ending that this work leads to.',
  },
  failsSteady: {
    says: 'A steady crew ends as asked and does not pass: {about}, at {clock}.',
    suggests: 'Look at what it met there; nobody can do better than it did.',
  },
  deadEnd: {
    says: '{witnessFailures} states have no way to a safe ending. One is reached by: {about}.',
    suggests: 'Put the piece on the board that would close it, or find the valves of the main.',
  },
  searchOpen: {
    says: 'The search was stopped after {states} states and proves nothing yet.',
    suggests: 'Let it run to its end.',
  },
  renewalUnsearched: {
    says: 'Dead ends are looked for among the pieces of an abandonment, up to the drawn tee and its closing plug.',
    suggests: 'What is renewed after that only the hands show: watch one of them to the end.',
  },
  handPasses: {
    says: 'A careless hand passes with {score} points: {about}.',
    suggests: 'Make the hold point it slips past critical, or raise the cut score.',
  },
  goodWorkCosts: {
    says: 'A steady crew loses {points} points, for work it could not do better: {about}, at {clock}.',
    suggests: 'Take out what it could not have known, or let a required check show it.',
  },
  holdPointNotReached: {
    says: 'Nobody comes to {about} in this work.',
    suggests: 'Take it off the list; its weight goes to nobody.',
  },
  holdPointLeftOut: {
    says: '{about} is not on the list, though its work is done here.',
    suggests: 'Put it on the list: what it guards can let gas blow.',
  },
  holdPointHeavy: {
    says: '{about} carries {share} of all hold points.',
    suggests: 'One signature then decides the heading. Spread the weight.',
  },
  weightsAddUp: {
    says: 'The weights of the headings add up to {sum}.',
    suggests: 'Make them 100.',
  },
  weightWithoutCause: {
    says: '{points} points are for abnormal conditions, and none is planted.',
    suggests: 'Everybody gets them. Plant a fault, or give the points to another heading.',
  },
  headingHeavy: {
    says: 'One heading has {points} of 100 points: {about}.',
    suggests: 'The others then hardly count. Spread the weight.',
  },
  cutAboveSteady: {
    says: 'A steady crew scores {score}; the cut score is {cutScore}.',
    suggests: 'Lower the cut score.',
  },
  cutBelowHasty: {
    says: 'A careless hand reaches the cut score with {score} points: {about}.',
    suggests: 'Raise the cut score.',
  },
  timeShort: {
    says: 'A steady crew needs {steady}; the limit is {limit}.',
    suggests: 'Leave it a fifth more than it needs.',
  },
  faultHidden: {
    says: '{about}: nothing a crew can see, hear or read shows it before it hurts.',
    suggests: 'Let a required check show it, or say in the notes that it is hidden.',
  },
  faultUncaught: {
    says: '{about}: going on in spite of it costs nothing.',
    suggests: 'Give it more weight, or a hold point that asks for it.',
  },
  fewNoticed: {
    says: 'Of the slips that matter {share} are noticed; not, for one: {about}.',
    suggests: 'Give its heading or its hold point more weight, or let a check ask for it.',
  },
  harmlessPunished: {
    says: '{punished} harmless slips cost points, for one: {about}.',
    suggests: 'Look at the limits they run into.',
  },
};
