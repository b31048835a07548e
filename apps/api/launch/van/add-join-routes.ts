import { X509Certificate } from 'node:crypto';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { contentPolicy } from '../../src/pages';
import { CERTIFICATE_PATH, joinPage } from './join-page';
import { JOIN_STYLE } from './join-style';
import type { Authority } from './make-authority';
import type { VanPlan } from './plan-van';

const POLICY = contentPolicy(["'self'"]);

/** `/van`: the page for a phone that comes for the first time, its style, and the certificate to trust. */
export function addJoinRoutes(plan: VanPlan, authority: Authority): (app: FastifyInstance) => void {
  const certificate = new X509Certificate(authority.certificate);
  const sendPage = async (request: FastifyRequest, reply: FastifyReply) => {
    const host = knownHost(plan, request.hostname);
    const html = await joinPage({
      joinUrl: `http://${host}:${plan.httpPort}/van`,
      httpUrl: `http://${host}:${plan.httpPort}/`,
      httpsUrl: `https://${host}:${plan.httpsPort}/`,
      fingerprint: certificate.fingerprint256,
      endsOn: new Date(certificate.validTo).toISOString().slice(0, 10),
    });
    return reply
      .headers({ ...NEVER_KEPT, 'content-security-policy': POLICY })
      .type(HTML)
      .send(html);
  };
  return (app) => {
    app.get('/van', sendPage);
    app.get('/van/', sendPage);
    app.get('/van/join.css', (_request, reply) => reply.headers(NEVER_KEPT).type(CSS).send(JOIN_STYLE));
    app.get(CERTIFICATE_PATH, (_request, reply) =>
      reply.headers(NEVER_KEPT).type(CERTIFICATE).send(certificate.raw),
    );
  };
}

/** The address the phone itself used when it is one of ours, so that it stays in the network it is in. */
function knownHost({ addresses }: VanPlan, asked: string): string {
  return addresses.find((address) => address === asked) ?? addresses[0] ?? '';
}

const NEVER_KEPT = { 'cache-control': 'no-store' };
const HTML = 'text/html; charset=utf-8';
const CSS = 'text/css; charset=utf-8';
/**
 * What phones open with their own installer, as long as it is not sent as a file to keep (common practice, no source): hence no
 * content-disposition either.
 */
const CERTIFICATE = 'application/x-x509-ca-cert';
