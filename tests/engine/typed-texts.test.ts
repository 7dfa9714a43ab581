import { describe, expect, test } from 'vitest';
import { createEngine } from '../../src/engine/direct.ts';
import { sheetWith, told } from './sheet.ts';

describe('typed texts', () => {
  test.each([
    ['12:30', { kind: 'text', text: '12:30' }],
    ['3.4.5', { kind: 'text', text: '3.4.5' }],
    ['1/2/2024', { kind: 'text', text: '1/2/2024' }],
    ["'=1+1", { kind: 'text', text: '=1+1' }],
    ["''quoted", { kind: 'text', text: "'quoted" }],
    ['5%x', { kind: 'text', text: '5%x' }],
    ['$5', { kind: 'number', value: 5 }],
    ['$B5', { kind: 'text', text: '$B5' }],
    ['true', { kind: 'truth', truth: true }],
    ['3.3e-12 F', { kind: 'number', value: 3.3e-12 }],
    ['=1/3', { kind: 'number', value: 1 / 3 }],
    ['=1.6E-13*2', { kind: 'number', value: 3.2e-13 }],
    ['=IF(TRUE, FALSE, TRUE)', { kind: 'truth', truth: false }],
    ['="say ""so"""', { kind: 'text', text: 'say "so"' }],
    ['="back\\"', { kind: 'text', text: 'back\\' }],
  ])('%s is what it is', async (text, value) => {
    const all = await told(createEngine(), sheetWith({ A1: text }));
    expect(all.value('A1')).toEqual(value);
  });
});
