const digits = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/**
 * The UTF-8 bytes of a text in base64 (RFC 4648, section 4), by the language alone: browsers and Node.js name their own
 * functions for it differently.
 *
 * @internal
 */
export function base64(text: string): string {
  const bytes = utf8(text);
  let coded = '';
  for (let k = 0; k < bytes.length; k += 3) {
    const [a = 0, b = 0, c = 0] = bytes.slice(k, k + 3);
    const all = (a << 16) | (b << 8) | c;
    const four = [18, 12, 6, 0].map((shift) => digits.charAt((all >> shift) & 63)).join('');
    const left = bytes.length - k;
    coded += left > 2 ? four : four.slice(0, left + 1).padEnd(4, '=');
  }
  return coded;
}

/** The bytes of a text, read off its percent-encoding. */
function utf8(text: string): number[] {
  const encoded = encodeURIComponent(text.replace(/[\uD800-\uDFFF]/gu, '\uFFFD'));
  return Array.from(encoded.matchAll(/%([0-9A-F]{2})|[^%]/g), ([whole, hex]) =>
    hex === undefined ? whole.charCodeAt(0) : Number.parseInt(hex, 16),
  );
}
