import { drawCode } from './draw-code';
import { inGroups } from './fingerprint';
import type { VanPlan } from './plan-van';

/** What the terminal says once phones can come. */
export function tellVan(plan: VanPlan, fingerprint: string): string {
  const [first, ...others] = plan.addresses;
  return [
    '',
    drawCode(plan.joinUrl),
    `Phones in the same Wi-Fi scan this, or open  ${plan.joinUrl}`,
    ...(others.length > 0 ? [`In other networks of this computer: ${others.join(', ')}`] : []),
    '',
    `  with nothing to set up:               http://${first}:${plan.httpPort}`,
    `  once the phone trusts this computer:  https://${first}:${plan.httpsPort}`,
    '',
    'Fingerprint (SHA-256) of the certificate, to be read out to whoever installs it:',
    ...inGroups(fingerprint).map((line) => `  ${line}`),
    '',
    'Open one of these addresses on this computer too: links and codes you make there lead where you are.',
    'If phones find nothing, let these two ports through the firewall. After a change of network, stop and start again.',
  ].join('\n');
}
