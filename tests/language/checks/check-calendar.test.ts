import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

// Whose sessions, on which days.
test.each<[title: string, files: Files, problems: string[]]>([
  [
    'nobody named where there are several',
    lines(
      'athlete Otti Plankermann',
      'athlete Bram Skuttle',
      'session 2026-11-17',
      'session 2026-11-18 06:30',
    ),
    [
      'log.plim:3:9 Whose session is it? Several athletes are defined, so write the name behind the date [which-athlete] → Write Bram Skuttle: session 2026-11-17 Bram Skuttle → Write Otti Plankermann: session 2026-11-17 Otti Plankermann',
      'log.plim:4:9 Whose session is it? Several athletes are defined, so write the name behind the date [which-athlete] → Write Bram Skuttle: session 2026-11-18 06:30 Bram Skuttle → Write Otti Plankermann: session 2026-11-18 06:30 Otti Plankermann',
    ],
  ],
  ['nobody named where there is one', lines('athlete Otti Plankermann', 'session 2026-11-17'), []],
  [
    'nobody named among very many',
    lines(
      'athlete Deckhand A',
      'athlete Deckhand B',
      'athlete Deckhand C',
      'athlete Deckhand D',
      'athlete Deckhand E',
      'athlete Deckhand F',
      'session 2026-11-17',
    ),
    [
      'log.plim:7:9 Whose session is it? Several athletes are defined, so write the name behind the date [which-athlete]',
    ],
  ],
  [
    'out of order',
    lines(
      'session 2026-11-10 Otti Plankermann',
      'session 2026-11-12 Otti Plankermann',
      'session 2026-11-11 Otti Plankermann',
      'session 2026-11-13 Otti Plankermann',
    ),
    [
      'log.plim:3:9 2026-11-11 stands below a later session of Otti Plankermann: put sessions in order of date, or correct it [session-order]',
    ],
  ],
  [
    'out of order of nobody',
    lines('session 2026-11-10', 'session 2026-11-12', 'session 2026-11-11'),
    [
      'log.plim:3:9 2026-11-11 stands below a later session: put sessions in order of date, or correct it [session-order]',
    ],
  ],
  [
    'each athlete has an order of their own',
    lines(
      'session 2026-11-12 Otti Plankermann',
      'session 2026-11-10 Bram Skuttle',
      'session 2026-11-13 Otti Plankermann | Bram Skuttle',
    ),
    [],
  ],
  ['newest first throughout', lines('session 2026-11-12', 'session 2026-11-11', 'session 2026-11-10'), []],
  [
    'twice on a day',
    lines('session 2026-11-12 Otti Plankermann', 'session 2026-11-12 Otti Plankermann'),
    [
      'log.plim:2:9 A session of Otti Plankermann on 2026-11-12 stands in line 1 already: write the time of day behind each date, or take one out [session-twice]',
    ],
  ],
  [
    'twice on a day in two files',
    {
      'b.plim': lines('session 2026-11-12 07:00 Otti Plankermann | Bram Skuttle'),
      'a.plim': lines('# one', 'session 2026-11-12 07:00 Bram Skuttle'),
    },
    [
      'b.plim:1:9 A session of Bram Skuttle on 2026-11-12 stands in a.plim, line 2 already: correct a date or a time [session-twice]',
    ],
  ],
  [
    'twice on a day at other times',
    lines('session 2026-11-12 07:00', 'session 2026-11-12 17:00', 'session 2026-11-12 Otti Plankermann'),
    [],
  ],
  [
    'after today',
    lines('session 2026-11-24', 'session 2026-11-25'),
    ['log.plim:2:9 2026-11-25 is still to come: is the date right? [future-session]'],
  ],
  [
    'while away',
    lines(
      'athlete Otti Plankermann',
      '  away 2026-11-02 to 2026-11-08, travelling',
      'athlete Bram Skuttle',
      '  away 2026-11-08 to 2026-11-09',
      'session 2026-11-01 Otti Plankermann',
      'session 2026-11-02 Otti Plankermann',
      'session 2026-11-08 Otti Plankermann | Bram Skuttle',
      'session 2026-11-09 Otti Plankermann',
    ),
    [
      'log.plim:6:9 Otti Plankermann is away from 2026-11-02 to 2026-11-08, travelling: is the date right? [while-away]',
      'log.plim:7:9 Otti Plankermann is away from 2026-11-02 to 2026-11-08, travelling: is the date right? [while-away]',
      'log.plim:7:9 Bram Skuttle is away from 2026-11-08 to 2026-11-09: is the date right? [while-away]',
    ],
  ],
  [
    'missed while away',
    lines(
      'athlete Otti Plankermann',
      '  away 2026-11-02 to 2026-11-08',
      'session 2026-11-03 Otti Plankermann',
      '  missed, travelling',
    ),
    [],
  ],
])('%s', (_title, files, problems) => {
  expect(check(files)).toEqual(problems);
});
