// Where the jobs are kept: a Redis server, by its address in REDIS_URL.
import { Redis } from 'ioredis';

/** The queue of this sweep; another sweep that runs at the same time needs another name. */
export const queueName = 'pool-powder-sweep';

/** The connection to the server, once it has answered. The address may hold a password: only its host is shown. */
export async function connectionTo(url = process.env.REDIS_URL ?? 'redis://127.0.0.1:6379') {
  const probe = new Redis(url, { lazyConnect: true, retryStrategy: () => null });
  probe.on('error', () => {}); // connect() tells it
  try {
    await probe.connect();
  } catch ({ message }) {
    console.error(
      `No Redis server answers at ${new URL(url).host} (${message}). Start one (on Debian: apt-get install redis-server) or set REDIS_URL.`,
    );
    process.exit(1);
  }
  probe.disconnect();
  return { url, maxRetriesPerRequest: null };
}
