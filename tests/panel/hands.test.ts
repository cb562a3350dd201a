import { cleanup, fireEvent, render, screen, within } from '@testing-library/svelte';
import * as v from 'valibot';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { actionSchema, type Action, type ActionKind } from '../../src/core/rig/index.ts';
import { could, type RunState } from '../../src/core/run/index.ts';
import { gripOf, Hands, pieceOffers, thingOf, things } from '../../src/panel/index.ts';
import { runAfter } from './yard.ts';

afterEach(cleanup);

function show(run: RunState, chosen: string) {
  const act = vi.fn<(action: Action) => void>();
  render(Hands, {
    run,
    system: 'si',
    isHindered: (action: Action) => could(run, action) !== null,
    act,
    chosen,
    holdBack: false,
  });
  return act;
}

const press = (name: string): Promise<boolean> => fireEvent.click(screen.getByRole('button', { name }));

describe('the hands', () => {
  it('offer every act there is, each in a form that the rig can read', () => {
    const run = runAfter();
    const grip = gripOf(run, 'us', true, 60);
    const offered: Action[] = [
      ...things.flatMap((thing) =>
        thing.rows(grip).flatMap((row) => row.offers.map((offer) => offer.action)),
      ),
      ...Object.values(run.rig.kit).flatMap((piece) =>
        (['board', 'rig', 'rod'] as const).flatMap((where) =>
          pieceOffers({ ...piece, where }, run.rig, true).map((offer) => offer.action),
        ),
      ),
    ];
    for (const action of offered)
      expect(v.safeParse(actionSchema, action).success, JSON.stringify(action)).toBe(true);
    const kinds = new Set<ActionKind>(offered.map((action) => action.kind));
    const elsewhere: readonly ActionKind[] = ['sign', 'withdraw', 'record.write', 'collar.set'];
    const all = actionSchema.options.map((option) => option.entries.kind.literal);
    expect(all.filter((kind) => !kinds.has(kind)).sort()).toEqual([...elsewhere].sort());
  });

  it('have no two buttons of one name under one thing', () => {
    const grip = gripOf(runAfter(), 'us', true, 60);
    for (const thing of things) {
      const names = thing
        .rows(grip)
        .flatMap((row) => row.offers.map((offer) => `${row.name}: ${offer.name}`));
      expect(new Set(names).size, thing.id).toBe(names.length);
    }
  });

  it('do what the pressed button says', async () => {
    const act = show(runAfter(), 'plug');
    await press('Top plug, back: 1/12 turn');
    expect(act).toHaveBeenCalledWith({ kind: 'plug.turn', turns: -1 / 12, holdBack: false });
    await fireEvent.click(screen.getByRole('checkbox'));
    await press('Top plug, in: 1/4 turn');
    expect(act).toHaveBeenLastCalledWith({ kind: 'plug.turn', turns: 1 / 4, holdBack: true });
  });

  it('dim what a hand could not do now, and let it be tried all the same', async () => {
    const act = show(runAfter(), 'head');
    const pump = screen.getByRole('button', { name: 'Hand pump: 1 stroke' });
    expect(pump.getAttribute('aria-describedby')).toBe('hindered');
    await fireEvent.click(pump);
    expect(act).toHaveBeenCalledTimes(1);
  });

  it('watch leak fluid for as long as is chosen, a minute unless another time is', async () => {
    const act = show(runAfter(), 'leak');
    const field = screen.getByRole('combobox', { name: 'Watch for' });
    expect((field as HTMLSelectElement).selectedOptions[0].textContent).toBe('1 min');
    await press('Leak fluid on: top plug');
    expect(act).toHaveBeenLastCalledWith({ kind: 'leakFluid.apply', at: 'plug', watchS: 60 });
  });

  it('tell what was felt, once something was', () => {
    show(runAfter({ kind: 'plug.turn', turns: -1 / 12, holdBack: true }), 'plug');
    expect(screen.getByRole('group', { name: 'Top plug, back' }).textContent).toMatch(/felt: about \d+ N·m/);
  });

  it('ask once more before an act that ends the run', async () => {
    const act = show(runAfter(), 'stop');
    await press('Finish: the job is done');
    expect(act).not.toHaveBeenCalled();
    await press('No, go on working');
    await press('Finish: the job is done');
    await press('Yes');
    expect(act).toHaveBeenCalledWith({ kind: 'finish' });
  });

  it('go from thing to thing by the arrow keys, with one stop for Tab', async () => {
    show(runAfter(), 'kit');
    const list = screen.getByRole('tablist');
    const tabs = within(list).getAllByRole('tab');
    expect(tabs.filter((tab) => tab.tabIndex === 0)).toHaveLength(1);
    await fireEvent.keyDown(tabs[0], { key: 'ArrowDown' });
    expect(within(list).getByRole('tab', { selected: true }).textContent).toBe('Site');
    await fireEvent.keyDown(tabs[0], { key: 'End' });
    expect(within(list).getByRole('tab', { selected: true }).textContent).toBe(tabs.at(-1)?.textContent);
  });

  it('clamp the depth collar at a travel in the unit chosen, and at no nonsense', async () => {
    const act = show(runAfter(), 'stopper');
    const field = screen.getByRole('textbox', { name: 'Travel to the stop, mm' });
    await fireEvent.input(field, { target: { value: 'deep' } });
    await press('Depth collar: clamp at');
    expect(act).not.toHaveBeenCalled();
    await fireEvent.input(field, { target: { value: '298,4' } });
    await press('Depth collar: clamp at');
    expect(act).toHaveBeenCalledWith({ kind: 'collar.set', travelM: 0.2984 });
  });

  it('write a field of the record as it was typed, and nothing when it is empty', async () => {
    const act = show(runAfter(), 'record');
    await press('Write: employee responsible, and crew');
    expect(act).not.toHaveBeenCalled();
    await fireEvent.input(screen.getByRole('textbox', { name: 'employee responsible, and crew' }), {
      target: { value: ' two of the yard ' },
    });
    await press('Write: employee responsible, and crew');
    expect(act).toHaveBeenCalledWith({ kind: 'record.write', field: 'crew', value: 'two of the yard' });
  });

  it('can be found for every act the coach may point at, except signatures', () => {
    const { rig } = runAfter();
    const place = (action: Action) => thingOf(action, rig);
    expect(place({ kind: 'piece.place', piece: 'seatRing-1', holdBack: true })).toBe('seat');
    expect(place({ kind: 'piece.inspect', piece: 'seatRing-1' })).toBe('kit');
    expect(place({ kind: 'rod.fit', tip: 'socket-1' })).toBe('rod');
    expect(place({ kind: 'rod.load', piece: 'boreStopper-1' })).toBe('stopper');
    expect(place({ kind: 'rod.load', piece: null })).toBe('rod');
    expect(place({ kind: 'sealant.apply', piece: 'closingPlug-1' })).toBe('closing');
    expect(place({ kind: 'sign', holdPoint: 'H1' })).toBeNull();
  });
});

describe('the kit board', () => {
  it('counts what was looked over and can show what was not', async () => {
    show(runAfter({ kind: 'piece.inspect', piece: 'seatRing-1' }), 'kit');
    expect(screen.getByText(/^1 of \d+ looked over$/)).toBeTruthy();
    expect(screen.getByRole('article', { name: 'Seat ring 1' }).textContent).toContain('looked over, sound');
    await fireEvent.change(screen.getByRole('combobox'), { target: { value: 'new' } });
    expect(screen.queryByRole('article', { name: 'Seat ring 1' })).toBeNull();
    expect(screen.getByRole('article', { name: 'Seat ring 3/4' })).toBeTruthy();
  });

  it('takes a piece off where it was put on', async () => {
    const act = show(runAfter({ kind: 'piece.place', piece: 'seatRing-1', holdBack: false }), 'seat');
    await press('Take off: Seat ring 1');
    expect(act).toHaveBeenCalledWith({ kind: 'piece.remove', piece: 'seatRing-1', holdBack: false });
  });
});
