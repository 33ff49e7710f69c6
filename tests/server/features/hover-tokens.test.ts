import { readFileSync } from 'node:fs';
import { scanLine } from '@plimsoll/language/syntax/line-scanner';
import type { FeatureContext } from '@plimsoll/server/features/context';
import { provideHover } from '@plimsoll/server/features/hover';
import { beforeAll, describe, expect, test } from 'vitest';
import { readFolder } from '../../language/checks/workspace.ts';
import { readCursor } from '../support/at-cursor.ts';
import { createContext } from '../support/feature-context.ts';

let context: FeatureContext;
beforeAll(() => {
  context = createContext({});
});

function hover(marked: string): string | undefined {
  const { text, ...position } = readCursor(marked);
  context.practice.setFile('now.plim', text);
  const found = provideHover(context, 'now.plim', position);
  context.practice.removeFile('now.plim');
  return (found?.contents as { value: string } | undefined)?.value;
}

/** Each kind of token, with the cursor in it, and how its hover begins. */
const TOKENS: Readonly<Record<string, readonly (readonly [line: string, begins: string])[]>> = {
  session: [
    ['effort <|>7', 'How hard the whole session was'],
    ['last<|>ed 52 min', 'How long the session took'],
    ['lasted 52 m<|>in', 'How long the session took'],
    ['bodyw<|>eight 65.8 kg', 'Body mass on that day'],
    ['bodyweight 6<|>5.8 kg', '**65.8 kg = 145.1 lb**'],
    ['sl<|>eep 7 h', 'Sleep before the session'],
    ['readi<|>ness 3', 'How ready the athlete felt'],
    ['pa<|>in 2 left knee', 'Pain, 0 to 10'],
    ['missed, the fe<|>rry', 'A planned day that did not happen'],
    ['> Left heel <|>lifts.', 'A note'],
    ['Nothing <|>knows this', 'Nothing recognises this line'],
    ['Push-up: 8 # ignore no-<|>load', '**no-load** · warning, ignored here'],
    // Blocks
    ['A <|>straight, rest 2:30', 'Each movement with all its sets'],
    ['<|>B circuit, 3 rounds', 'The letter of the block'],
    ['B cir<|>cuit, 3 rounds', 'The movements in turn'],
    ['B super<|>set, 3 rounds', 'Two movements in turn'],
    ['B giant s<|>et, 3 rounds', 'Three movements or more'],
    ['ev<|>ery 1:30 for 12:00', 'Work that starts at every full interval'],
    ['every 1:30 f<|>or 12:00', 'How long the block goes on'],
    ['am<|>rap 9:00', 'As many rounds or reps as possible'],
    ['for t<|>ime, cap 10:00', 'A fixed amount of work'],
    ['for time, ca<|>p 10:00', 'The most time'],
    ['inter<|>vals 0:30 on, 0:15 off', 'Work and rest by the clock'],
    ['intervals 0:30 o<|>n, 0:15 off', 'How long the work lasts'],
    ['intervals 0:30 on, 0:15 of<|>f', 'How long the rest lasts'],
    ['B circuit, 3 rou<|>nds x 2 passes', 'How often the list is done'],
    ['B circuit, 3 rounds x 2 pas<|>ses', 'How often the list is done'],
    ['B circuit, 3 rounds, re<|>st 1:15', 'The rest between the rounds'],
    ['every 1:00 for 10:00, alter<|>nating', 'The lines take turns'],
    ['warm<|>up', 'Preparation'],
    ['cool<|>down', 'Winding down'],
    ['ti<|>me 2:20, ?', 'How long each round took'],
    ['do<|>ne in 11:20', 'How the block ended'],
    ['re<|>st 0:25', 'The rest at this place'],
    // Before the name
    ['war<|>mup Push-up: 8', 'Preparation'],
    ['te<|>st Back Squat: 1 @ 80 kg', 'The best of this line is a max'],
    ['A<|>1 Push-up: 8', 'Lines with the same letter'],
    // Sets
    ['Push-up: <|>8', '8 reps'],
    ['Push-up: <|>3x8', 'How many sets'],
    ['Push-up: 3<|>x8', 'How many sets'],
    ['Push-up: 3x<|>8', '3 sets of 8 reps, 24 reps in all'],
    ['Plank: 3x<|>45 s', '3 sets of 45 s, 2:15 min in all'],
    ['One-Arm Row: 10/si<|>de', '20 reps in all'],
    ['One-Arm Row: 10 le<|>ft 8 right', '18 reps in all'],
    ['Rower: 500 <|>m', '500 m'],
    ['Rower: 15 c<|>al', '15 cal'],
    ['Run: 400 m <|>in 1:40', 'The time that the distance took'],
    ['Run: 400 m in 1:<|>40', 'The time that the distance took'],
    ['Pull-up: 3 o<|>f 4', '3 made, one more tried'],
    ['Dip: 8, <|>?', 'Not recorded'],
    ['Dip: 8, skip<|>ped', 'Planned, not done'],
    ['Deadlift: (3+2+<|>2 rest 15 s) @ 90 kg', 'One set in 3 parts'],
    ['Push-up: 8-1<|>2', 'From 8 reps to 12 reps'],
    ['Push-up: 5<|>+', '5 reps or more'],
    ['Push-up: am<|>rap', 'As many reps as possible'],
    ['Push-up: 8 <|>| 10', 'Separates the athletes of a group'],
    // Loads
    ['Front Squat: 5 <|>@ 62.5 kg', 'Before the load'],
    ['Front Squat: 5 @ 6<|>2.5 kg', '**62.5 kg'],
    ['Front Squat: 5 @ 62.5 k<|>g', '**62.5 kg'],
    ['Curl: 8 @ 2<|>x18 kg', '**36 kg'],
    ['Curl: 8 @ 20&<|>12 kg', '**32 kg'],
    ['Row: 8 @ 18 kg le<|>ft 14 kg right', 'Left 18 kg'],
    ['Pull-up: 6 @ b<|>w', 'Body weight alone'],
    ['Pull-up: 6 @ bw+1<|>0 kg', 'Body weight and 10 kg'],
    ['Pull-up: 6 @ bw-p<|>in 6', 'Body weight with pin 6'],
    ['Pull-up: 6 @ bw-yel<|>low band', 'Body weight with a yellow band'],
    ['Belt Squat: 8 @ 50<|>% of bw', '50 % of body mass'],
    ['Back Squat: 3 @ 70 kg + 15 kg cha<|>in', '**70 kg'],
    ['Back Squat: 3 @ 70 kg + green ba<|>nd', '**70 kg'],
    ['Leg Extension: 12 @ p<|>in 7', 'Pin 7'],
    ['Band Row: 15 @ yellow ba<|>nd', 'yellow band'],
    ['Box Jump: 5 @ 50 c<|>m', '50 cm high'],
    ['Rower: 500 m @ 2:<|>10/500 m', '2:10 for 500 m'],
    ['Air Bike: 10:00 @ 150 <|>W', '150 W'],
    ['Treadmill Run: 20:00 @ 9 km<|>/h', '9 km/h'],
    ['Front Squat: 5 @ <|>?', 'The load was not recorded'],
    ['Curl: 10 @ 2x12 kg dr<|>op 8 @ 2x8 kg', '**16 kg'],
    // Ratings and modifiers
    ['Front Squat: 5 @ 60 kg r<|>pe 8', '**RPE 8**'],
    ['Front Squat: 5 @ 60 kg ri<|>r 2', '**RIR 2'],
    ['Rower: 5:00 h<|>r 132', 'Heart rate'],
    ['Front Squat: 3 @ 60 kg <|>v 0.52 m/s', 'Bar velocity'],
    ['Front Squat: 3 @ 60 kg, tem<|>po 2-1-X-1', 'Seconds down'],
    ['Front Squat: 3 @ 60 kg, tempo 2-1<|>-X-1', 'Seconds down'],
    ['Front Squat: 3 @ 60 kg, re<|>st 2:15', 'Rest between the sets'],
    ['Press: 8 @ 20 kg, set<|>ting bench 30°', 'What was set'],
    ['Press: 8 @ 20 kg, pa<|>in 2 left elbow', 'Pain, 0 to 10'],
    ['Press: 8 @ 20 kg, inst<|>ead of Dip', 'The movement that this one took the place of'],
    ['Press: 8 @ 20 kg, instead of D<|>ip', '**Dip**'],
  ],
  plan: [
    ['fo<|>r Ann Vell', 'Whom the plan is for'],
    ['a<|>t Low Hall', 'Where it is done'],
    ['sta<|>rts 2026-04-06', 'The first day of the first week'],
    ['starts 2026-<|>04-06', '**Monday, week 2026-W15**'],
    ['foll<|>ows Low Tide', 'Starts when that plan has ended'],
    ['wee<|>ks 4', 'How many weeks'],
    ['del<|>oad week 4, sets 60%, load 85%', 'A lighter week'],
    ['deload week 4, sets 6<|>0%, load 85%', 'A lighter week'],
    ['days <|>Tue, Fri', 'On which days of the week'],
    ['days alter<|>nate, 2 a week', 'Takes the days of the plan in turn'],
    ['train<|>ing max 85%', 'Percentages are taken of this share'],
    ['training max 8<|>5%', 'Percentages are taken of this share'],
    ['da<|>y 1 Squat', 'One training day of the plan'],
    ['wee<|>k 3 Bench Press: 1 @ 90%', 'In this week of the plan'],
    ['Bench Press: 3x8 @ 70% <|>| 3x6 @ 75%', 'Separates the weeks of the plan'],
    ['Bench Press: 3x8 @ 7<|>0%', '70 % of the max'],
    ['Bench Press: 3x8 @ 70% of Dea<|>dlift', '**Deadlift**'],
    ['Bench Press: 5 @ r<|>pe 7-8', 'To be chosen on the day'],
    ['Bench Press: 2 @ rpe 8, 3x4 @ -1<|>0%', "So much off the top set's load"],
    ['Bench Press: 3x8 @ 45 kg, +2.5 kg ea<|>ch week', 'How the plan goes on'],
    ['Bench Press: 8-10 @ 45 kg, th<|>en +2 kg from 8', 'Taken when every set'],
    ['Bench Press: 3x5 @ 45 kg, after 3 mis<|>ses -10%', 'What happens after that many misses'],
    ['Plank: 30 s, rest -1<|>0 s each week', 'How the plan goes on'],
  ],
  place: [
    ['ba<|>rs 20 kg, 15 kg', 'What the empty bars weigh'],
    ['bars 2<|>0 kg, 15 kg', '**20 kg = 44.1 lb**'],
    ['bars 20, 1<|>5 kg', '**15 kg = 33.1 lb**'],
    ['pla<|>tes 4x20, 2x10 kg', 'How many plates of each weight'],
    ['plates <|>4x20, 2x10 kg', 'How many plates of each weight'],
    ['plates 4x<|>20, 2x10 kg', '**20 kg'],
    ['col<|>lars 2.5 kg', 'What both collars weigh together'],
    ['dumb<|>bells 4-32 by 2 kg pairs', 'A range and its step'],
    ['dumbbells 4-32 b<|>y 2 kg pairs', 'A range and its step'],
    ['dumbbells 4-32 by 2 kg pa<|>irs', 'A range and its step'],
    ['kettle<|>bells 12, 16 kg', 'What they weigh, one by one'],
    ['sta<|>cks cable 5-60 by 2.5 kg', 'What a machine or cable can be set to'],
    ['stacks ca<|>ble 5-60 by 2.5 kg', 'What a machine or cable can be set to'],
    ['ha<|>s bench, mat', 'Equipment that the place has'],
    ['has bench, m<|>at', 'Equipment that the place has'],
  ],
  athlete: [
    ['bo<|>rn 1987', 'The year of birth'],
    ['born 19<|>87', 'The year of birth'],
    ['sex fe<|>male', 'Only for formulas that need it'],
    ['un<|>its lb', 'What numbers are shown in'],
    ['body<|>weight 66 kg on 2026-02-22', 'A weigh-in'],
    ['bodyweight 66 kg o<|>n 2026-02-22', 'The day from which it counts'],
    ['bodyweight 66 kg on 2026-<|>02-22', '**Sunday, week 2026-W08**'],
    ['ma<|>x Front Squat: 80 kg on 2026-01-25', 'A max from that day on'],
    ['max Front <|>Squat: 80 kg on 2026-01-25', '**Front Squat**'],
    ['max Front Squat: <|>80 kg on 2026-01-25', '**80 kg'],
    ['go<|>al Pull-up: 6 @ bw by 2026-09-01', 'What the athlete works toward'],
    ['goal Pull-up: 6 @ bw b<|>y 2026-09-01', 'The day by which'],
    ['ret<|>est Front Squat: 80 kg, 81 kg on 2026-02-01', 'Two tests close together'],
    ['av<|>oid horizontal push until 2026-05-01, sore wrist', 'A pattern or movement to leave out'],
    ['avoid horizontal push un<|>til 2026-05-01, sore wrist', 'The last day for which it holds'],
    ['aw<|>ay 2026-07-06 to 2026-07-19, bell-ringing tour', 'Days on which no training'],
    ['away 2026-07-06 t<|>o 2026-07-19, bell-ringing tour', 'The last day for which it holds'],
    ['scree<|>ned 2026-01-12, village surgery', 'When health was last asked about'],
  ],
  exercise: [
    ['pat<|>tern hinge', 'What kind of movement it is'],
    ['pattern hin<|>ge', 'What kind of movement it is'],
    ['wo<|>rk hold', 'What is counted'],
    ['posi<|>tion half-kneeling', 'How the body is placed'],
    ['tru<|>nk resists rotation', 'What the trunk resists'],
    ['trunk resi<|>sts rotation', 'What the trunk resists'],
    ['mus<|>cles glutes, adductors 1/2', 'Muscles trained'],
    ['muscles glutes, adductors 1<|>/2', 'Muscles trained'],
    ['nee<|>ds sandbag, mat', 'Equipment'],
    ['each rep mo<|>ves one', 'Of two implements held'],
    ['each rep moves o<|>ne', 'Of two implements held'],
    ['body<|>weight 69%, kitchen scales', 'The share of body mass'],
    ['coun<|>ts contacts', 'Its reps are landings'],
    ['counts con<|>tacts', 'Its reps are landings'],
    ['al<|>so Turnip Clean', 'Other spellings'],
    ['eas<|>ier Goblet Squat', 'A movement to go back to'],
    ['har<|>der Front Squat', 'A movement to go on to'],
    ['set<|>up Bench at the third notch', 'How things are set up'],
    ['cu<|>e Ribs down', 'What the coach says'],
    ['caut<|>ion Stop when the back rounds', 'What to take care of'],
  ],
};

