import greek from '../fonts/plex-sans-greek.woff2?url';
import latin from '../fonts/plex-sans-latin1.woff2?url';
import signs from '../fonts/plex-sans-pi.woff2?url';
import { fileName, handOut } from '../hand-out.ts';

/** The faces that a drawing may need, each with a test for the letters that are only in it. */
const faces: readonly { readonly url: string; readonly holds: RegExp; readonly range: string }[] = [
  { url: latin, holds: /[\u0020-\u007E]/, range: 'U+0020-024F, U+2010-2044, U+2122, U+2212' },
  { url: greek, holds: /[\u0370-\u03FF]/, range: 'U+0370-03FF' },
  {
    url: signs,
    holds: /[\u2009\u202F\u2070-\u2116\u2126\u2150-\u2211\u2215-\u2265]/,
    range: 'U+2000-200D, U+202F, U+2070-2116, U+2126, U+2150-2211, U+2215-2265',
  },
];

/** Points of a picture for each pixel of the page, so that it is sharp in print and on any screen. */
const SCALE = 3;

/** Saves a drawing as it stands alone: the faces of its type go along, so that it looks the same everywhere. */
export async function savePicture(svg: string, title: string, kind: 'svg' | 'png'): Promise<void> {
  const whole = await withFaces(svg);
  if (kind === 'svg') handOut(whole, `${fileName(title)}.svg`, 'image/svg+xml');
  else handOut(await pictureOf(whole), `${fileName(title)}.png`, 'image/png');
}

async function withFaces(svg: string): Promise<string> {
  const needed = faces.filter(({ holds }) => holds.test(svg));
  const rules = await Promise.all(
    needed.map(async ({ url, range }) => rule(await (await fetch(url)).arrayBuffer(), range)),
  );
  return svg.replace(/(<svg[^>]*>)/, `$1<style>${rules.join('')}</style>`);
}

function rule(file: ArrayBuffer, range: string): string {
  let text = '';
  for (const byte of new Uint8Array(file)) text += String.fromCharCode(byte);
  return `@font-face{font-family:'Plex Sans';font-weight:100 700;src:url(data:font/woff2;base64,${btoa(text)}) format('woff2');unicode-range:${range}}`;
}

/** Drawn by the browser itself; a drawing with all it needs inside asks for nothing from outside. */
async function pictureOf(svg: string): Promise<Blob> {
  const url = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = image.naturalWidth * SCALE;
    canvas.height = image.naturalHeight * SCALE;
    canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) => {
      canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('The browser drew no picture.'))), 'image/png');
    });
  } finally {
    URL.revokeObjectURL(url);
  }
}
