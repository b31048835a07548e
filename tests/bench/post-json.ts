import { type Agent, request } from 'node:http';

/** Posts and reads the answer to its end; throws for anything but 200. */
export function postJson(agent: Agent, url: string, cookie: string, body: unknown): Promise<string> {
  const bytes = Buffer.from(JSON.stringify(body));
  const headers = { cookie, 'content-type': 'application/json', 'content-length': bytes.length };
  return new Promise((resolve, reject) => {
    const sending = request(url, { method: 'POST', agent, headers }, (response) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.once('error', reject);
      response.once('end', () => {
        const text = Buffer.concat(chunks).toString();
        if (response.statusCode === 200) resolve(text);
        else reject(new Error(`${url} answered with ${response.statusCode}: ${text}`));
      });
    });
    sending.once('error', reject);
    sending.end(bytes);
  });
}
