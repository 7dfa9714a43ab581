import { expect } from '@open-wc/testing';
import { emulateMedia, sendKeys, setViewport } from '@web/test-runner-commands';
import '../../src/app/fonts/faces.css';

describe('the faces of the application', () => {
  for (const [name, sample] of [
    ['Latin', 'Qts'],
    ['Greek', 'Ωπρ'],
    ['signs', '≤≥→√'],
  ] as const) {
    it(`has ${name}`, async () => {
      const faces = await document.fonts.load('400 14px "Plex Sans"', sample);
      expect(faces.map((face) => face.status)).to.deep.equal(['loaded']);
    });
  }

  it('has figures of one width, so that columns align', async () => {
    await document.fonts.load('400 14px "Plex Sans"', '0123456789');
    const context = document.createElement('canvas').getContext('2d');
    if (!context) throw new Error('This browser has no canvas.');
    context.font = '400 100px "Plex Sans"';
    const widths = [...'0123456789'].map((figure) => context.measureText(figure).width);
    expect(new Set(widths).size).to.equal(1);
  });
});

describe('the browser under test', () => {
  it('takes keys, sizes and colour schemes as a reader would give them', async () => {
    const field = document.createElement('input');
    field.setAttribute('aria-label', 'Volume');
    document.body.append(field);
    field.focus();
    await sendKeys({ type: '28.5 L' });
    expect(field.value).to.equal('28.5 L');
    await expect(field).to.be.accessible();
    field.remove();

    await setViewport({ width: 820, height: 1180 });
    expect(window.innerWidth).to.equal(820);
    await emulateMedia({ colorScheme: 'dark' });
    expect(matchMedia('(prefers-color-scheme: dark)').matches).to.equal(true);
    await emulateMedia({ colorScheme: 'light' });
  });

  it('finds what is not accessible', async () => {
    const field = document.createElement('input');
    document.body.append(field);
    const complaint = await Promise.resolve(expect(field).to.be.accessible()).then(
      () => '',
      (error: unknown) => String(error),
    );
    field.remove();
    expect(complaint).to.contain('label');
  });
});
