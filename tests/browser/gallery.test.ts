import { expect, fixture, html, nextFrame } from '@open-wc/testing';
import { emulateMedia, sendKeys, setViewport } from '@web/test-runner-commands';
import '../../src/app/fonts/faces.css';
import type { GalleryEntry, SheetImage } from '../../src/components/gallery/data.ts';
import '../../src/components/gallery/template-gallery.ts';
import type { TemplateGallery } from '../../src/components/gallery/template-gallery.ts';
import { closedBox } from '../components/plot/curves.ts';
import { paint } from './paint.ts';

const entry = (id: string, title: string, group: string): GalleryEntry => ({
  id,
  title,
  summary: `What ${title} is for.`,
  group,
  words: id === 'port' ? 'Port diameter' : '',
});
const entries = [
  entry('two', 'Two drivers', 'Together?'),
  entry('three', 'Three drivers', 'Together?'),
  entry('port', 'A vented box', 'Which box?'),
];
const images: ReadonlyMap<string, SheetImage> = new Map([
  [
    'two',
    {
      sections: [
        { title: 'Drivers', good: 0, caution: 0, fail: 0 },
        { title: 'Window', good: 2, caution: 1, fail: 0 },
      ],
      curves: {
        title: 'Response',
        series: [{ label: 'Box', line: 'system', curve: closedBox() }],
        limits: [],
        marks: [{ label: 'F3', frequency: 60 }],
        horizontal: [20, 500],
        system: 'metric',
      },
    },
  ],
  ['three', { sections: [], figures: [{ label: 'Price', text: '192 ¤' }] }],
]);

async function gallery(): Promise<TemplateGallery> {
  const element = await fixture<TemplateGallery>(
    html`<template-gallery empty .entries=${entries} .images=${images}></template-gallery>`,
  );
  await nextFrame();
  return element;
}
const focused = (element: TemplateGallery): string =>
  (element.shadowRoot?.activeElement as HTMLElement | null)?.dataset['id'] ??
  element.shadowRoot?.activeElement?.tagName ??
  'nothing';
const titles = (element: TemplateGallery): string[] =>
  [...element.shadowRoot!.querySelectorAll('.title')].map(({ textContent }) => textContent.trim());
const chosen = (element: TemplateGallery): string[] => {
  const ids: string[] = [];
  element.addEventListener('choose', (event) => ids.push((event as CustomEvent<{ id: string }>).detail.id));
  return ids;
};

before(paint);

describe('the gallery of starter sheets', () => {
  for (const colorScheme of ['light', 'dark'] as const) {
    it(`is accessible, ${colorScheme}`, async () => {
      await emulateMedia({ colorScheme });
      await expect(await gallery()).to.be.accessible();
    });
  }

  it('says in words what its pictures show', async () => {
    const element = await gallery();
    const described = element.shadowRoot!.querySelector('#picture-two')!.textContent;
    expect(described).to.equal('Sections: Drivers; Window. Verdicts as it comes: 2 good, 1 caution.');
  });

  it('draws the first plot, or the first numbers where there is none', async () => {
    const element = await gallery();
    const [two, three] = [...element.shadowRoot!.querySelectorAll('sheet-image')].map((each) => each.shadowRoot!);
    expect(two!.querySelector('path.curve.system')!.getAttribute('d')).to.match(/^M-?[\d.]/);
    expect(two!.querySelectorAll('path.needle').length).to.equal(1);
    expect(three!.querySelector('dd')!.textContent).to.equal('192 ¤');
  });

  it('finds by words, and says how many there are', async () => {
    const element = await gallery();
    element.focus();
    expect(focused(element)).to.equal('INPUT');
    await sendKeys({ type: 'port' });
    await element.updateComplete;
    expect(titles(element)).to.deep.equal(['A vented box']);
    expect(element.shadowRoot!.querySelector('[role=status]')!.textContent.trim()).to.equal('1 starter sheet');
    await sendKeys({ type: ' nowhere' });
    await element.updateComplete;
    expect(element.shadowRoot!.querySelector('[role=status]')!.textContent).to.contain('try another word');
  });

  it('takes the only one found on Enter', async () => {
    const element = await gallery();
    const ids = chosen(element);
    element.focus();
    await sendKeys({ type: 'vented' });
    await element.updateComplete;
    await sendKeys({ press: 'Enter' });
    expect(ids).to.deep.equal(['port']);
  });

  it('is walked through by the arrows and takes a card on Enter', async () => {
    await setViewport({ width: 1000, height: 800 });
    const element = await gallery();
    const ids = chosen(element);
    element.focus();
    const way: string[] = [];
    for (const press of ['ArrowDown', 'ArrowRight', 'ArrowDown', 'ArrowUp', 'ArrowUp']) {
      await sendKeys({ press });
      way.push(focused(element));
    }
    expect(way).to.deep.equal(['two', 'three', 'port', 'two', 'INPUT']);
    await sendKeys({ press: 'ArrowDown' });
    await sendKeys({ press: 'Enter' });
    expect(ids).to.deep.equal(['two']);
  });

  it('offers an empty document', async () => {
    const element = await gallery();
    let isAsked = false;
    element.addEventListener('empty', () => (isAsked = true));
    element.shadowRoot!.querySelector<HTMLButtonElement>('.search button')!.click();
    expect(isAsked).to.equal(true);
  });

  it('fits the narrowest page', async () => {
    await setViewport({ width: 390, height: 844 });
    const element = await gallery();
    expect(element.scrollWidth).to.be.at.most(element.clientWidth);
    for (const button of element.shadowRoot!.querySelectorAll('.search button'))
      expect(button.getBoundingClientRect().height).to.be.at.least(44);
  });
});
