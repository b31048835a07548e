import { itineraryText } from '@halfshaft/contract';
import { describe, expect, it } from 'vitest';
import { formToItinerary, isSameForm, itineraryToForm, newItineraryForm } from './itinerary-form';

const text = {
  source: 'TC/SS;Location',
  timeZone: 'Europe/Vienna',
  startsOn: '2026-06-12',
  roadTimedFrom: 'stageFinish' as const,
  startIntervalSeconds: 120,
  defaultGapSeconds: 300,
  printedFor: 'carZero' as const,
};

describe('formToItinerary', () => {
  it('gives back the version the form was filled from', () => {
    expect(formToItinerary(itineraryToForm('An event', text))).toEqual(text);
  });

  it('keeps to the contract from the beginning', () => {
    const form = newItineraryForm('Europe/Vienna', '2026-06-12');
    expect(itineraryText.safeParse(formToItinerary(form)).success).toBe(true);
  });

  it('takes a version and a kept form that say not whom the times are for', () => {
    const { printedFor: _, ...before } = text;
    const form = itineraryToForm('An event', before as typeof text);
    expect(form.itinerary.printedFor).toBe('positionOne');
    const { printedFor: __, ...kept } = form.itinerary;
    const sent = formToItinerary({ name: '', itinerary: kept as typeof form.itinerary });
    expect(sent.printedFor).toBe('positionOne');
  });

  it('lets the contract refuse what is no number', () => {
    const form = itineraryToForm('An event', text);
    form.itinerary.startIntervalSeconds = 'one minute';
    const result = itineraryText.safeParse(formToItinerary(form));
    expect(result.error?.issues.map((issue) => [issue.path.join('.'), issue.message])).toEqual([
      ['startIntervalSeconds', 'The start interval in seconds must be a whole number from 30 to 600.'],
    ]);
  });
});

describe('isSameForm', () => {
  const form = itineraryToForm('An event', text);

  it('does not mind the order of the fields', () => {
    const entries = Object.entries(form.itinerary).reverse();
    const reversed = { ...form, itinerary: Object.fromEntries(entries) as typeof form.itinerary };
    expect(isSameForm(form, reversed)).toBe(true);
  });

  it('sees another name, text or setting', () => {
    expect(isSameForm(form, { ...form, name: 'Another' })).toBe(false);
    for (const key of Object.keys(form.itinerary)) {
      const other = { ...form, itinerary: { ...form.itinerary, [key]: 'another' } };
      expect(isSameForm(form, other)).toBe(false);
    }
  });
});
