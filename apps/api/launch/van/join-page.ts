import QRCode from 'qrcode';
import { inGroups } from './fingerprint';

/** Its last part is the name a phone gives the file. */
export const CERTIFICATE_PATH = '/van/halfshaft-van.crt';

export interface JoinPage {
  joinUrl: string;
  httpUrl: string;
  httpsUrl: string;
  /** SHA-256 of the authority's certificate, in pairs. */
  fingerprint: string;
  /** The day the certificate ends, as in 2028-11-25. */
  endsOn: string;
}

/**
 * The page a phone opens first, without scripts and without anything from elsewhere. Every value in it is made by this server,
 * none by the one who asks.
 */
export async function joinPage(page: JoinPage): Promise<string> {
  const code = await QRCode.toString(page.joinUrl, { type: 'svg', errorCorrectionLevel: 'M', margin: 4 });
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Join the van – Halfshaft</title>
<link rel="icon" href="/icon.svg">
<link rel="stylesheet" href="/van/join.css">
</head>
<body>
<main>
<h1>Join the van</h1>
<p class="lead">You have reached the laptop in the van. There are two ways in; you can take the second one later.</p>
${atOnce(page)}
${trusted(page)}
${forTheNext(page, code)}
</main>
</body>
</html>
`;
}

function atOnce({ httpUrl }: JoinPage): string {
  return `<section aria-labelledby="at-once">
<h2 id="at-once">Go on at once</h2>
<p>Nothing to set up. What you log is kept on your phone until the laptop has it.</p>
<p><a class="go" href="${httpUrl}">Open Halfshaft</a></p>
<p>This way the page opens only while the laptop can be reached, it cannot go on your home screen, and others in the same
Wi-Fi could read along. Use it in the van’s own Wi-Fi, with a password on it.</p>
</section>`;
}

function trusted(page: JoinPage): string {
  const [first, second] = inGroups(page.fingerprint);
  return `<section aria-labelledby="trusted">
<h2 id="trusted">Trust this laptop, once per phone</h2>
<p>Some minutes. After that the pages also open without a network, can go on your home screen, and nobody reads along.</p>
<ol>
<li><p>Take the laptop’s certificate.</p>
<p><a class="go quiet" href="${CERTIFICATE_PATH}">Download the certificate</a></p></li>
<li><p>Install it in the phone’s settings: search there for “certificate”.</p>
<ul>
<li>Some phones ask what it is for: choose “CA certificate”, then the file you downloaded, and agree to the warning.</li>
<li>Others say that a profile was downloaded: install it, then look in “General”, “About” for the certificate trust settings and
switch full trust on for it.</li>
</ul></li>
<li><p>Compare. In its settings the phone shows the details of the certificate, among them “SHA-256”. Somebody reads out
the fingerprint from the window on the laptop; yours must be the same to the last figure:</p>
<p class="fingerprint"><span>${first}</span> <span>${second}</span></p>
<p>If it differs, remove the certificate and stay away: somebody else has answered in the laptop’s place. This page alone is no proof.</p></li>
<li><p>Open the address with the lock. Sign in there again. What waits on the other address is sent from there, so
let it be sent first. If the browser still warns, use the one the phone came with: some keep a list of their own.</p>
<p><a class="go quiet" href="${page.httpsUrl}">${page.httpsUrl}</a></p></li>
</ol>
<p>The certificate can vouch only for addresses in private networks such as this one, for no web site. It ends by itself on
${page.endsOn}; take it out in the same settings when you no longer need it.</p>
</section>`;
}

function forTheNext({ joinUrl }: JoinPage, code: string): string {
  return `<section aria-labelledby="next">
<h2 id="next">For the next phone</h2>
<p>In the same Wi-Fi, scan this or type <strong>${joinUrl}</strong></p>
<div class="code" role="img" aria-label="Code that leads to ${joinUrl}">${code}</div>
<p>If the phone says that this Wi-Fi has no internet, choose to stay in it; if it still finds nothing, switch mobile data off.</p>
</section>`;
}
