import type { VisitProposal, VisitQuestion } from '@halfshaft/bayplan';

export type ToThread =
  | { kind: 'plan'; number: number; question: VisitQuestion }
  | { kind: 'drop'; number: number };

export type FromThread =
  | { kind: 'proposed'; number: number; proposal: VisitProposal }
  | { kind: 'dropped'; number: number }
  | { kind: 'failed'; number: number; message: string };
