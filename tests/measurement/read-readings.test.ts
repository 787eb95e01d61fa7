import fc from 'fast-check';
import { type ReadingOptions, readReadings } from 'protolysis/measurement';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const codes = (text: string, options?: ReadingOptions) =>
  readReadings(text, options).findings.map(({ code }) => code);
const table = (mL: readonly number[], pH: readonly number[]) => mL.map((v, k) => `${v}\t${pH[k]}`).join('\n');

describe('burette readings', () => {
  test('become totals exactly as decimals: 12.35 - 0.05 is 12.30', () => {
    const { readings } = readReadings(
      { mL: [0.05, 0.15, 12.35], pH: [3, 3.1, 4] },
      { volumes: 'burette', initial: 0.05 },
    );
    expect(readings.mL).toEqual([0, 0.1, 12.3]);
    expect(12.35 - 0.05).not.toBe(12.3);
  });

  test('below the first are named', () =>
    expect(readReadings('1.0\t3\n0.5\t3.1\n2\t3.2', { volumes: 'burette', initial: '1.0' }).lines[1]).toEqual(
      {
        line: 2,
        as: 'faulty',
        reason: 'its burette reading is below the first, 1 mL',
      },
    ));

  test('that were added each time are summed exactly', () =>
    expect(readReadings('0.1\t3\n0.2\t3.1\n0.1\t3.2', { volumes: 'increments' }).readings.mL).toEqual([
      0.1, 0.3, 0.4,
    ]));
});

describe('the same readings are read', () => {
  const same = { mL: [0, 1.5, 3], pH: [2.88, 3.9, 4.25], notes: [] };
  test.each([
    ['with tabs', '0.00\t2.88\n1.50\t3.90\n3.00\t4.25'],
    ['with tabs and decimal commas', '0,00\t2,88\n1,50\t3,90\n3,00\t4,25'],
    ['with commas', 'mL,pH\n0.00,2.88\n1.50,3.90\n3.00,4.25'],
    ['with commas and blanks', 'V (mL), pH\r\n0.00, 2.88\r\n1.50, 3.90\r\n3.00, 4.25'],
    ['with semicolons and decimal commas', 'mL;pH\n0,00;2,88\n1,50;3,90\n3,00;4,25'],
    ['with blanks', '0,00   2,88\n1,50   3,90\n3,00   4,25'],
    ['in quotation marks, columns exchanged', '"pH","volume added"\n"2.88","0"\n"3.90","1.5"\n"4.25","3"'],
    ['between blank lines and remarks', '\uFEFF# monday\n\n0\t2.88\n1.5\t3.9\n\n3\t4.25\n'],
  ])('%s', (_, text) => {
    const report = readReadings(text);
    expect(report.readings).toEqual(same);
    expect(report).toMatchObject({ status: 'clean', findings: [], changes: [] });
  });
});

test('times are read where there is a column of them', () =>
  expect(readReadings('t/s;mL;pH\n0;0;3\n15;1;3.1\n30;2;3.2').readings).toMatchObject({
    mL: [0, 1, 2],
    seconds: [0, 15, 30],
  }));

