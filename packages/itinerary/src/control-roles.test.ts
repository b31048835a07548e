import { describe, expect, it } from 'vitest';
import { rolesAtPlace, rolesOf, roleText } from './control-roles';
import type { ControlRole } from './model';

const ALL: Record<ControlRole, true> = {
  start: true,
  timeControl: true,
  serviceIn: true,
  serviceOut: true,
  remoteServiceIn: true,
  remoteServiceOut: true,
  regroupIn: true,
  regroupOut: true,
  parcFermeIn: true,
  parcFermeOut: true,
  technicalIn: true,
  technicalOut: true,
  tyreZoneIn: true,
  tyreZoneOut: true,
  refuel: true,
  finish: true,
};

describe('rolesOf', () => {
  it.each([
    ['Service in', ['serviceIn']],
    ['SERVICE OUT', ['serviceOut']],
    ['Service Park Lindach (in)', ['serviceIn']],
    ['Remote Service In', ['remoteServiceIn']],
    ['Regroup out / Service in', ['regroupOut', 'serviceIn']],
    ['Parc Ferme OUT - Service IN', ['parcFermeOut', 'serviceIn']],
    ['Parc fermé in', ['parcFermeIn']],
    ['Service out & parc fermé in', ['serviceOut', 'parcFermeIn']],
    ['Tech zone out, Service in', ['technicalOut', 'serviceIn']],
    ['Technical Zone in', ['technicalIn']],
    ['Tyre fitting zone in', ['tyreZoneIn']],
    ['Tire zone exit', ['tyreZoneOut']],
    ['Regrouping in', ['regroupIn']],
    ['Refuelling', ['refuel']],
    ['Lindach', []],
    ['Serviceable road inbound', []],
  ])('reads “%s”', (text, roles) => {
    expect(rolesOf(text).roles).toEqual(roles);
  });

  it('says when a halt has no direction', () => {
    expect(rolesOf('Service park')).toEqual({ roles: [], unclear: true });
    expect(rolesOf('Service / Regroup in')).toEqual({ roles: ['regroupIn'], unclear: true });
    expect(rolesOf('Lindach').unclear).toBe(false);
  });

  it('reads back every role as it is written, alone and beside every other', () => {
    const roles = Object.keys(ALL) as ControlRole[];
    for (const role of roles) {
      expect(rolesOf(roleText([role]))).toEqual({ roles: [role], unclear: false });
      for (const other of roles) {
        if (other !== role) expect(rolesOf(roleText([role, other])).roles).toEqual([role, other]);
      }
    }
  });
});

describe('rolesAtPlace', () => {
  it('takes start and finish for places where a stage follows', () => {
    expect(rolesAtPlace('TC2', 'Forest start', { isFirstOfLeg: false, hasStageAfter: true })).toEqual([
      'timeControl',
    ]);
    expect(rolesAtPlace('TC0', 'Start', { isFirstOfLeg: true, hasStageAfter: true })).toEqual(['start']);
    expect(rolesAtPlace('TC2', 'Finish straight', { isFirstOfLeg: false, hasStageAfter: true })).toEqual([
      'timeControl',
    ]);
    expect(rolesAtPlace('TC9A', 'Finish', { isFirstOfLeg: false, hasStageAfter: false })).toEqual(['finish']);
  });

  it('knows a refuel by its name', () => {
    expect(rolesAtPlace('RZ1', 'Old quarry', { isFirstOfLeg: false, hasStageAfter: true })).toEqual([
      'refuel',
    ]);
  });
});
