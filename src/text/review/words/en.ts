/** Words of the review: of files, of what is decided, of groups. */
export const english = {
  integrity: {
    same: { word: 'same', means: 'Judged again from its actions: the same to the last bit.' },
    differs: {
      word: 'other engine',
      means: 'Made by another engine: shown with what it says of itself, not judged again.',
    },
    altered: { word: 'altered', means: 'Not as it was sealed: refused as evidence.' },
    damaged: { word: 'damaged', means: 'No run can be read from it: refused.' },
  },
  bad: {
    tooLarge: 'the file is larger than any run',
    notUtf8: 'the bytes are no text',
    tooDeep: 'the text is nested deeper than any run',
    notJson: 'the text stops being JSON',
    notCanonical: 'the text is not written as it was sealed',
    notARun: 'the document is not a run',
    badEntry: 'the entry is none that a hand can make',
    chainBroken: 'the hash chain breaks',
    impossible: 'the action is not possible there',
    otherEnd: 'played again, the run ends otherwise than sealed',
  },
  place: {
    entry: 'action {n}',
    link: 'link {n} of the hash chain',
    scenario: 'the exercise or the engine’s name',
    end: 'what is said of the whole: person, time or end',
    endDigest: 'the sealed end',
    byte: 'byte {n}',
    file: 'the file',
    at: 'First bad place: {place}; {why}.',
    detail: 'First bad place: {place}; {why}. {says}',
  },
  survived:
    '{n} actions can be read, {bound} of them bound by the chain; exercise: {title}; person: {person}.',
  lost: 'lost',
  saidOtherwise:
    'The file says of itself: {verdict}, {score} of 100, {ending}. Judged again from its actions it is what stands here; only that counts.',
  decision: {
    demonstrated: 'demonstrated in simulation',
    notYet: 'not yet demonstrated',
    notAccepted: 'run not accepted as evidence',
  },
  ebel: {
    veryGood: 'very good',
    good: 'reasonably good',
    marginal: 'marginal',
    poor: 'poor',
    negative: 'negative: look at the item itself',
  },
  smallGroup: 'Small group ({n}): read the interval, not the figure.',
} as const;
