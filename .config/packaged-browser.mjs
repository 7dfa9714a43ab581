/**
 * The Chromium that browser tests, journeys and screenshots run in, so that neither a browser nor its
 * libraries and fonts need to be installed. Elsewhere than on 64-bit Intel Linux, or when CHROME_PATH
 * names one, an installed Chrome or Chromium is used.
 */
import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { brotliDecompress } from 'node:zlib';

const decompress = promisify(brotliDecompress);
const root = resolve(import.meta.dirname, '..');

const switches = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-dev-shm-usage',
  '--font-render-hinting=none',
];

const installed = {
  linux: [
    '/usr/bin/google-chrome',
    '/usr/bin/google-chrome-stable',
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/snap/bin/chromium',
  ],
  darwin: [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
  ],
  win32: [process.env['ProgramFiles'], process.env['ProgramFiles(x86)'], process.env['LocalAppData']]
    .filter(Boolean)
    .map((folder) => join(folder, 'Google/Chrome/Application/chrome.exe')),
};

/** Where the browser is, the switches it is started with, and the environment it needs. */
export async function findBrowser() {
  const named = process.env['CHROME_PATH'];
  if (named) {
    if (!existsSync(named))
      throw new Error(`CHROME_PATH names ${named}, where there is no browser. Correct or unset it.`);
    return { executablePath: named, args: switches, env: { ...process.env } };
  }
  if (process.platform === 'linux' && process.arch === 'x64') return unpacked();
  const found = (installed[process.platform] ?? []).find((path) => existsSync(path));
  if (!found) throw new Error('Browser tests need Chrome or Chromium: install one, or name it in CHROME_PATH.');
  return { executablePath: found, args: switches, env: { ...process.env } };
}

async function unpacked() {
  // The package's main file sits in build/cjs or build/esm, two folders below its root.
  const packed = join(dirname(fileURLToPath(import.meta.resolve('@sparticuz/chromium'))), '../..');
  const { version } = JSON.parse(await readFile(join(packed, 'package.json'), 'utf8'));
  const folder = join(root, 'node_modules/.cache/browser', version);
  if (!existsSync(folder)) await unpack(join(packed, 'bin'), folder);
  await keepFonts(folder);
  return {
    executablePath: join(folder, 'chromium'),
    args: switches,
    env: { ...process.env, LD_LIBRARY_PATH: join(folder, 'al2023/lib'), FONTCONFIG_PATH: folder },
  };
}

/** Unpacks beside the target and renames, so that two runs at once never see half a browser. */
async function unpack(bin, folder) {
  await mkdir(dirname(folder), { recursive: true });
  const draft = await mkdtemp(`${folder}-`);
  const read = async (name) => decompress(await readFile(join(bin, name)));
  await writeFile(join(draft, 'chromium'), await read('chromium.br'), { mode: 0o755 });
  await extract(await read('al2023.tar.br'), join(draft, 'al2023'));
  await extract(await read('fonts.tar.br'), join(draft, 'text'));
  await rename(draft, folder).catch(async (error) => {
    await rm(draft, { recursive: true });
    if (!existsSync(folder)) throw error;
  });
}

/** The list of fonts names its folder in full, so it is written again when the checkout has moved. */
async function keepFonts(folder) {
  const file = join(folder, 'fonts.conf');
  const wanted = fontsConfiguration(folder);
  if (!existsSync(file) || (await readFile(file, 'utf8')) !== wanted) await writeFile(file, wanted);
}

/** Only the packaged face, so that text is measured alike on every machine. */
const fontsConfiguration = (folder) => `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${folder}/text/fonts</dir>
  <cachedir>${folder}/text/cache</cachedir>
  <alias><family>sans-serif</family><prefer><family>Open Sans</family></prefer></alias>
</fontconfig>
`;

/** Writes the plain files of a tar archive; the packaged archives hold nothing else but folders. */
async function extract(archive, target) {
  const text = (start, length) => archive.toString('utf8', start, start + length).split('\0', 1)[0];
  for (let at = 0; at + 512 <= archive.length && archive[at] !== 0;) {
    const size = Number.parseInt(text(at + 124, 12), 8);
    const kind = text(at + 156, 1);
    if (kind === '0' || kind === '') {
      const path = join(target, text(at, 100));
      await mkdir(dirname(path), { recursive: true });
      await writeFile(path, archive.subarray(at + 512, at + 512 + size), { mode: 0o755 });
    }
    at += 512 + Math.ceil(size / 512) * 512;
  }
}
