/** What the start page, the frame and the cautions say. One flat list a subject, so that a second language can stand beside it. */
export const pages = {
  'app.name': 'Stillmain',
  'app.skip': 'Skip to the page',
  'app.home': 'Stillmain, start page',
  'caution.title': 'Read this first',
  'caution.trains': 'This simulator trains. It does not qualify anyone for covered work.',
  'caution.first': 'The operator’s written procedure, local codes and licensed practice come first, always.',
  'caution.numbers':
    'Its numbers come from published sources where they exist; many are assumed. None of them is a field setting.',
  'caution.short':
    'Trains, does not qualify. Written procedure, local codes and licensed practice come first.',

  'home.title': 'Rehearse the job before the gas is real.',
  'home.what':
    'Stillmain is a practice yard for the crew that takes a threaded service tee off a live steel gas main without letting gas blow. You have the rig, the kit, the gauges and two pairs of hands. The gas behaves as gas does. Nothing stops you from doing things in the wrong order, and each hold point asks whether you really know what you are about to sign.',
  'home.model': 'How the gas is modelled, beside published numbers, and where that stops',
  'home.desk': 'Review desk: look through runs, decide about them, and answer for it',
  'home.bench': 'Scenario bench: build an exercise, and prove it before class',
  'home.exercises': 'Exercises',
  'home.group.own': 'Your own',
  'home.group.abandon': 'Abandon a service',
  'home.group.abandon.says':
    'A service that is done with is stopped off, cut away and its coupling closed. These jobs are sound.',
  'home.group.renew': 'Renew or reconnect a service',
  'home.group.renew.says':
    'The old tee comes out, a proved one goes in, and the service is tied in, purged and relit.',
  'home.group.fault': 'When something is not as the order says',
  'home.group.fault.says':
    'A piece, the ground, the main or the weather is against you. Sometimes it can be put right; sometimes stopping is the right answer. Which, is for you to find.',
  'home.group.drill': 'Drills',
  'home.group.drill.says':
    'Short ones that begin in the middle of a job, to practise one thing until it sits.',
  'home.mainOf': 'main NPS {nps}',
  'home.teeOf': 'tee NPS {nps}',
  'home.holdsOf': '{n} hold points',
  'home.best.passed': 'passed',
  'home.best.tried': 'tried',
  'home.best.working': 'in progress',
  'home.runs': 'Runs in this browser',
  'home.noRuns':
    'None yet. A run is kept here from its first action, and survives a reload or a crash up to the last one.',
  'home.open': 'Open a run or an exercise',
  'home.openFailed': 'That file could not be opened: {why}',
  'home.resume': 'Go on',
  'home.resumeNamed': 'Go on with the run begun {when}',
  'home.debrief': 'Debrief',
  'home.debriefNamed': 'Debrief of the run begun {when}',
  'home.remove': 'Remove',
  'home.removeNamed': 'Remove the run begun {when}',
  'home.removeSure': 'Remove this run for good? Its record cannot be brought back.',
  'home.removeYes': 'Remove for good',
  'home.removeNo': 'Keep it',
  'home.col.exercise': 'Exercise',
  'home.col.begun': 'Begun',
  'home.col.reached': 'Clock',
  'home.col.state': 'State',
  'home.col.doing': 'What now',
  'home.working': 'in progress',
  'home.verdict.pass': 'Pass',
  'home.verdict.fail': 'Not passed',
  'home.verdict.critical': 'Failed',
  'home.finished': '{verdict}, {score} of 100',
  'home.notKept': 'This browser keeps nothing for this page, so runs last only until it is closed: {why}',

  'route.lost': 'There is no such page here.',
  'route.back': 'Back to the start page',
  'route.loading': 'Opening …',
  'route.failed':
    'This part of the page could not be opened. Check the connection to where it is served from and try again.',
  'route.again': 'Try again',
} as const;
