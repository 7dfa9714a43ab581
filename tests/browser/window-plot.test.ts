import { expect, fixture, html, nextFrame } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { Limit, Window } from '../../functions/values/window.ts';
import '../../src/app/fonts/faces.css';
import '../../src/components/plot/window-plot.ts';
import type { WindowPlot } from '../../src/components/plot/window-plot.ts';
import { texts, within } from './inside.ts';
import { paint } from './paint.ts';

before(paint);

describe('a plot of the shared window', () => {
  const limit = (name: string, at: number, stretched: number): Limit => ({ name, at, stretched });
  const windowOf = (floor: Limit, ceiling: Limit): Window => ({
    kind: 'window',
    floors: [floor],
    ceilings: [ceiling, limit('spacing', 3200, 4000)],
    low: floor,
    high: ceiling,
    octaves: Math.log2(ceiling.at / floor.at),
    stretchedOctaves: Math.log2(ceiling.stretched / floor.stretched),
  });
  const met = windowOf(limit('resonance', 1500, 1200), limit('narrowing', 3000, 3500));
  const stretched = windowOf(limit('resonance', 2000, 1500), limit('narrowing', 1800, 2200));
  const apart = windowOf(limit('resonance', 3000, 2500), limit('narrowing', 1500, 1800));

  async function windowPlot(shown: Window, ghost?: Window): Promise<WindowPlot> {
    const given = {
      title: 'Shared window',
      window: shown,
      ghost,
      marks: [{ label: 'Hand-over', frequency: 2150 }],
      horizontal: [200, 20000] as const,
      system: 'metric' as const,
    };
    const frame = await fixture<HTMLElement>(html`<div><window-plot .data=${given}></window-plot></div>`);
    frame.style.width = '364px';
    await nextFrame();
    await nextFrame();
    const element = frame.querySelector('window-plot')!;
    await element.updateComplete;
    return element;
  }

  for (const [name, shown, words, kind] of [
    ['met', met, /shared, 1 octave$/, 'shared'],
    ['met only by stretched rules', stretched, /^Shared only with stretched rules/, 'loose'],
    ['missed', apart, /^No shared window: 1 octave apart/, 'gap'],
  ] as const)
    it(`says in words and as a band that the drivers' limits are ${name}`, async () => {
      const element = await windowPlot(shown);
      expect(texts(element, '.outcome')[0]).to.match(words);
      expect(element.shadowRoot!.querySelector(`.band.${kind}`)).not.to.equal(null);
      await expect(element).to.be.accessible();
    });

  it('has a bar for every rule and makes the binding ones bold', async () => {
    const element = await windowPlot(met);
    expect(texts(element, 'text.rule')).to.have.length(3);
    expect(texts(element, 'text.rule.binding').map((text) => text.split(' ')[0])).to.deep.equal([
      'resonance',
      'narrowing',
    ]);
  });

  it('says what the rules make of the frequency under the pointer, and of one gone to by key', async () => {
    const element = await windowPlot(met);
    const reader = within(element, '.crosshair');
    const { left, top, width } = within(element, '.drawing').getBoundingClientRect();
    const at = async (hertz: number): Promise<string | undefined> => {
      // The drawing leaves 38 pixels for the axis on its left and 10 on its right.
      const x = left + 38 + ((width - 48) * Math.log(hertz / 200)) / Math.log(100);
      reader.dispatchEvent(new PointerEvent('pointermove', { clientX: x, clientY: top + 40 }));
      await element.updateComplete;
      return texts(element, '.outcome')[0];
    };
    expect(await at(2000)).to.match(/^2\s000\sHz: allowed by every rule$/);
    expect(await at(1300)).to.match(/^1\s300\sHz: resonance only when stretched$/);
    expect(await at(8000)).to.match(/^8\s000\sHz: forbidden by spacing, narrowing$/);
    reader.dispatchEvent(new PointerEvent('pointerleave'));
    await element.updateComplete;
    expect(texts(element, '.outcome')[0]).to.match(/shared, 1 octave$/);
    (reader as HTMLElement).focus();
    await sendKeys({ press: 'ArrowRight' });
    await element.updateComplete;
    expect(reader.getAttribute('aria-valuetext')).to.match(/^2\s059\sHz: allowed by every rule$/);
  });

  it('shows where a rule was at the baseline', async () => {
    const element = await windowPlot(met, stretched);
    expect(element.shadowRoot!.querySelectorAll('.end-line.was')).to.have.length(2);
    expect(texts(await windowPlot(met, met), '.compared')).to.deep.equal(['same as baseline']);
  });

  it('tells the needle inside from outside', async () => {
    const label = within(await windowPlot(met), '[role=img]').getAttribute('aria-label');
    expect(label).to.contain('is inside the shared window');
    const outside = within(await windowPlot(stretched), '[role=img]').getAttribute('aria-label');
    expect(outside).to.contain('is outside the shared window');
  });
});
