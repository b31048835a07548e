import type { TeamRole } from '@halfshaft/contract';

/** Everyone and everything here is invented. */
export interface DemoPerson {
  key: string;
  name: string;
  email: string;
  role: TeamRole;
}

export interface DemoCar {
  key: string;
  name: string;
  drive: 'front' | 'rear' | 'four';
  surface: 'gravel' | 'tarmac' | 'snow';
  carNumber: string;
  startPosition: number;
  people: number;
}

export interface DemoTeam {
  key: string;
  name: string;
  /** The first founds the team. */
  people: DemoPerson[];
  cars: DemoCar[];
}

export const DEMO_TEAMS: DemoTeam[] = [
  {
    key: 'birch',
    name: 'Birch Lane Rallying',
    people: [
      { key: 'mara', name: 'Mara Quill', email: 'mara@birchlane.example', role: 'admin' },
      { key: 'joss', name: 'Joss Tarn', email: 'joss@birchlane.example', role: 'mechanic' },
      { key: 'edie', name: 'Edie Holm', email: 'edie@birchlane.example', role: 'mechanic' },
      { key: 'rhys', name: 'Rhys Calder', email: 'rhys@birchlane.example', role: 'driver' },
    ],
    cars: [
      {
        key: 'heron',
        name: 'Heron R2',
        drive: 'front',
        surface: 'gravel',
        carNumber: '14',
        startPosition: 12,
        people: 2,
      },
      {
        key: 'kestrel',
        name: 'Kestrel GT',
        drive: 'rear',
        surface: 'gravel',
        carNumber: '31',
        startPosition: 27,
        people: 2,
      },
    ],
  },
  {
    key: 'copperbeck',
    name: 'Copperbeck Motorsport',
    people: [
      { key: 'ines', name: 'Ines Farrow', email: 'ines@copperbeck.example', role: 'admin' },
      { key: 'tobin', name: 'Tobin Lake', email: 'tobin@copperbeck.example', role: 'mechanic' },
    ],
    cars: [
      {
        key: 'marten',
        name: 'Marten 4',
        drive: 'four',
        surface: 'gravel',
        carNumber: '9',
        startPosition: 8,
        people: 3,
      },
    ],
  },
];

export const DEMO_ORGANISER = {
  name: 'Larchwater Motor Club',
  person: 'Wen Aldous',
  email: 'wen@larchwater.example',
};
