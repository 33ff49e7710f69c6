import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

// Pain and signs to stop at, in a coach's own words.
test.each<[title: string, files: Files, problems: string[]]>([
  [
    'pain in its own words',
    lines('session 2026-11-17', '  knee pain 3/10', '  Pain: left shoulder', '  hip pain 10, left'),
    [
      'log.plim:2:3 Pain is told by a line such as pain 3 knee, from 0 to 10, and where: leave out what brings it on, and ask a licensed practitioner before loading it again [stray-line] → Write pain 3 knee: pain 3 knee',
      'log.plim:3:9 left shoulder does not fit after pain: expected a number from 0 to 10 and where it hurts [syntax]',
      'log.plim:4:3 Pain is told by a line such as pain 10 hip left, from 0 to 10, and where: leave out what brings it on, and ask a licensed practitioner before loading it again [stray-line] → Write pain 10 hip left: pain 10 hip left',
    ],
  ],
  [
    'signs to stop at',
    lines('session 2026-11-17', '  chest pain', '  fainted', '  felt dizzy after set 2', '  box breathing'),
    [
      'log.plim:2:3 Stop and seek medical help on chest pain, fainting or unusual breathlessness; pain is told by a line such as pain 3 chest, from 0 to 10, and where [stray-line]',
      'log.plim:3:3 Stop and seek medical help on chest pain, fainting or unusual breathlessness; pain has a line such as pain 3 and where, words are a note behind > [stray-line]',
      'log.plim:4:3 Stop and seek medical help on chest pain, fainting or unusual breathlessness; pain has a line such as pain 3 and where, words are a note behind > [stray-line]',
      'log.plim:5:3 Nothing recognises this line, so it counts nowhere: begin a note with >, a comment with # [stray-line] → Make it a note: > box breathing',
    ],
  ],
])('%s', (_title, files, problems) => {
  expect(check(files)).toEqual(problems);
});
