import { fileURLToPath } from 'node:url';

/** Runs one check on the project this file belongs to, prints what it found and sets the exit code. */
export function reportProblems(name, check) {
  const root = fileURLToPath(new URL('../../../', import.meta.url));
  const problems = check(root);
  for (const problem of problems) process.stdout.write(`${problem}\n`);
  process.stdout.write(
    problems.length === 0 ? `${name}: ok\n` : `${name}: ${problems.length} to put right\n`,
  );
  process.exitCode = problems.length === 0 ? 0 : 1;
}
