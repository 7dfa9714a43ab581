/** Bytes as text that an address can hold unescaped (RFC 4648, section 5, without padding), and a sum to tell damage by. */

export function toBase64Url(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/** Nothing for a text of any other kind. */
export function fromBase64Url(text: string): Uint8Array<ArrayBuffer> | undefined {
  if (!/^[\w-]*$/.test(text) || text.length % 4 === 1) return undefined;
  const bytes = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(bytes, (byte) => byte.charCodeAt(0));
}

const POLYNOMIAL = 0xed_b8_83_20;

/** The cyclic redundancy check of ISO 3309 with 32 bits, as eight hexadecimal digits. */
export function checksum(bytes: Uint8Array): string {
  let sum = 0xff_ff_ff_ff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ POLYNOMIAL : sum >>> 1;
  }
  return ((sum ^ 0xff_ff_ff_ff) >>> 0).toString(16).padStart(8, '0');
}
