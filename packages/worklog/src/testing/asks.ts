import { NUTS } from './bay';

export const take = { kind: 'takeTask', args: { task: NUTS } } as const;
export const start = { kind: 'startTask', args: { task: NUTS } } as const;
export const release = { kind: 'releaseTask', args: { task: NUTS } } as const;
export const sign = { kind: 'signTask', args: { task: NUTS } } as const;
export const carryOver = (reason: string) =>
  ({ kind: 'carryOverTask', args: { task: NUTS, reason } }) as const;
export const drop = (reason: string) => ({ kind: 'dropTask', args: { task: NUTS, reason } }) as const;
export const reopen = (reason: string) => ({ kind: 'reopenTask', args: { task: NUTS, reason } }) as const;
export const undo = (actionId: string) => ({ kind: 'undo', args: { actionId } }) as const;
