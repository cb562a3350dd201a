import { fireEvent, render, screen } from '@testing-library/svelte';
import { expect, it } from 'vitest';
import SeverityField from '../../src/bench/edit/faults/SeverityField.svelte';
import { Draft } from '../../src/bench/edit/draft.svelte.ts';
import type { Shelf } from '../../src/bench/shelf.svelte.ts';
import { shipped } from '../scenarios/shipped.ts';

/** Nothing is kept here: a draft that is only looked at asks nothing of its shelf. */
const nowhere = {} as Shelf;

it('says beside the slider what so much of a fault comes to, and follows it', async () => {
  const document = shipped('abandon-1in-tee-on-4in-main');
  const kept = { id: document.id, document, notes: '', workable: true, proof: null, changedAt: '' };
  const one = { fault: 'oRingNicked', on: 'testHead', when: { trigger: 'start' } } as const;
  render(SeverityField, { draft: new Draft(nowhere, kept), one, path: 'faults[0]', name: 'Nicked ring' });
  const costs = await screen.findByText(/a minute in a proof of the first chamber/);
  const usual = costs.textContent;
  expect(usual).toMatch(/0\.\d\d psi a minute/);
  const slider = screen.getByRole('slider');
  expect(slider.getAttribute('aria-describedby')).toBe(costs.id);
  await fireEvent.input(slider, { target: { value: '90' } });
  expect(costs.textContent).not.toBe(usual);
  expect(costs.textContent).toMatch(/psi a minute/);
});
