// Run by node in the second network: `visit.ts http://… https://… e-mail password`. Prints what a phone meets, as JSON.
import { X509Certificate } from 'node:crypto';
import { type IncomingHttpHeaders, type RequestOptions, request as requestHttp } from 'node:http';
import { request as requestHttps } from 'node:https';

interface Answer {
  status: number;
  headers: IncomingHttpHeaders;
  body: Buffer;
  /** Our own address, as the server sees it. */
  from: string;
}

/** What a person meets over one of the two ways. */
export interface Way {
  front: { status: number; type: string; policy: string };
  signIn: { status: number; cookies: string[]; from: string };
  /** The name of the account behind the cookies just given. */
  signedInAs: string;
  /** Status of a sign-in sent by a page of the other way. */
  fromOtherWay: number;
}

export interface Report {
  join: { status: number; policy: string; html: string };
  style: { status: number; type: string };
  certificate: { type: string; fingerprint: string; isAuthority: boolean };
  http: Way;
  https: Way;
  /** What is said of https by one who does not trust the certificate. */
  withoutTrust: string;
  /** The join page opened over https. */
  joinOverHttps: number;
}

const [http = '', https = '', email = '', password = ''] = process.argv.slice(2);

function ask(
  url: string,
  options: RequestOptions & { ca?: string; content?: unknown } = {},
): Promise<Answer> {
  const { content, ...rest } = options;
  const send = url.startsWith('https:') ? requestHttps : requestHttp;
  return new Promise((done, fail) => {
    const sent = send(url, { ...rest, agent: false }, (response) => {
      const from = response.socket.localAddress ?? '';
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.on('end', () => {
        const { statusCode = 0, headers } = response;
        done({ status: statusCode, headers, body: Buffer.concat(chunks), from });
      });
    });
    sent.once('error', fail);
    sent.end(content === undefined ? undefined : JSON.stringify(content));
  });
}

async function goIn(origin: string, other: string, ca?: string): Promise<Way> {
  const trust = ca ? { ca } : {};
  const front = await ask(`${origin}/`, trust);
  const signInFrom = (page: string) =>
    ask(`${origin}/auth/sign-in/email`, {
      ...trust,
      method: 'POST',
      headers: { 'content-type': 'application/json', origin: page },
      content: { email, password },
    });
  const signIn = await signInFrom(origin);
  const cookies = signIn.headers['set-cookie'] ?? [];
  const cookie = cookies.map((each) => each.split(';')[0]).join('; ');
  const session = await ask(`${origin}/auth/get-session`, { ...trust, headers: { cookie } });
  const { user } = JSON.parse(session.body.toString()) as { user: { name: string } };
  return {
    front: {
      status: front.status,
      type: String(front.headers['content-type']),
      policy: String(front.headers['content-security-policy']),
    },
    signIn: { status: signIn.status, cookies, from: signIn.from },
    signedInAs: user.name,
    fromOtherWay: (await signInFrom(other)).status,
  };
}

async function visit(): Promise<Report> {
  const join = await ask(`${http}/van`);
  const style = await ask(`${http}/van/join.css`);
  const download = await ask(`${http}/van/halfshaft-van.crt`);
  const authority = new X509Certificate(download.body);
  const ca = authority.toString();
  const withoutTrust = await ask(`${https}/healthz`).then(
    ({ status }) => `answered with ${status}`,
    (error: NodeJS.ErrnoException) => error.code ?? error.message,
  );
  return {
    join: {
      status: join.status,
      policy: String(join.headers['content-security-policy']),
      html: join.body.toString(),
    },
    style: { status: style.status, type: String(style.headers['content-type']) },
    certificate: {
      type: String(download.headers['content-type']),
      fingerprint: authority.fingerprint256,
      isAuthority: authority.ca,
    },
    http: await goIn(http, https),
    https: await goIn(https, http, ca),
    withoutTrust,
    joinOverHttps: (await ask(`${https}/van`, { ca })).status,
  };
}

process.stdout.write(JSON.stringify(await visit()));