const HEADERS: Readonly<Record<string, string>> = {
  session: 'session 2026-11-03 Ann Vell',
  plan: 'plan High Water',
  place: 'place Low Hall',
  athlete: 'athlete Ann Vell',
  exercise: 'exercise Net Haul',
};

describe.each(Object.entries(TOKENS))('in a %s', (kind, rows) => {
  test.each(rows)('%s', (line, begins) => {
    expect(hover(`${HEADERS[kind]}\n  ${line}\n`)?.slice(0, begins.length)).toBe(begins);
  });
});

describe('in a header', () => {
  test.each([
    ['uni<|>ts kg', 'The unit of every number in this file'],
    ['exer<|>cise Net Haul', 'Defines a movement'],
    ['exercise Net H<|>aul', '**Net Haul**'],
    ['pla<|>ce Low Hall', 'Defines a place'],
    ['place Low <|>Hall', '**Low Hall**'],
    ['ath<|>lete Ann Vell', 'Defines an athlete'],
    ['athlete Ann <|>Vell', '**Ann Vell**'],
    ['pl<|>an High Water', 'Defines a plan'],
    ['plan High <|>Water', '**High Water**'],
    ['sess<|>ion 2026-11-03 Ann Vell', 'What was done on a day'],
    ['session 2026-<|>11-03 Ann Vell', '**Tuesday, week 2026-W45**'],
    ['session 2026-11-03 07:<|>10 Ann Vell', 'The time of day'],
    ['session 2026-11-03 Ann <|>Vell', '**Ann Vell**'],
    ['session 2026-11-03 Ann Vell <|>| Bo Tarn', 'Separates the athletes of a group'],
    ['session 2026-11-03 Ann Vell a<|>t Low Hall', 'Behind it stands the place'],
    ['session 2026-11-03 Ann Vell at Low Ha<|>ll', '**Low Hall**'],
    ['session 2026-11-03 Ann Vell, High Wa<|>ter week 2 day 1', '**High Water**'],
    ['session 2026-11-03 Ann Vell, High Water we<|>ek 2 day 1', 'The week and the day of the plan'],
    ['session 2026-11-03 Ann Vell, High Water week 2 day <|>1', 'The week and the day of the plan'],
    ['ses<|>soin 2026-11-03 Ann Vell', 'No entry begins like this'],
  ])('%s', (line, begins) => {
    expect(hover(line)?.slice(0, begins.length)).toBe(begins);
  });
});