describe('what looks wrong is said', () => {
  test('every faulty line, with the reason', () => {
    const { lines, findings } = readReadings('mL\tpH\n0\t3\n1\t\nx\t3.2\n3\t25\n4\t3.4\n5\t3.5');
    expect(lines.map(({ as }) => as)).toEqual([
      'heading',
      'reading',
      'faulty',
      'faulty',
      'faulty',
      'reading',
      'reading',
    ]);
    expect(findings[0]?.words).toBe(
      "Line 3 is no reading: it has no pH. Line 4 is no reading: 'x' is not a number. Line 5 is no reading: its pH is 25, outside -2 to 16.",
    );
  });

  test.each([
    ['increments', table([1, 1, 1, 0.5, 0.5], [3, 3.1, 3.2, 3.3, 3.4])],
    ['falling', table([0, 1, 2, 1.5, 3, 4], [3, 3.1, 3.2, 3.3, 3.4, 3.5])],
    ['repeated-lines', table([0, 1, 1, 2, 3], [3, 3.1, 3.1, 3.3, 3.4])],
    ['repeated-volumes', table([0, 1, 1, 2, 3], [3, 3.1, 3.2, 3.3, 3.4])],
    ['missing-lines', table([0, 1, 2, 4, 5], [3, 3.1, 3.2, 3.3, 3.4])],
    ['swapped-columns', table([3, 3.1, 3.2, 3.3], [0, 10, 20, 30])],
    ['mixed-decimals', '0,00;3.0\n1,00;3.1\n2,00;3.2'],
    ['unclear-commas', '0,00,3,10\n1,00,3,20\n2,00,3,30'],
    ['unknown-headings', 'a\tb\n0\t3\n1\t3.1\n2\t3.2'],
    ['unused-columns', 'mL\tpH\tpH after a minute\n0\t3\t3\n1\t3.1\t3\n2\t3.2\t3'],
    ['unused-columns', 'mL\tpH\n0\t3\t1\n1\t3.1\t1\n2\t3.2\t2'],
    ['repeated-lines', table([10, 10, 10, 10, 10, 10], [7, 7, 7, 7, 7, 7])],
    ['other-unit', 'V / L\tpH\n0\t3\n0.001\t3.1\n0.002\t3.2'],
    ['other-unit', 'volume (µL)\tpH\n0\t3\n100\t3.1\n200\t3.2'],
    ['other-unit', 'titrant, dm³\tpH\n0\t3\n0.001\t3.1\n0.002\t3.2'],
    ['other-unit', 'drops\tpH\n0\t3\n10\t3.1\n20\t3.2'],
    ['too-few', '0\t3'],
  ])('%s', (code, text) => expect(codes(text)).toContain(code));

  test('a burette that falls at every line, which no repair adds up', () => {
    const text = 'mL,pH\n50,11.4\n45,10.7\n40,10.2\n35,9.8\n30,8.3\n25,6.5';
    const { readings, findings, changes } = readReadings(text, { repair: true });
    expect(findings.map(({ code }) => code)).toEqual(['falling']);
    expect(readings.mL).toEqual([50, 45, 40, 35, 30, 25]);
    expect(changes).toEqual([]);
  });

  test.each([
    ['Group 7\nNo.\tmL\tpH', 2],
    ['Group 7\t\t\n\nInitial reading: 0,65 mL\t\t\nNo.\tmL\tpH', 4],
    ['Group 7, pool powder\n# monday\nNo.,mL,pH', 3],
  ])('titles above the heading are none: %j', (head, line) => {
    const by = head.includes('\t') ? '\t' : ',';
    const text = [head, ...['0 0 11.4', '1 2 11.1', '2 4 10.8'].map((row) => row.replace(/ /g, by))].join(
      '\n',
    );
    const { status, readings, lines } = readReadings(text);
    expect(status).toBe('clean');
    expect(readings).toEqual({ mL: [0, 2, 4], pH: [11.4, 11.1, 10.8], notes: ['Not read: No.'] });
    expect(lines[line - 1]?.as).toBe('heading');
    expect(lines[0]?.as).toBe('comment');
  });

  test('a heading between readings is a faulty line, not a heading', () =>
    expect(readReadings('0\t3\n1\t3.1\nmL\tpH\n2\t3.2').lines[2]?.as).toBe('faulty'));

  test('too few readings, in plain words', () => {
    const words = (text: string) => readReadings(text).findings.at(-1)?.words;
    expect(words('a\tb')).toBe('No line is a reading.');
    expect(words('mL\tpH\n0\t3')).toBe('Only 1 of 2 lines is a reading.');
    expect(words('0\t3\n1\t3.1')).toBe('Only 2 of 2 lines are readings.');
  });

  test('a report is a few lines as a text', () =>
    expect(
      String(
        readReadings('No.\tmL\tpH\n1\t0\t3\n2\t1\tx\n3\t2\t3.25\n4\t2\t3.25\n5\t3\t3.5', { repair: true }),
      ),
    ).toBe(
      [
        '3 readings in 6 lines, 0 to 3 mL, pH 3 to 3.5: doubtful',
        "  Line 3 is no reading: 'x' is not a number.",
        '  changed: Dropped as copies of the line before: line 5.',
        '  note: Not read: No.',
      ].join('\n'),
    ));

  test('a column of remarks is a note, and no reason to doubt the others', () => {
    const { status, readings } = readReadings('mL\tpH\tremark\t\n0\t3\tred\t\n1\t3.1\t\t?\n2\t3.2\tblue\t');
    expect(status).toBe('clean');
    expect(readings.notes).toEqual(['Not read: remark, column 4.']);
  });

  test('a line with more cells than there are columns is named: a decimal comma among commas looks like that', () => {
    const { findings, readings } = readReadings('mL,pH\n0,11.3\n0.5,11.2\n1.0,11,1\n1.5,11');
    expect(readings.pH).toEqual([11.3, 11.2, 11, 11]);
    expect(findings).toEqual([
      {
        code: 'unused-columns',
        lines: [4],
        words:
          'In line 4: more cells than the 2 columns; the rest was not read, and may be what follows a decimal comma.',
      },
    ]);
  });

  test('readings of a burette taken for totals, where the heading names it and the first is not zero', () => {
    const text = 'burette;pH\n0,35;3\n1,35;3,1\n2,35;3,2';
    const { findings } = readReadings(text);
    expect(findings).toEqual([
      {
        code: 'burette-as-totals',
        lines: [1],
        words:
          "The heading 'burette' names a burette that began at 0.35 mL, and its readings were taken as totals: say volumes: 'burette' with initial, or volumes: 'totals' where they are.",
      },
    ]);
    expect(codes(text, { volumes: 'totals' })).toEqual([]);
    expect(codes(text, { volumes: 'burette', initial: 0.35 })).toEqual([]);
    expect(codes('burette;pH\n0;3\n1;3,1\n2;3,2')).toEqual([]);
  });

  test.each(['V', 'V / mL', 'added (ml)', 'V_total/cm³', 'volume of 0.1 mol/L NaOH, mL', 'Burette'])(
    'nothing about the unit of a column headed %s',
    (heading) => expect(codes(`${heading}\tpH\n0\t3\n1\t3.1\n2\t3.2`)).toEqual([]),
  );

  test('and left as it is', () =>
    expect(readReadings(table([1, 1, 1, 1], [3, 3.1, 3.2, 3.3])).readings.mL).toEqual([1, 1, 1, 1]));
});

