import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { BANNED_WORDS } from './banned-words.mjs';
import { IMPORT_RULES } from './import-rules.mjs';
import { adviceFor, covers } from './import-targets.mjs';
import { listFiles } from './list-files.mjs';
import { scanSource } from './scan-source.mjs';

const SOURCE = /^(?:apps|packages|prisma|tests)\/.*\.(?:[mc]?[jt]s|[jt]sx)$/;

/** Every breach of the import table under `root`, as sentences; an empty list means that all is well. */
export function checkImports(root) {
  return listFiles(root)
    .filter((path) => SOURCE.test(path) && !path.includes('/generated/'))
    .flatMap((path) => checkFile(path, readFileSync(join(root, path), 'utf8')));
}

function checkFile(path, text) {
  const rule = IMPORT_RULES.find((row) => row.where.test(path));
  if (!rule) return [`${path}: ${noRow(path)}`];
  const { imports, spots } = scanSource(path, text);
  return [
    ...imports.map((entry) => [entry.line, importProblem(path, rule, entry)]),
    ...spots.map((entry) => [entry.line, wordProblem(path, rule, entry.spot)]),
  ]
    .filter(([, problem]) => problem !== undefined)
    .map(([line, problem]) => `${path}:${line}: ${problem}`);
}

function noRow(path) {
  if (path.startsWith('apps/api/src/features/'))
    return 'no such file in a feature: npm test’s feature check says where it belongs.';
  if (path.startsWith('apps/api/'))
    return 'code of the API stands in src/features/<noun>/, src/workers/, at the top of src/ or in launch/.';
  if (path.startsWith('apps/web/'))
    return 'code of the web app stands in app/, features/, components/, lib/ or offline/.';
  return 'this place has no row in the import table: add one in packages/config/src/import-rules.mjs.';
}

function importProblem(path, rule, { specifier, typeOnly }) {
  if (specifier === undefined) {
    return rule.computedPaths || rule.may.includes('**')
      ? undefined
      : 'an import whose path is computed cannot be checked: write the path as a plain string.';
  }
  const target = resolveTarget(path, specifier);
  const noun = rule.where.exec(path)?.groups?.noun ?? '';
  const listed = (list = []) => list.some((item) => covers(item.replaceAll('$noun', noun), target));
  if (!listed(rule.never) && (listed(rule.may) || (typeOnly && listed(rule.typeOnly)))) return undefined;
  return [`may not import '${specifier}'.`, rule.says, leavesWorkspace(path, target) ?? adviceFor(target)]
    .filter(Boolean)
    .join(' ');
}

/** A relative or "@/" import becomes the path from the root without its extension; a package stays as it is written. */
function resolveTarget(path, specifier) {
  if (specifier.startsWith('@/')) return withoutExtension(posix.join('apps/web', specifier.slice(2)));
  if (specifier.startsWith('.')) return withoutExtension(posix.join(posix.dirname(path), specifier));
  return specifier;
}

const withoutExtension = (target) => target.replace(/(?<=[^/.])\.(?:[mc]?[jt]s|[jt]sx)$/, '');

const workspaceOf = (path) =>
  path.split('/', path.startsWith('tests/') || path.startsWith('prisma/') ? 1 : 2).join('/');

function leavesWorkspace(path, target) {
  const inside = /^(?:apps|packages)\//.test(target);
  return inside && workspaceOf(path) !== workspaceOf(target)
    ? 'Another package is reached by its name (@halfshaft/…), never by a path.'
    : undefined;
}

function wordProblem(path, rule, spot) {
  const group = (rule.bans ?? [])
    .map((name) => BANNED_WORDS[name])
    .find((words) => words.spots.includes(spot));
  return group ? `may not use ${spot}. ${group.says(path)}` : undefined;
}
