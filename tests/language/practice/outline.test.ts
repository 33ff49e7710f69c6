import { type OutlineNode, outlineFile } from '@plimsoll/language/practice/outline';
import { expect, test } from 'vitest';
import { readFiles } from '../support/marked-practice.ts';

/** Each node as `1-4 kind: name | detail`, indented by its depth; lines from 1. */
function print(nodes: readonly OutlineNode[], depth = 0): string[] {
  return nodes.flatMap((node) => [
    `${'  '.repeat(depth)}${node.first + 1}-${node.last + 1} ${node.kind}: ${node.name}${node.detail && ` | ${node.detail}`}`,
    ...print(node.children, depth + 1),
  ]);
}

const outline = (...lines: string[]) =>
  print(outlineFile(readFiles({ 'a.plim': lines.join('\n') }), 'a.plim'));

test('a log goes from athlete to week, session and block', () => {
  expect(
    outline(
      'session 2026-11-16 07:10 Quill Harrow at Saltglass Loft, Ebb week 2 day 1',
      '  Cat-Cow: 8',
      '  A straight',
      '    Back Squat: 5 @ 80 kg',
      '    > Grip went',
      '    # ask about it',
      '  B circuit, 2 rounds',
      '    Dip: 5',
      '    Push-up: 5',
      '    time 2:00, 2:10',
      '',
      '# on the way home',
      'session 2026-11-18 Quill Harrow',
      '  missed, snow',
      '',
      'session 2026-11-23 quill harrow',
      '  Dip: 5',
      'session 2026-11-23 Bev Stromm',
      '',
    ),
  ).toEqual([
    '1-14 log: Quill Harrow',
    '  1-14 week: Week 47, 2026',
    '    1-10 session: 2026-11-16 07:10 | Saltglass Loft, Ebb week 2 day 1',
    '      2-2 block: Cat-Cow',
    '      3-6 block: A straight | Back Squat',
    '      7-10 block: B circuit | Dip, Push-up',
    '    13-14 session: 2026-11-18',
    '16-17 log: quill harrow',
    '  16-17 week: Week 48, 2026',
    '    16-17 session: 2026-11-23',
    '      17-17 block: Dip',
    '18-18 log: Bev Stromm',
    '  18-18 week: Week 48, 2026',
    '    18-18 session: 2026-11-23',
  ]);
});

test('one spelling is shown for each athlete that is defined', () => {
  expect(outline('athlete Quill Harrow', 'session 2026-11-16 QUILL HARROW', 'session 2026-11-17')).toEqual([
    '1-1 athlete: Quill Harrow | athlete',
    '2-3 log: Quill Harrow',
    '  2-3 week: Week 47, 2026',
    '    2-2 session: 2026-11-16',
    '    3-3 session: 2026-11-17',
  ]);
});

test('sessions of nobody stand in their weeks alone, and one without a day in none', () => {
  expect(outline('session 2026-11-16', 'session 2026-13-40', '  Dip: 5', 'session')).toEqual([
    '1-1 week: Week 47, 2026',
    '  1-1 session: 2026-11-16',
    '2-3 session: 2026-13-40',
    '  3-3 block: Dip',
    '4-4 session: session',
  ]);
});

test('definitions stand by name, and end a run of sessions', () => {
  expect(
    outline(
      'units kg',
      'session 2026-11-16 Quill Harrow',
      'exercise Crate Haul',
      '  pattern hinge',
      'place Saltglass Loft',
      'session 2026-11-17 Quill Harrow | Bev Stromm',
      'plan Ebb',
      '  weeks 4',
      '  day 1 Squat',
      '    A straight',
      '      Back Squat: 3x5',
      '',
      '  day 2',
      '    Dip: 5',
      'sesion 2026-11-18',
      '  Dip: 5',
      'exercise',
    ),
  ).toEqual([
    '1-1 units: units kg',
    '2-2 log: Quill Harrow',
    '  2-2 week: Week 47, 2026',
    '    2-2 session: 2026-11-16',
    '3-4 exercise: Crate Haul | exercise',
    '5-5 place: Saltglass Loft | place',
    '6-6 log: Quill Harrow | Bev Stromm',
    '  6-6 week: Week 47, 2026',
    '    6-6 session: 2026-11-17',
    '7-14 plan: Ebb | plan',
    '  9-11 day: Day 1 Squat',
    '    10-11 block: A straight | Back Squat',
    '  13-14 day: Day 2',
    '    14-14 block: Dip',
    '15-16 unknown: sesion 2026-11-18',
    '  16-16 block: Dip',
    '17-17 exercise: exercise',
  ]);
});

test('everything lies within what holds it, and what is selected within it', () => {
  const text = 'plan Ebb\n  day 1\n    Dip: 5\n    > a\n  # b\n\nsession 2026-11-16\n  A straight\n  > c\n';
  const check = (node: OutlineNode) => {
    expect(node.selection.line).toBeGreaterThanOrEqual(node.first);
    expect(node.selection.line).toBeLessThanOrEqual(node.last);
    for (const child of node.children) {
      expect(child.first).toBeGreaterThanOrEqual(node.first);
      expect(child.last).toBeLessThanOrEqual(node.last);
      check(child);
    }
  };
  const nodes = outlineFile(readFiles({ 'a.plim': text }), 'a.plim');
  expect(nodes).toHaveLength(2);
  nodes.forEach(check);
});
