/**
 * What the start page shows of an exercise, taken out of its document when the page is built.
 * @param {string} text a scenario document
 */
export function cardOf(text) {
  const { id, title, family, job, holdPoints, cutScore } = JSON.parse(text);
  return {
    id,
    title,
    family,
    mainNps: job.workpiece.mainNps,
    teeSize: job.workpiece.teeSize,
    orderPressureGaugePa: job.system.orderPressureGaugePa,
    holdPoints: holdPoints.length,
    cutScore,
  };
}
