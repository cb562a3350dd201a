/** The decision about a run, its counter-signature, and what that proves. */
export const decision = {
  'decision.title': 'Decide about this run',
  'decision.notBelieved':
    'This run cannot be believed as it stands, so nothing can be called demonstrated by it.',
  'decision.name': 'Assessor’s name',
  'decision.role': 'Assessor’s role',
  'decision.individual': 'Individual evaluated',
  'decision.task': 'Covered task',
  'decision.method':
    'Method: simulation. A simulator trains and can be one part of an evaluation; it does not qualify anyone. The operator’s written programme decides what this record counts for.',
  'decision.what': 'Decision',
  'decision.demonstrated': 'Demonstrated',
  'decision.demonstratedMeans': 'The task was shown here, in simulation.',
  'decision.notYet': 'Not yet demonstrated',
  'decision.notYetMeans': 'More practice first; another run is welcome.',
  'decision.notAccepted': 'Run not accepted',
  'decision.notAcceptedMeans': 'The run cannot serve as evidence of anything.',
  'decision.validity': 'Validity',
  'decision.counts': 'Counts for a time, by the operator’s programme',
  'decision.from': 'From',
  'decision.until': 'Until',
  'decision.abnormal': 'Abnormal operating conditions seen and reacted to',
  'decision.abnormalWhat':
    'Begins with what the machine found. Say of each condition of this run whether it was seen and answered.',
  'condition.none': 'not in this run',
  'condition.answered': 'seen and rightly answered',
  'condition.unanswered': 'seen, not rightly answered',
  'condition.unseen': 'not seen',
  'decision.replaces':
    'Your decision about this run stands. It is never changed: this will be a new record that refers to it.',
  'decision.beside': 'Another assessor has decided about this run. Yours will stand beside it.',
  'decision.why': 'Why the earlier decision no longer stands',
  'decision.carries':
    'The record carries {aside} findings set aside, {added} added and {notes} notes, and the machine’s judgement beside them.',
  'decision.sign': 'Decide and counter-sign',
  'decision.cannotStand': 'This cannot stand as it is: {why}',
  'decision.notSigned': 'It was not signed and not kept: {why}',

  'decided.by': '{name}, {role}, {when}',
  'decided.countsNot': 'counts for no time',
  'decided.counts': '{from} until {until}',
  'decided.keep': 'To be kept until',
  'decided.replaces': 'Takes the place of decision {digest}: {why}',
  'decided.replaced': 'A later decision has taken the place of this one.',
  'decided.checking': 'Checking the signature …',
  'decided.soundHere': 'Counter-signature fits: signed by this installation’s key, unchanged since.',
  'decided.soundElsewhere': 'Counter-signature fits the key {key}…, which is not this installation’s.',
  'decided.unsound': 'The counter-signature does not fit: this record was changed after it was signed.',
  'decided.digest': 'Digest of the record',
  'decided.save': 'Save this decision as a file',

  'proof.title': 'What a counter-signature proves',
  'proof.link': 'What the counter-signature proves, and what not',
  'proof.what':
    'Deciding about a run writes a record and signs it with a key that this browser made and keeps. The key cannot be read out or copied; it can only sign.',
  'proof.proves': 'It proves',
  'proof.yes1': 'that the record is exactly as it was when it was signed, to the last letter;',
  'proof.yes2': 'that it was signed in the browser that holds the key below, and in no other;',
  'proof.yes3':
    'which run it is about: the record names the digest of that file, so another file does not fit.',
  'proof.provesNot': 'It does not prove',
  'proof.no1': 'who sat at the keyboard: the name and the role are what somebody typed;',
  'proof.no2': 'who performed the run: the file says a name, and nobody checked it;',
  'proof.no3': 'when it was signed: the time is this computer’s own clock;',
  'proof.no4':
    'that anyone is qualified: a simulation trains, and the operator’s written programme decides what counts;',
  'proof.no5':
    'anything once this browser’s data is cleared: the key is then gone, and old signatures only show that they belong together.',
  'proof.key': 'This installation’s public key',
  'proof.keyWhat':
    'Write it down somewhere else. Whoever has it can check every decision signed here, with any tool that knows Ed25519 (RFC 8032).',
  'proof.noKey': 'None: this browser could make no key.',
  'proof.heldByPage':
    'This browser has no Ed25519 of its own, so the key lies readable in its storage. Here the second point above does not hold: whoever can read that storage can sign.',
  'proof.check': 'Check a decision file',
  'proof.checkWhat':
    'The signature is over the record’s canonical JSON text (RFC 8785) without the signature itself.',
  'proof.choose': 'Choose a decision file',
  'proof.fits': 'The signature fits. Key {key}…, {name}, {when}.',
  'proof.fitsNot': 'The signature does not fit: this file is not as it was signed.',
  'proof.noDecision': 'This is not a decision file: {why}',
} as const;
