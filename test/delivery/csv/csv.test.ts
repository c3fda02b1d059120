import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fillIn } from '../../../src/delivery/csv/fillIn.ts';
import { oneRosterFiles } from '../../../src/delivery/csv/oneRoster.ts';
import { readRoster } from '../../../src/delivery/csv/roster.ts';
import { guarded, readTable, writeAsBrought, writeOwn } from '../../../src/delivery/csv/table.ts';

/** RFC 4180, section 2, items 1 to 7. */
describe('reading', () => {
  test.each([
    ['lines ended by CRLF, the last one or not', 'a,b\r\n1,2\r\n', 'a,b\r\n1,2'],
    ['quotes, commas and line breaks in quotes', '"a","b"\r\n"1","2"', 'a,b\n1,2'],
  ])('%s', (_, one, other) => {
    expect(readTable(one).rows).toEqual(readTable(other).rows);
  });

  test('quoted cells', () => {
    const { head, rows } = readTable('a,b\r\n"x ""y"", z","1\r\n2"\r\n');
    expect([head, rows]).toEqual([['a', 'b'], [['x "y", z', '1\r\n2']]]);
  });

  test('semicolons, a byte order mark, short rows', () => {
    const table = readTable('\ufeffa;b\n1;"2;3"\n4\n');
    expect(table).toMatchObject({ delimiter: ';', hasByteOrderMark: true, rows: [['1', '2;3'], ['4']] });
    expect(writeAsBrought(table)).toBe('\ufeffa;b\n1;"2;3"\n4\n');
  });
});

/** OWASP, "CSV Injection": cells that begin with = + - @, a tab or a carriage return, and their wide forms. */
describe('cells that a spreadsheet would take for a formula', () => {
  test.each([
    '=1+1',
    '+A1',
    '-A1',
    '@SUM(A1)',
    '\t=1',
    '\r=1',
    '＝1',
    ' =1',
    '\n=1',
    '\u200e=1',
    '=HYPERLINK("http://x","y")',
  ])('%j', (cell) => {
    expect(guarded(cell)).toBe(`'${cell}`);
    const [[written]] = readTable(writeOwn(['a'], [[cell]])).rows as [[string]];
    expect(written.startsWith("'")).toBe(true);
  });

  test.each(['-3', '+2.5', '-0,75', 'Otter', '', '3-4', "'=already"])('%j is none', (cell) => {
    expect(guarded(cell)).toBe(cell);
  });
});

test('what is written is read back, whatever stands in it', () => {
  const cell = fc.string({ unit: 'grapheme' }).filter((text) => guarded(text) === text);
  const row = fc.array(cell, { minLength: 2, maxLength: 2 }).filter(([a, b]) => a !== '' || b !== '');
  fc.assert(
    fc.property(fc.array(row, { minLength: 1 }), (rows) => {
      expect(readTable(writeOwn(['first', 'second'], rows)).rows).toEqual(rows);
    }),
    { seed: 2 },
  );
});

describe('a roster', () => {
  test('keeps its order, passes over other columns, and trims', () => {
    const read = readRoster('No.,Name,Learner\n1, Anna Otter , otter-7\n2,,toad-2\n');
    expect(read).toEqual({
      ok: true,
      value: {
        learners: [
          { learner: 'otter-7', name: 'Anna Otter' },
          { learner: 'toad-2', name: '' },
        ],
      },
    });
  });

  test.each([
    ['without a column', 'code,name\na,b\n', '/0'],
    ['with a code twice', 'learner,name\na,x\nb,y\na,z\n', '/3'],
    ['with an empty code', 'learner,name\na,x\n,y\n', '/2'],
    ['that is empty', '', '/0'],
  ])('%s is refused at its line', (_, text, place) => {
    expect(readRoster(text)).toMatchObject({ ok: false, refusal: { place } });
  });
});

