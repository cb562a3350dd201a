import { cutDrill } from '../../core/hands/index.ts';
import { MOST_DEVIATIONS, noticingOf, prove, type GoOn } from '../../core/prove/index.ts';
import type { Order, Told } from './orders.ts';

/* A worker of the bench: plays the hands, searches and cuts drills, so that the page stays at hand meanwhile. */

const tell = (told: Told): void => postMessage(told);

/** Whoever wants to stop ends the worker, so the work always goes on. */
const goOn: GoOn = (part, share) => {
  tell({ kind: 'progress', part, share });
  return true;
};

function carryOut(order: Order): Told {
  switch (order.kind) {
    case 'prove':
      return { kind: 'proved', proof: prove(order.scenario, goOn, order.whole ? undefined : 1, 0) };
    case 'notice':
      return { kind: 'noticed', noticing: noticingOf(order.scenario, goOn, MOST_DEVIATIONS) };
    case 'cut':
      return { kind: 'cut', cut: cutDrill(order.scenario, order.wanted) };
  }
}

addEventListener('message', (event: MessageEvent<Order>) => tell(carryOut(event.data)));
