import { posix } from 'node:path';
import { listFiles } from './list-files.mjs';

const VOCABULARY = [
  'router.ts',
  'service.ts',
  'data.ts',
  'ability.ts',
  'actions.ts',
  'live.ts',
  'file.ts',
  'merge.ts',
  'constants.ts',
];
const FEATURES = 'apps/api/src/features/';
const CONTRACT = 'packages/contract/src/';
const CONTRACT_EXTRAS = ['ids', 'outcome', 'words', 'plain', 'zod', 'index', 'fixtures'];
const VAGUE_NAME = /^(?:helpers|managers?|utils\d+)$/;

const WHERE_IT_BELONGS =
  'Deciding belongs in service.ts or a pure package, queries in data.ts, who may in ability.ts, pushed actions in actions.ts, ' +
  'listening in live.ts, what a file tells by itself in file.ts, what two servers changed in merge.ts, procedures in router.ts, fixed values in constants.ts, shapes in packages/contract; a second noun gets its own folder.';

/** Every breach of the shape of the API's features under `root`, as sentences. */
export function checkFeatures(root) {
  const paths = listFiles(root);
  return [
    ...paths.filter((path) => path.startsWith(FEATURES)).flatMap(checkVocabulary),
    ...checkApiFolders(paths),
    ...checkNouns(paths),
    ...paths.flatMap(checkName),
  ];
}

function checkVocabulary(path) {
  const parts = path.slice(FEATURES.length).split('/');
  const file = parts[parts.length - 1] ?? '';
  if (parts.length === 1)
    return [`${path}: a file of a feature stands in its noun’s folder, features/<noun>/.`];
  if (parts.length > 2) return [`${path}: a feature has no folders inside. ${WHERE_IT_BELONGS}`];
  if (VOCABULARY.includes(file) || file.endsWith('.test.ts')) return [];
  return [`${path}: a feature has only ${VOCABULARY.join(', ')} and tests. ${WHERE_IT_BELONGS}`];
}

function checkApiFolders(paths) {
  const folders = paths.map((path) => /^apps\/api\/src\/([^/]+)\//.exec(path)?.[1]).filter(Boolean);
  return [...new Set(folders)]
    .filter((folder) => folder !== 'features' && folder !== 'workers')
    .map(
      (folder) =>
        `apps/api/src/${folder}/: the API has only features/ and workers/ as folders; what belongs to a noun goes in features/<noun>/, what every request passes through is a file at the top of src/.`,
    );
}

function checkNouns(paths) {
  const features = nounsOf(paths, /^apps\/api\/src\/features\/([^/]+)\//);
  const contract = nounsOf(paths, /^packages\/contract\/src\/([^/]+?)(?:\.test)?\.ts$/);
  // Either side may not have been started yet; there is nothing to compare then.
  if (features.size === 0 || contract.size === 0) return [];
  const missing = [...features].filter((noun) => !contract.has(noun));
  const extra = [...contract].filter((noun) => !features.has(noun) && !CONTRACT_EXTRAS.includes(noun));
  return [
    ...missing.map(
      (noun) =>
        `${FEATURES}${noun}/: this noun has no ${CONTRACT}${noun}.ts; its inputs and outputs belong there.`,
    ),
    ...extra.map(
      (noun) =>
        `${CONTRACT}${noun}.ts: no feature has this noun; move its shapes to the noun whose procedures use them, or make ${FEATURES}${noun}/.`,
    ),
  ];
}

const nounsOf = (paths, pattern) => new Set(paths.map((path) => pattern.exec(path)?.[1]).filter(Boolean));

function checkName(path) {
  const parts = posix.dirname(path).split('/');
  const stem = posix.basename(path).replace(/(?:\.test)?\.[^.]+$/, '');
  const vague = [...parts, stem].find((part) => VAGUE_NAME.test(part));
  return vague ? [`${path}: "${vague}" says nothing; name the file after the one thing it does.`] : [];
}