test('one number in a circuit is that of each round', () => {
  const at = (header: string) => hover(`session 2026-11-03\n  ${header}\n    Push-up: <|>8\n`);
  expect(at('B circuit, 3 rounds')).toBe('8 reps in each of 3 rounds');
  expect(at('B circuit, 3 rounds x 2 passes')).toBe('8 reps in each of 6 passes');
  expect(at('B straight')).toBe('8 reps');
});

describe('a series', () => {
  const sessions = [1, 2, 3]
    .map(
      (week) =>
        `session 2026-11-0${week} Ann Vell\n  effort ${5 + week}\n  lasted ${50 + week} min\n  sleep ${6 + week} h\n  readiness ${week}\n  bodyweight 6${week} kg\n`,
    )
    .join('\n');

  test.each([
    ['effort', 'Effort: ▁▅█ 6, 7, 8 of 10 (1 Nov to 3 Nov)'],
    ['lasted', 'Time: ▁▅█ 51, 52, 53 min (1 Nov to 3 Nov)'],
    ['sleep', 'Sleep: ▁▅█ 7, 8, 9 h (1 Nov to 3 Nov)'],
    ['readiness', 'Readiness: ▁▅█ 1, 2, 3 of 5 (1 Nov to 3 Nov)'],
    ['bodyweight', 'Body mass: ▁▅█ 61, 62, 63 kg (1 Nov to 3 Nov)'],
  ])('is drawn behind %s, up to its session', (word, drawn) => {
    const last = sessions.lastIndexOf(word);
    expect(
      hover(`${sessions.slice(0, last)}<|>${sessions.slice(last)}`)
        ?.split('\n\n')
        .at(-1),
    ).toBe(drawn);
    const first = sessions.indexOf(word);
    expect(hover(`${sessions.slice(0, first)}<|>${sessions.slice(first)}`)).not.toContain('Nov');
  });
});

/** Marks that only part other things. */
const PUNCTUATION = new Set([',', ':', '(', ')']);
const KINDS = readFileSync(new URL('../../extension/grammar-sample.plim', import.meta.url), 'utf8');

test.each([['the file of all kinds of line', KINDS.split('\nsesion')[0]!], ...readFolder('samples')])(
  'every token of %s has a hover',
  (_name, text) => {
    const at = createContext({ 'a.plim': text });
    const { model, lines } = at.practice.file('a.plim')!;
    const silent = model.entries.flatMap(({ line: first, entry }) =>
      lines.slice(first, first + entry.lineCount).flatMap((line, index) =>
        scanLine(line, entry.kind === 'units' ? 'unknown' : entry.kind)
          .tokens.filter(({ kind, keyword }) => kind !== 'COMMENT' && !PUNCTUATION.has(keyword ?? ''))
          .filter(({ start, end }) => {
            const position = { line: first + index, character: Math.floor((start + end) / 2) };
            return provideHover(at, 'a.plim', position) === undefined;
          })
          .map(({ start, end }) => `${line.trim()} → ${line.slice(start, end)}`),
      ),
    );
    expect(silent).toEqual([]);
  },
);
