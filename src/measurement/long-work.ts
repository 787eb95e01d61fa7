import type { Faults } from '../input/faults.js';

/** Who is told of long work, and who may end it. */
export interface LongWork {
  /** Told now and then which share is done, 0 to 1. */
  readonly onProgress?: (done: number) => void;
  /** An `AbortSignal`. Once it is aborted the promise is rejected with its reason. */
  readonly signal?: { readonly aborted: boolean; readonly reason?: unknown };
}

/** Reads who is told. @internal */
export function readLongWork(
  { onProgress, signal }: Readonly<Record<string, unknown>>,
  path: string,
  faults: Faults,
): LongWork {
  if (onProgress !== undefined && typeof onProgress !== 'function')
    faults.add('wrong-type', `${path}.onProgress`, 'a function of the share that is done', onProgress);
  if (signal !== undefined && abortedOf(signal) === undefined)
    faults.add('wrong-type', `${path}.signal`, 'an AbortSignal', signal);
  return { onProgress, signal } as LongWork;
}

/** Whether a signal is aborted; undefined where it is no signal. */
function abortedOf(signal: unknown): boolean | undefined {
  try {
    const { aborted } = signal as { readonly aborted: unknown };
    return typeof aborted === 'boolean' ? aborted : undefined;
  } catch {
    return undefined;
  }
}

/** Does `count` pieces of work in slices of about 20 ms, so that a page stays alive. @internal */
export async function inSlices(
  count: number,
  { onProgress, signal }: LongWork,
  work: (k: number) => void,
): Promise<void> {
  let since = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < count; k += 1) {
    if (Date.now() - since > slice) {
      onProgress?.(k / count);
      await pause();
      if (signal?.aborted) throw signal.reason;
      since = Date.now();
    }
    work(k);
  }
  onProgress?.(1);
}

/** ms of work at a stretch. */
const slice = 20;

/** Lets what waits have its turn: a click, a frame, another calculation. */
const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/** In every browser and in Node.js; not in the language, and src knows no more than that. */
declare const setTimeout: (run: () => void, ms: number) => unknown;
