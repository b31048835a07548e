import type { Step } from './steps';

/** Days that went wrong once, as short as they could be made, with the seed that they came from. */
export interface KnownDay {
  what: string;
  steps: readonly Step[];
}

const all = (step: Omit<Step, 'settles'>): Step => ({ ...step, settles: true });

export const KNOWN_DAYS: readonly KnownDay[] = [
  {
    // Seed 409477488. Phone 1 goes to the one who is taken out of the team, so no stream of news wakes it up either.
    what: 'the network comes back while the turn after a lost request is still being given back',
    steps: [
      all({ phone: 1, what: 'passOn', pick: 60_767 }),
      all({ phone: 1, what: 'cut', pick: 0 }),
      all({ phone: 0, what: 'revoke', pick: 0 }),
      ...[0, 0, 0, 0, 1].map((phone) => all({ phone, what: 'act', pick: 0 })),
    ],
  },
  {
    // Seed 418971917. By plain http, so that the tab that is left was not told what the other had kept.
    what: 'a tab is killed before it sends and the other one never heard of it',
    steps: [
      all({ phone: 1, what: 'secondTab', pick: 0 }),
      all({ phone: 0, what: 'act', pick: 0 }),
      { phone: 1, what: 'act', pick: 96_121, settles: false },
      all({ phone: 1, what: 'crash', pick: 2202 }),
      ...[0, 0].map((phone) => all({ phone, what: 'act', pick: 0 })),
    ],
  },
];
