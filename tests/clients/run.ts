import { spawnSync } from 'node:child_process';

/** What a program printed. It throws, with all that was printed but addresses, if the program failed or took over a quarter of an hour. */
export function run(program: string, args: readonly string[], folder: string): string {
  const { status, stdout, stderr, error } = spawnSync(program, args, {
    cwd: folder,
    encoding: 'utf8',
    timeout: 900_000, // nothing here is about time: this ends what hangs, on a busy machine too
    maxBuffer: 2 ** 26,
  });
  if (status === 0) return stdout;
  const printed = `${stdout}\n${stderr}`.replace(/\bhttps?:\/\/\S+/g, '(address)');
  throw new Error(`${[program, ...args].join(' ')} ended with ${status ?? error?.message}\n${printed}`);
}
