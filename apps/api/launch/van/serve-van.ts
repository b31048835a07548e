import { readEnv } from '../../src/env';
import type { PageSource } from '../../src/serve-pages';
import { type RunningApp, startServer } from '../../src/server';
import { HOME_FOLDER } from '../home-folder';
import { addJoinRoutes } from './add-join-routes';
import { fingerprintOf } from './fingerprint';
import { keepAuthority } from './keep-authority';
import { makeCertificate } from './make-certificate';
import { VAN_HOST, type VanPlan } from './plan-van';

export interface RunningVan {
  /** SHA-256 of the certificate that phones are asked to trust, in pairs. */
  fingerprint: string;
  stop(): Promise<void>;
}

type Settings = Record<string, string | undefined>;

/**
 * The service twice on one database, over https and over plain http. They are two servers because a session's cookie is kept for
 * https alone under https, and could not be sent at all over http.
 */
export async function serveVan(plan: VanPlan, settings: Settings, pages: PageSource): Promise<RunningVan> {
  const now = new Date();
  const authority = await keepAuthority(HOME_FOLDER, plan.computer, plan.addresses, now);
  const addresses = [...plan.addresses, '127.0.0.1'];
  const tls = await makeCertificate(authority, { addresses, names: plan.names }, now);
  const [first = ''] = plan.addresses;
  const envFor = (scheme: 'http' | 'https', port: number) =>
    readEnv({
      ...settings,
      HOST: VAN_HOST,
      PORT: String(port),
      PUBLIC_URL: `${scheme}://${first}:${port}`,
    });
  const addRoutes = addJoinRoutes(plan, authority);
  const running: RunningApp[] = [];
  const stop = async () => {
    for (const each of running) await each.close();
  };
  try {
    running.push(await startServer(envFor('http', plan.httpPort), { pages, addRoutes }));
    running.push(await startServer(envFor('https', plan.httpsPort), { pages, addRoutes, tls }));
  } catch (error) {
    await stop();
    throw error;
  }
  return { fingerprint: fingerprintOf(authority.certificate), stop };
}
