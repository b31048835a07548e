import type { Visit } from '@halfshaft/contract';
import {
  type Itinerary,
  type ItineraryProblem,
  type ReadTable,
  type ServiceWindow,
  servicesOf,
} from '@halfshaft/itinerary';
import { useDeferredValue, useMemo } from 'react';
import { checkText } from '../itinerary/check-text';
import { makeSheet, type ServiceSheet } from './sheet';
import { type ReadVisit, readVisit, type VisitForm } from './visit-form';

export interface VisitReading {
  fields: Extract<ReadVisit, { ok: false }>['problems'];
  /** Of the table: errors or, when it could be read, remarks. */
  problems: ItineraryProblem[];
  /** The table as understood; null where nothing was made of the text. */
  table: ReadTable | null;
  services: ServiceWindow[];
  itinerary: Itinerary | null;
  visit: Visit | null;
  /** Null as long as something is missing. */
  sheet: ServiceSheet | null;
}

/** Reads the form at each change, a moment after the typing, so that a long table never holds up the keys. */
export function useSheet(form: VisitForm): VisitReading {
  const settled = useDeferredValue(form);
  return useMemo(() => readForm(settled), [settled]);
}

function readForm(form: VisitForm): VisitReading {
  const nothing: VisitReading = {
    fields: {},
    problems: [],
    table: null,
    services: [],
    itinerary: null,
    visit: null,
    sheet: null,
  };
  const read = readVisit(form);
  if (!read.ok) return { ...nothing, fields: read.problems };
  const { visit } = read;
  const checked = checkText(visit.itinerary);
  if (checked.state === 'empty' || checked.state === 'settings') return { ...nothing, visit };
  const { table } = checked;
  if (checked.state === 'bad') return { ...nothing, visit, problems: checked.problems, table };
  const { itinerary, warnings } = checked;
  const services = servicesOf(itinerary);
  const serviceIndex = Math.max(
    0,
    services.findIndex((service) => service.id === form.service),
  );
  const sheet = makeSheet({ visit, itinerary, serviceIndex });
  return { ...nothing, visit, problems: warnings, table, services, itinerary, sheet };
}
