import { expect, fixture, html } from '@open-wc/testing';
import { emulateMedia, sendKeys, setViewport } from '@web/test-runner-commands';
import '../../src/app/fonts/faces.css';
import type { BarsData } from '../../src/components/drawing/data.ts';
import type { LessonStep } from '../../src/components/lesson/data.ts';
import '../../src/components/lesson/lesson-steps.ts';
import type { LessonSteps } from '../../src/components/lesson/lesson-steps.ts';
import { asChosen, price } from '../components/drawing/samples.ts';
import { closedBox, plotOf, seriesOf } from '../components/plot/curves.ts';
import { paint } from './paint.ts';

const step = (number: number, guess = '', more: Partial<LessonStep> = {}): LessonStep => ({
  title: `Question ${String(number)}?`,
  text: 'What one has to know.',
  guess: { cell: `E${String(number)}`, label: 'Pad', text: guess, unit: 'dB' },
  asked: [],
  reveal: [{ label: 'Pad', shown: { kind: 'number', number: '5.3', unit: 'dB' } }],
  why: `Reason ${String(number)}.`,
  next: 'Where it leads.',
  ...more,
});
const curves = plotOf([seriesOf('Box', closedBox())]);
const drawing: BarsData = {
  form: 'bars',
  title: 'Cost',
  axis: price,
  bars: [asChosen],
  limits: [],
  system: 'metric',
};
const asked = [{ cell: 'D9', label: 'I can measure', text: 'no', choices: ['yes', 'no'], unit: '' }];

async function lesson(steps: readonly LessonStep[] = [step(1), step(2, '', { curves }), step(3, '', { asked })]) {
  const element = await fixture<LessonSteps>(html`<lesson-steps .steps=${steps}></lesson-steps>`);
  await element.updateComplete;
  return element;
}
const root = (element: LessonSteps): ShadowRoot => element.shadowRoot!;
const title = (element: LessonSteps): string => root(element).querySelector('h3')!.textContent;
const said = (element: LessonSteps): string => root(element).querySelector('[role=status]')!.textContent;
const press = async (element: LessonSteps, words: string): Promise<void> => {
  [...root(element).querySelectorAll('button')].find(({ textContent }) => textContent.trim() === words)!.click();
  await element.updateComplete;
};
const answers = (element: LessonSteps): object[] => {
  const given: object[] = [];
  element.addEventListener('answer', (event) => given.push((event as CustomEvent<object>).detail));
  return given;
};

before(paint);

describe('a lesson', () => {
  for (const colorScheme of ['light', 'dark'] as const) {
    it(`is accessible before and after the answer, ${colorScheme}`, async () => {
      await emulateMedia({ colorScheme });
      await expect(await lesson()).to.be.accessible();
      const answered = await lesson([step(1, '5 dB', { curves, asked, drawing })]);
      await expect(answered).to.be.accessible();
      expect([...root(answered).querySelectorAll('curve-plot, cell-plot')]).to.have.length(2);
    });
  }

  it('keeps the answer and the reason until a guess is made', async () => {
    const element = await lesson();
    expect(said(element).trim()).to.equal('');
    const given = answers(element);
    root(element).querySelector('input')!.focus();
    await sendKeys({ type: '4' });
    await sendKeys({ press: 'Enter' });
    expect(given).to.deep.equal([{ cell: 'E1', text: '4', unit: 'dB' }]);
    element.steps = [step(1, '4 dB'), step(2), step(3)];
    await element.updateComplete;
    expect(title(element)).to.equal('Question 1?');
    expect(said(element)).to.contain('5.3 dB').and.to.contain('Reason 1.').and.to.contain('Where it leads.');
  });

  it('shows the answer without a guess, and gives none for an empty one', async () => {
    const element = await lesson();
    const given = answers(element);
    await press(element, 'Guess');
    expect(given).to.deep.equal([]);
    await press(element, 'Show me');
    expect(said(element)).to.contain('5.3 dB');
    expect(given).to.deep.equal([]);
  });

  it('goes on, back and to any step, with the question in focus', async () => {
    const element = await lesson();
    await press(element, 'Skip');
    expect(title(element)).to.equal('Question 2?');
    expect(root(element).activeElement?.tagName).to.equal('H3');
    await press(element, 'Back');
    expect(title(element)).to.equal('Question 1?');
    await press(element, '3');
    expect(root(element).querySelector('[aria-current=step]')!.textContent.trim()).to.equal('3');
    expect(root(element).querySelector('.place')!.textContent).to.equal('Step 3 of 3');
  });

  it('begins where the guesses end', async () => {
    expect(title(await lesson([step(1, '5 dB'), step(2), step(3)]))).to.equal('Question 2?');
    expect(title(await lesson([step(1, '5 dB'), step(2, '1 dB')]))).to.equal('Question 2?');
  });

  it('asks what belongs to the question', async () => {
    const element = await lesson([step(1, '', { asked })]);
    const given = answers(element);
    const choice = root(element).querySelector('select')!;
    choice.value = 'yes';
    choice.dispatchEvent(new Event('change'));
    expect(given).to.deep.equal([{ cell: 'D9', text: 'yes', unit: '' }]);
  });

  it('can be begun again and finished', async () => {
    const element = await lesson([step(1, '5 dB'), step(2, '1 dB')]);
    const fired: string[] = [];
    for (const name of ['again', 'finish']) element.addEventListener(name, () => fired.push(name));
    await press(element, 'Finish');
    await press(element, 'Begin again');
    expect(fired).to.deep.equal(['finish', 'again']);
    expect(title(element)).to.equal('Question 1?');
  });

  it('fits the narrowest page with room for a finger', async () => {
    await setViewport({ width: 390, height: 844 });
    const element = await lesson();
    expect(element.scrollWidth).to.be.at.most(element.clientWidth);
    for (const button of root(element).querySelectorAll('button'))
      expect(button.getBoundingClientRect().height).to.be.at.least(44);
  });
});