test('a quote that is never closed is refused, since it swallows what comes after', () => {
  expect(readRoster('learner,name\na,"x\nb,y\n')).toMatchObject({
    ok: false,
    refusal: { found: 'a quote that is never closed' },
  });
});

test('our own cells are all in quotes, for spreadsheets that part them at semicolons', () => {
  expect(writeOwn(['a'], [['x;=1+1']])).toBe('"a"\r\n"x;=1+1"\r\n');
});

describe('filling marks in', () => {
  const marks = new Map([
    ['otter-7', '90'],
    ['heron-1', '40'],
  ]);

  test('changes one column of the lines it knows, and tells of the others', () => {
    const filled = fillIn(
      'Id,Who,Points\r\n1,otter-7,\r\n2,"Crow, C",3\r\n',
      { learner: 'Who', mark: 'Points' },
      marks,
    );
    expect(filled).toEqual({
      ok: true,
      value: {
        csv: 'Id,Who,Points\r\n1,otter-7,90\r\n2,"Crow, C",3\r\n',
        filled: 1,
        withoutMark: ['Crow, C'],
        notInFile: ['heron-1'],
      },
    });
  });

  test('of a column that is not there is refused', () => {
    expect(fillIn('a,b\n1,2\n', { learner: 'a', mark: 'Mark' }, marks)).toMatchObject({ ok: false });
  });
});

describe('OneRoster 1.2', () => {
  const ids = { school: 'school-1', classOf: 'class-3', session: 'autumn' };
  const assigned = { id: 'quay-1', title: 'On the quay', due: '2026-12-04T17:00+01:00' };
  const scored = [
    { student: 'otter-7', score: 90, late: true, comment: '=well' },
    { student: 'heron-1', score: null, late: false, comment: '' },
  ];
  const files = oneRosterFiles(assigned, ids, scored, '2026-12-06T10:00:00.000Z');
  const table = (name: string) => {
    const { head, rows } = readTable(files[name]!);
    return rows.map((row) => Object.fromEntries(head.map((title, i) => [title, row[i]])));
  };

  test('says in its manifest that it is a delta, and names every file of the standard', () => {
    const manifest = new Map(table('manifest.csv').map(({ propertyName, value }) => [propertyName, value]));
    expect(manifest.get('oneroster.version')).toBe('1.2');
    const delta = [...manifest].filter(([, value]) => value === 'delta').map(([name]) => name);
    expect(delta).toEqual(['file.categories', 'file.lineItems', 'file.results']);
    expect([...manifest.keys()].filter((name) => name?.startsWith('file.'))).toHaveLength(21);
  });

  test('has a result a student, tied to its line item', () => {
    const [item] = table('lineItems.csv');
    expect(item).toMatchObject({
      title: 'On the quay',
      dueDate: '2026-12-04',
      resultValueMax: '100',
      schoolSourcedId: 'school-1',
    });
    const [otter, heron] = table('results.csv');
    expect(otter).toMatchObject({
      studentSourcedId: 'otter-7',
      score: '90',
      scoreStatus: 'fully graded',
      late: 'true',
      comment: "'=well",
    });
    expect(heron).toMatchObject({ score: '', scoreStatus: 'not submitted', missing: 'true' });
    expect(otter!.lineItemSourcedId).toBe(item!.sourcedId);
    expect(item!.categorySourcedId).toBe(table('categories.csv')[0]!.sourcedId);
  });

  test('gives the same ids again, and others for another class', () => {
    const again = oneRosterFiles(assigned, ids, scored, '2027-01-01T00:00:00.000Z');
    expect(readTable(again['results.csv']!).rows[0]![0]).toBe(readTable(files['results.csv']!).rows[0]![0]);
    const other = oneRosterFiles(assigned, { ...ids, classOf: 'class-4' }, scored, '2027-01-01T00:00:00.000Z');
    expect(readTable(other['results.csv']!).rows[0]![0]).not.toBe(readTable(files['results.csv']!).rows[0]![0]);
  });
});