describe('a repair says what it changed', () => {
  test.each([
    ['exchanges columns', table([3, 3.1, 3.2, 3.3], [0, 10, 20, 30]), [0, 10, 20, 30], 'exchanged'],
    ['adds increments up', table([1, 1, 0.1, 0.1], [3, 3.1, 3.2, 3.3]), [1, 2, 2.1, 2.2], 'added up'],
    ['drops copies', table([0, 1, 1, 2, 3], [3, 3.1, 3.1, 3.3, 3.4]), [0, 1, 2, 3], 'line 3'],
  ])('%s', (_, text, mL, words) => {
    const report = readReadings(text, { repair: true });
    expect(report.readings.mL).toEqual(mL);
    expect(report.changes.join()).toContain(words);
    expect(report.status).toBe('clean');
  });

  test('and never turns a falling burette round', () =>
    expect(codes(table([0, 1, 2, 1.5, 3, 4], [3, 3.1, 3.2, 3.3, 3.4, 3.5]), { repair: true })).toEqual([
      'falling',
    ]));
});

describe('for any text', () => {
  const piece = fc.oneof(
    fc.string(),
    fc.constantFrom('\n', '\t', ';', ',', '"', '0', '1,5', '3.2', 'pH', ' ', '\r'),
  );
  const text = fc.array(piece, { maxLength: 60 }).map((pieces) => pieces.join(''));

  test('every line is accounted for, and every reading comes from one', () =>
    fc.assert(
      fc.property(text, fc.boolean(), (garbage, repair) => {
        const { lines, readings } = readReadings(garbage, { repair });
        expect(lines.map(({ line }) => line)).toEqual(garbage.split(/\r\n|\r|\n/).map((_, k) => k + 1));
        expect(readings.mL).toHaveLength(lines.filter(({ as }) => as === 'reading').length);
        for (const { as, reason } of lines) expect(reason === '').toBe(as !== 'faulty' && as !== 'dropped');
        for (const value of [...readings.mL, ...readings.pH]) expect(Number.isFinite(value)).toBe(true);
      }),
    ));
});

test('a text of 100 000 lines, most of them copies, is read like a short one', () => {
  const { lines, readings, changes } = readReadings('1\t7\n'.repeat(100_000), {
    volumes: 'burette',
    initial: 0,
    repair: true,
  });
  expect([lines.length, readings.mL.length, changes.length]).toEqual([100_001, 1, 1]);
});

test('a text of more lines than that is refused by its lines, blank ones too', () => {
  expect(listed(() => readReadings('\n'.repeat(100_001)))).toEqual(['out-of-range input']);
  expect(() => readReadings('\n'.repeat(1_000_000))).toThrow('input is a text of 1000000 lines');
  expect(() => readReadings('1'.repeat(2_000_001))).toThrow('input is a text of 2000001 characters');
});

test('a report survives JSON', () => {
  const report = readReadings('0\t3\n1\tx\n2\t3.2');
  expect(JSON.parse(JSON.stringify(report))).toEqual(report);
});
