// What to say about a target that was refused, whichever file imported it: where the thing itself belongs.
const TARGET_ADVICE = [
  ['zod', 'A schema belongs in packages/contract.'],
  [
    'node:**',
    'Reading files, the network or the machine belongs in apps/api or packages/store; pass the value in.',
  ],
  [
    '@halfshaft/store/embedded',
    'A database of its own is started from apps/api/launch or tests/, never from the server.',
  ],
  ['@halfshaft/store', 'A query belongs in apps/api/src/features/<noun>/data.ts.'],
  ['@halfshaft/api/router', 'Use "import type": the API’s code never reaches the browser.'],
  ['@halfshaft/api', 'The web app may know only the type in @halfshaft/api/router.'],
  ['packages/*/src/**fixtures', 'Fixtures are for tests.'],
  ['packages/*/src/**.test', 'A test is imported by nobody.'],
];

/** Does a listed target (see import-rules.mjs for the notation) cover this one? */
export function covers(listed, target) {
  const body = listed
    .replace(/[.+?^${}()|[\]\\]/g, '\\$&')
    .replace(/\*\*?/g, (stars) => (stars === '**' ? '.*' : '[^/]*'));
  return new RegExp(`^${body}(?:/.*)?$`).test(target);
}

export function adviceFor(target) {
  return TARGET_ADVICE.find(([listed]) => covers(listed, target))?.[1];
}
