import { describe, expect, test } from 'vitest';
import { galleryEntries } from '../../../src/app/pages/gallery-entries.ts';
import { foundEntries, groupedEntries } from '../../../src/components/gallery/find.ts';
import { isRefusal } from '../../../src/document/command.ts';
import { decodeDocument } from '../../../src/exchange/decode.ts';
import { templates } from '../../../templates/index.ts';
import { templateGroups, templateList } from '../../../templates/list.ts';

const entry = (id: string, title: string, group: string, words = '') => ({ id, title, summary: '', group, words });
const entries = [
  entry('a', 'Two drivers', 'Together?', 'Radiating area Sd'),
  entry('b', 'A box with a port', 'Box?', 'Port diameter'),
  entry('c', 'Saw list', 'Wood', 'Panels, port, driver'),
  entry('d', 'Three drivers', 'Together?'),
];
const idsFound = (search: string): string =>
  foundEntries(entries, search)
    .map(({ id }) => id)
    .join('');

describe('what the search of the gallery finds', () => {
  test.each([
    ['', 'abcd'],
    ['  ', 'abcd'],
    ['PORT', 'bc'],
    ['port driver', 'c'],
    ['box', 'b'],
    ['sd', 'a'],
    ['nothing like it', ''],
  ])('%j finds %j', (search, ids) => {
    expect(idsFound(search)).toBe(ids);
  });

  test('puts those first whose title says it', () => {
    expect(foundEntries([entry('x', 'Panels', 'Wood', 'saw'), entry('y', 'Saw list', 'Wood')], 'saw')[0]?.id).toBe('y');
  });
});

test('entries of one group stand together, in the order of the first of each', () => {
  const grouped = groupedEntries(entries).map(([group, members]) => [group, members.map(({ id }) => id).join('')]);
  expect(grouped).toEqual([
    ['Together?', 'ad'],
    ['Box?', 'b'],
    ['Wood', 'c'],
  ]);
});

const listed = galleryEntries(
  new Map(
    templates.flatMap(({ id, content }) => {
      const document = decodeDocument(content);
      return isRefusal(document) ? [] : [[id, document] as const];
    }),
  ),
);

describe('the starter sheets in the gallery', () => {
  test('are all there, each with a title, a summary and a group that is known', () => {
    expect(templates).toHaveLength(templateList.length);
    expect(listed.map(({ id }) => id)).toEqual(templateList.map(({ id }) => id));
    for (const { title, summary, group } of listed) {
      expect(title).not.toBe('');
      expect(summary).not.toBe('');
      expect(templateGroups).toContain(group);
    }
  });

  test('stand group by group', () => {
    const groups = groupedEntries(listed).map(([group]) => group);
    expect(groups).toEqual(templateGroups.filter((group) => groups.includes(group)));
  });

  test('are found by what stands in their cells, not by formulas', () => {
    const ids = (search: string) => foundEntries(listed, search).map(({ id }) => id);
    expect(ids('flange diameter')).toContain('two-driver-check');
    expect(ids('port')).toContain('vented-box');
    expect(ids('PAIR.WINDOW(')).toEqual([]);
  });
});
