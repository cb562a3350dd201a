/** How a run is sat: coach, assessment, watching, tour; and what the debrief tells beside the figures. */
export const sitting = {
  'coach.level.fading': 'As I need it',
  'coach.level.shown': 'Shows what is due',
  'coach.level.asked': 'Only when asked',
  'coach.level.off': 'Silent',
  'coach.ask': 'Ask what is due',
  'coach.costs': 'Counted in the record; costs {n} points here.',
  'coach.costsNothing': 'Counted in the record; costs no points here.',
  'coach.askedTimes': 'Asked so far: {n}',
  'coach.faded': 'You have held this stage before, so nothing is shown unasked.',
  'amiss.title': 'Look at that',
  'amiss.consequence': 'What came of it',
  'amiss.cause': 'What led to it',
  'amiss.rule': 'The rule',
  'amiss.dismiss': 'I have seen it',
  'assess.title': 'Assessment',
  'assess.says':
    'Silent and once: no coach, no way back, the rig seen only as a crew sees it, and waits of at most a minute. It begins when you press the button and ends when you finish the job, stop it, or hand it in. The record says that it was an assessment.',
  'assess.begin': 'Begin the assessment',
  'assess.handIn': 'Hand in as it stands',
  'assess.sure': 'Hand the run in now? It cannot be gone on with.',
  'assess.yes': 'Hand it in',
  'assess.no': 'Go on',
  'practise.title': 'Practice run',
  'practise.says': 'With the coach as far as you want it, the rig cut open, and a way back to any moment.',
  'watch.link': 'Watch it done first',
  'watch.title': 'Watch it done',
  'watch.says':
    'A steady hand does the whole job, and the coach says why. Stop it anywhere, and go act by act.',
  'watch.performing': 'Performing the job …',
  'watch.now': 'Being done',
  'watch.try': 'Now try it',
  'play.play': 'Play',
  'play.stop': 'Stop',
  'play.speed': 'Speed',
  'story.title': 'What was done, in words',
  'story.deviation': 'First departure',
  'story.due': 'Due then: {what}.',
  'story.done': 'Done: {what}.',
  'story.none': 'Nothing departed from what was due in a way that cost anything.',
  'story.waitDue': 'wait {length}',
  'next.title': 'One thing to do next',
  'next.sound': 'Nothing was lost. Take an exercise that you have not passed yet, or have this one assessed.',
  'next.retry': 'Go back to {clock} and try again',
  'next.retrySays':
    'As a new practice run: what was done from there on stays on its chart as a thin grey line.',
  'physics.title': 'What the gas did, and why',
  'physics.quiet': 'It stayed where it was meant to: nothing blew, lifted or was thrown.',
  'physics.blow.began':
    'An open hole passes gas at the speed of sound once the main is above about 12 psig; only its area and the pressure decide how much.',
  'physics.blow.ended':
    'The flow ended when the opening was shut or the pressure behind it was gone; what had gone out stays in the hole until the air clears it.',
  'physics.rod.thrown':
    'Push is pressure times the area of the rod, less its weight and the gland’s friction: at 60 psig more than a hand can catch.',
  'physics.rod.sank': 'With little pressure under it the rod weighs more than the gland holds.',
  'physics.saddle.lifted':
    'Pressure times the seat’s area came to more than what the chains held it down with; the seal opened as a relief does.',
  'physics.stopper.slipped':
    'Pressure times the bore’s area pushed harder than the squeezed rubber could grip the wall.',
  'physics.relief.lifted':
    'The pump brought the head to the relief’s setting; from there it lets out what is pumped in.',
  'physics.gas.flammable':
    'The hole is one box of air that mixes: gas in, less what the wind clears. Near the leak it is rich long before the average says so.',
  'physics.gas.ignited': 'Air between its limits met a source.',
  'tour.title': 'Two-minute tour',
  'tour.step': '{n} of {of}',
  'tour.next': 'Next',
  'tour.before': 'Back',
  'tour.skip': 'Skip the tour',
  'tour.end': 'That is all',
  'tour.home': 'First time here? Begin with a sound job; a two-minute tour goes with it.',
  'tour.begin': 'Begin here',
  'tour.clock':
    'Nothing waits for you here but the clock. Run it or pause it; the wait buttons let time pass at once, and stop by themselves when something startles.',
  'tour.rig':
    'The rig, cut open: gas and air are coloured by pressure. Drag it to turn it, or read it: “In words” tells all that it shows.',
  'tour.hands':
    'Your hands. Choose a thing, then what to do with it. Every act is yours in any order; only what a hand cannot do is refused.',
  'tour.instruments':
    'What a crew reads and hears: gauges, the detector, the bleed, the rod’s push. Reading a gauge in the hands panel writes the figure down.',
  'tour.order':
    'The work order, its stages and hold points. A hold point asks whether you know what you sign; the work it guards must not begin before.',
  'tour.said':
    'What happened, newest first, and the coach: what is due and why. It fades as you come to know the job, and can be silenced above.',
  'tour.way':
    'You may go back to any moment and try again. At the end the debrief says what came of it, why, and one thing to do next. Keys: “?” lists them.',
  'parts.title': 'All parts in all themes',
  'parts.says': 'What every screen is made of, for whoever changes it. Colours and sizes come from one file.',
  'parts.colours': 'Colours',
  'parts.type': 'Type and buttons',
  'parts.instruments': 'Instruments',
  'parts.charts': 'Charts',
  'parts.hold': 'Hold point',
} as const;
