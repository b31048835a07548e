/**
 * The library that runs PostgreSQL ends a process that has nothing left to do with code 0, which turns a failed test run
 * into a good one. This gives the process back the code it had.
 */
export function keepExitCode(): void {
  let kept = process.exitCode;
  process.on('beforeExit', () => {
    kept = process.exitCode;
  });
  process.on('exit', () => {
    if (kept && process.exitCode === 0) process.exitCode = kept;
  });
}
