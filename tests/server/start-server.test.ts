import { afterEach, describe, expect, test } from 'vitest';
import { type ClientOptions, FOLDER, TestClient } from './support/start-client.ts';

const clients: TestClient[] = [];

async function start(options: ClientOptions = {}): Promise<TestClient> {
  const client = await TestClient.start(options);
  clients.push(client);
  return client;
}

afterEach(async () => {
  for (const client of clients.splice(0)) await client.stop();
});

const athletes = 'athlete Quill Harrow\n  bodyweight 80 kg on 2026-01-01\n';

const log = (date: string, ...lines: string[]) =>
  [`session ${date} Quill Harrow`, ...lines.map((line) => `  ${line}`), ''].join('\n');

const rounds = (times: string, pushUps = '10, 10') => [
  `B circuit, 2 rounds, rest 1:00`,
  `  Goblet Squat: 10 @ 20 kg`,
  `  One-Arm Row: ${pushUps} @ 20 kg`,
  `  time ${times}`,
];

describe('what is wrong', () => {
  test('is told for the open file and for closed ones', async () => {
    const client = await start({
      files: { 'athletes.plim': athletes, 'closed.plim': log('2026-11-02', 'Back Squat: 5 @') },
    });
    await client.open('open.plim', log('2026-11-03', 'Bakc Squat: 5 @ 60 kg'));
    await expect.poll(() => client.problems('open.plim')).toEqual(['2:3 unknown-movement']);
    await expect.poll(() => client.problems('closed.plim')).toEqual(['2:17 missing-load']);
    expect(client.diagnostics('open.plim')[0]).toMatchObject({ source: 'plimsoll', severity: 2 });
  });

  test('goes when the text is mended', async () => {
    const client = await start({ files: { 'athletes.plim': athletes } });
    await client.open('a.plim', log('2026-11-02', 'Back Squat: 5 @'));
    await expect.poll(() => client.problems('a.plim')).toEqual(['2:17 missing-load']);
    await client.type('a.plim', '5 @', '5 @ 100 kg');
    await expect.poll(() => client.problems('a.plim')).toEqual([]);
  });

  test('follows a definition in another file', async () => {
    const client = await start({ files: { 'athletes.plim': athletes } });
    await client.open('a.plim', log('2026-11-02', 'Harbour Hop: 5'));
    await expect.poll(() => client.problems('a.plim')).toEqual(['2:3 unknown-movement']);
    await client.open('moves.plim', 'exercise Harbour Hop\n');
    await expect.poll(() => client.problems('a.plim')).toEqual([]);
    await client.type('moves.plim', 'Hop', 'Hope');
    await expect.poll(() => client.problems('a.plim')).toEqual(['2:3 unknown-movement']);
  });

  test('is silent about names until all files are read', async () => {
    const client = await start({ files: { 'athletes.plim': athletes } });
    const told: string[][] = [];
    await client.open('a.plim', log('2026-11-02', 'Back Squat: 5 @ 60 kg', 'Bench Press: 5 @'));
    await expect
      .poll(() => {
        told.push(client.problems('a.plim'));
        return told.at(-1);
      })
      .toEqual(['3:18 missing-load']);
    expect(told.flat().filter((problem) => problem.includes('unknown'))).toEqual([]);
  });
});

describe('severities', () => {
  const problem = (client: TestClient) =>
    client.diagnostics('a.plim').map(({ code, severity }) => `${code} ${severity}`);

  test('that were set hold from the start, in open and closed files, and change at once', async () => {
    const client = await start({
      files: { 'athletes.plim': athletes, 'a.plim': log('2026-11-02', 'Harbour Hop: 5') },
    });
    await expect.poll(() => problem(client)).toEqual(['unknown-movement 2']);
    await client.set({ checks: { severity: { 'unknown-movement': 'error' } } });
    await expect.poll(() => problem(client)).toEqual(['unknown-movement 1']);
    await client.open('a.plim');
    const actions = async () => (await client.actions('a.plim', 'Harbour')).map(({ title }) => title);
    // An error is not one to be silenced.
    expect(await actions()).not.toContain('Ignore unknown-movement on this line');
    await client.set({ checks: { severity: { 'unknown-movement': 'off' } } });
    await expect.poll(() => problem(client)).toEqual([]);
    expect((await client.actions('a.plim', 'Harbour', ['quickfix'])).map(({ title }) => title)).toEqual([
      'Define Harbour Hop from a template',
    ]);
    await client.set({});
    await expect.poll(() => problem(client)).toEqual(['unknown-movement 2']);
  });

  test('of checks that are not there are told in the log', async () => {
    const client = await start({ files: { 'a.plim': log('2026-11-02', 'Dip: 5') } });
    await client.set({ checks: { severity: { 'lod-jump': 'off' } } });
    await expect
      .poll(() => client.log.join('\n'))
      .toContain('plimsoll.checks.severity: No check is called lod-jump: did you mean load-jump?');
  });

  test('are taken from an editor that tells them unasked', async () => {
    const client = await start({
      files: { 'athletes.plim': athletes, 'a.plim': log('2026-11-02', 'Harbour Hop: 5') },
      capabilities: {},
    });
    await expect.poll(() => problem(client)).toEqual(['unknown-movement 2']);
    await client.notify('workspace/didChangeConfiguration', {
      settings: { plimsoll: { checks: { severity: { 'unknown-movement': 'hint' } } } },
    });
    await expect.poll(() => problem(client)).toEqual(['unknown-movement 4']);
  });
});

describe('files', () => {
  test('that change beside the editor are read again', async () => {
    const client = await start({ files: { 'a.plim': log('2026-11-02', 'Back Squat: 5 @') } });
    await expect.poll(() => client.problems('a.plim')).toEqual(['2:17 missing-load']);
    await client.changeFiles({ 'a.plim': log('2026-11-02', 'Back Squat: 5 @ 60 kg') });
    await expect.poll(() => client.problems('a.plim')).toEqual([]);
  });

  test('that are deleted or renamed take their facts and problems along', async () => {
    const client = await start({ files: { 'athletes.plim': athletes } });
    await client.changeFiles({
      'a.plim': log('2026-11-02', ...rounds('3:00, 3:00'), 'C straight', '  Bench Press: 5 @'),
    });
    await expect.poll(() => client.problems('a.plim')).toEqual(['7:20 missing-load']);
    await client.open('b.plim', log('2026-11-09', ...rounds('2:00, 2:00')));
    await expect.poll(async () => (await client.lenses('b.plim'))[1]).toContain('2 Nov');
    await client.changeFiles({ 'a.plim': undefined });
    await expect.poll(() => client.problems('a.plim')).toEqual([]);
    await expect.poll(async () => (await client.lenses('b.plim'))[1]).not.toContain('2 Nov');
    await client.changeFiles({ 'c.plim': log('2026-11-02', ...rounds('3:00, 3:00')) });
    await expect.poll(async () => (await client.lenses('b.plim'))[1]).toContain('2 Nov');
  });

  test('that are open count as they stand in the editor, and as on the disk once closed', async () => {
    const client = await start({
      files: { 'athletes.plim': athletes, 'a.plim': log('2026-11-02', 'Dip: 5') },
    });
    await client.open('a.plim', log('2026-11-02', 'Dip: 5', 'Bench Press: 5 @'));
    await expect.poll(() => client.problems('a.plim')).toEqual(['3:18 missing-load']);
    const changed = log('2026-11-02', 'Back Squat: 5 @');
    await client.changeFiles({ 'a.plim': changed, 'closed.plim': changed });
    await expect.poll(() => client.problems('closed.plim')).toContain('2:17 missing-load');
    expect(await client.hover('a.plim', 3, 3)).toContain('**Bench Press**');
    await client.changeFiles({ 'closed.plim': undefined });
    await client.close('a.plim');
    await expect.poll(() => client.problems('a.plim')).toEqual(['2:17 missing-load']);
  });

  test('in a comparison with an older version count once', async () => {
    const client = await start({ files: { 'athletes.plim': athletes } });
    const text = log('2026-11-02', 'Back Squat: 5 @ 60 kg');
    await client.open('a.plim', text);
    await client.open('a.plim', text, 'git:/practice/a.plim?HEAD');
    await expect.poll(() => client.refreshes.lenses).toBeGreaterThan(0);
    expect(client.problems('a.plim')).toEqual([]);
    expect(await client.lenses('git:/practice/a.plim?HEAD')).toEqual([]);
  });
});

describe('folders', () => {
  const move = (client: TestClient, added: string[], removed: string[]) =>
    client.notify('workspace/didChangeWorkspaceFolders', {
      event: {
        added: added.map((uri) => ({ uri, name: uri })),
        removed: removed.map((uri) => ({ uri, name: uri })),
      },
    });

  test('that leave the workspace take their facts along, and come back with them', async () => {
    const client = await start({ files: { 'a.plim': log('2026-11-02', 'Back Squat: 5 @') } });
    await expect.poll(() => client.problems('a.plim')).toEqual(['2:17 missing-load']);
    await move(client, [], ['file:///practice']);
    await expect.poll(() => client.problems('a.plim')).toEqual([]);
    await move(client, ['file:///practice'], []);
    await expect.poll(() => client.problems('a.plim')).toEqual(['2:17 missing-load']);
  });

  test('that come later are waited for as those of the start are', async () => {
    const client = await start({ files: { 'athletes.plim': athletes } });
    await client.open('a.plim', log('2026-11-02', 'Turnip Hoist: 5'));
    await expect.poll(() => client.problems('a.plim')).toEqual(['2:3 unknown-movement']);
    let open = () => {};
    client.store.gate = new Promise((resolve) => {
      open = resolve;
    });
    client.store.files.set('file:///more/own.plim', 'exercise Turnip Hoist\n');
    await move(client, ['file:///more'], []);
    await client.open('b.plim', log('2026-11-03', 'Turnip Hoist: 5', 'Push-up: 5 @'));
    await expect.poll(() => client.problems('b.plim')).toEqual(['3:14 missing-load']);
    open();
    await expect.poll(() => client.problems('a.plim')).toEqual([]);
    expect(client.problems('b.plim')).toEqual(['3:14 missing-load']);
  });

  test('in which nobody keeps logs are not read, whatever changes there', async () => {
    const client = await start({ files: { 'athletes.plim': athletes } });
    await client.changeFiles({
      'node_modules/x/a.plim': log('2026-11-02', 'Back Squat: 5 @'),
      'a.plim': log('2026-11-02', 'Back Squat: 5 @'),
    });
    await expect.poll(() => client.problems('a.plim')).toEqual(['2:17 missing-load']);
    expect(client.problems('node_modules/x/a.plim')).toEqual([]);
  });

  test('that are deleted in the editor take their files along', async () => {
    const client = await start({ files: { 'old/a.plim': log('2026-11-02', 'Back Squat: 5 @') } });
    await expect.poll(() => client.problems('old/a.plim')).toEqual(['2:17 missing-load']);
    client.store.files.clear();
    await client.notify('workspace/didDeleteFiles', { files: [{ uri: 'file:///practice/old' }] });
    await expect.poll(() => client.problems('old/a.plim')).toEqual([]);
  });

  test('do not hold a file that was opened from elsewhere, once it is closed', async () => {
    const client = await start({ files: { 'athletes.plim': athletes } });
    await client.open('b.plim', log('2026-11-09', ...rounds('2:00, 2:00')));
    await client.open('/else.plim', log('2026-11-02', ...rounds('3:00, 3:00')), 'file:///else.plim');
    await expect.poll(async () => (await client.lenses('b.plim'))[1]).toContain('2 Nov');
    client.store.files.set('file:///else.plim', log('2026-11-02', ...rounds('3:00, 3:00')));
    await client.notify('textDocument/didClose', { textDocument: { uri: 'file:///else.plim' } });
    await expect.poll(async () => (await client.lenses('b.plim'))[1]).not.toContain('2 Nov');
  });
});

describe('lenses', () => {
  test('change while she types one more round', async () => {
    const client = await start({ files: { 'athletes.plim': athletes } });
    await client.open('a.plim', log('2026-11-02', ...rounds('3:00')));
    await client.type('a.plim', 'time 3:00', 'time 3:00, 3:30');
    const [session, block] = await client.lenses('a.plim');
    expect(session).toBe('1 session 4 working sets · 800 kg');
    expect(block).toBe('2 block 2 rounds 6:30 · 123 kg/min');
  });

  test('show what the setting says, at once', async () => {
    const client = await start({ files: { 'athletes.plim': athletes } });
    await client.open(
      'a.plim',
      log('2026-11-02', ...rounds('3:00, 3:30'), 'A straight', 'Back Squat: 5 @ 100 kg rpe 9'),
    );
    const kinds = async () => [...new Set((await client.lenses('a.plim')).map((lens) => lens.split(' ')[1]))];
    expect(await kinds()).toEqual(['session', 'block', 'line']);
    await client.set({ lenses: { show: 'blocks' } });
    expect(await kinds()).toEqual(['session', 'block']);
    await client.set({ lenses: { show: 'sessions' } });
    expect(await kinds()).toEqual(['session']);
    await client.set({ lenses: { show: 'none' } });
    expect(await kinds()).toEqual([]);
  });

  test('follow formula and unit', async () => {
    const client = await start({ files: { 'athletes.plim': athletes } });
    await client.open('a.plim', log('2026-11-02', 'Back Squat: 5 @ 100 kg rpe 10'));
    await expect.poll(async () => (await client.lenses('a.plim')).at(-1)).toContain('117 kg');
    await client.set({ estimatedMax: { formula: 'brzycki' }, display: { unit: 'lb' } });
    await expect.poll(async () => (await client.lenses('a.plim')).at(-1)).toContain('248 lb');
  });

  test('explain their numbers', async () => {
    const client = await start({ files: { 'athletes.plim': athletes } });
    await client.open('a.plim', log('2026-11-02', ...rounds('3:00, 3:30')));
    const text = await client.explain('a.plim', 2, 'block');
    expect(text).toContain('Work density: 123.1 kg/min');
    expect(text).toContain('Source: Scott BR et al. (2016)');
    expect(await client.explain('a.plim', 3, 'block')).toBeNull();
  });

  test('of a plan are shown, and its next session is written on request', async () => {
    const plan = `${athletes}plan Ebb\n  for Quill Harrow\n  starts 2026-11-23\n  weeks 2\n  day 1\n    Push-up: 10 | 12\n`;
    const client = await start({ files: { 'plans.plim': plan } });
    await client.open(
      'a.plim',
      log('2026-11-23', 'Push-up: 10').replace('Harrow', 'Harrow, Ebb week 1 day 1'),
    );
    await client.open('plans.plim', plan);
    await expect
      .poll(() => client.lenses('plans.plim'))
      .toContainEqual(expect.stringContaining('week 1: 10'));
    const uri = `${FOLDER}a.plim`;
    const answer = await client.request('plimsoll/nextSession', { uri, position: { line: 0, character: 0 } });
    expect(answer).toMatchObject({ kind: 'written', uri, line: 3 });
    expect(JSON.stringify(answer)).toContain(
      'session 2026-11-30 Quill Harrow, Ebb week 2 day 1\\n  Push-up: 12',
    );
    const actions = await client.actions('a.plim', 'session', ['source.nextSession']);
    expect(actions.map(({ title }) => title)).toEqual(['Write the next session of Quill Harrow: 2026-11-30']);
  });

  test('of a long log are those about what is in sight, and others once the editor is scrolled', async () => {
    const days = Array.from({ length: 28 }, (_, day) => String(day + 1).padStart(2, '0'));
    const long = days
      .map((day) => `${log(`2026-10-${day}`, 'Push-up: 10')}place Loft ${day}\n${'\n'.repeat(40)}`)
      .join('');
    const client = await start({ files: { 'athletes.plim': athletes }, tellsSight: true });
    await client.open('long.plim', long);
    await expect.poll(() => client.refreshes.lenses).toBe(1);
    const listLines = async () => (await client.lenses('long.plim')).map((lens) => Number.parseInt(lens, 10));
    expect(Math.max(...(await listLines()))).toBeLessThan(500);
    await client.notify('plimsoll/inSight', { uri: `${FOLDER}long.plim`, first: 1100, last: 1140 });
    await expect.poll(() => client.refreshes.lenses).toBe(2);
    expect(Math.min(...(await listLines()))).toBeGreaterThan(700);
    expect(Math.max(...(await listLines()))).toBeGreaterThan(1100);
  });

  test('of an editor that cannot be asked to look afresh are all of a log', async () => {
    const long = `${log('2026-10-01', 'Push-up: 10')}place Loft\n${'\n'.repeat(900)}${log('2026-10-02', 'Push-up: 10')}`;
    const client = await start({ tellsSight: true, capabilities: {} });
    await client.open('long.plim', long);
    await expect.poll(async () => (await client.lenses('long.plim')).length).toBe(2);
  });

  test('are asked for again when another file brings history, and at midnight', async () => {
    const client = await start({ files: { 'athletes.plim': athletes } });
    await client.open('b.plim', log('2026-11-09', ...rounds('2:00, 2:00')));
    await expect.poll(() => client.refreshes.lenses).toBe(1);
    await client.changeFiles({ 'a.plim': log('2026-11-02', ...rounds('3:00, 3:00')) });
    await expect.poll(() => client.refreshes).toEqual({ lenses: 2, hints: 2 });
    client.clock.begin('2026-11-25');
    await expect.poll(() => client.refreshes.lenses).toBe(3);
  });
});

test('hints stand at the ends of lines and can be turned off', async () => {
  const client = await start({
    files: { 'athletes.plim': athletes, 'a.plim': log('2026-11-02', 'Back Squat: 5 @ 100 kg') },
  });
  await client.open('b.plim', log('2026-11-09', 'Back Squat: 5 @ 102.5 kg'));
  await expect.poll(() => client.hints('b.plim')).toEqual(['2:27 +2.5 kg since 2 Nov · record for 5 reps']);
  await client.set({ hints: { show: false } });
  await expect.poll(() => client.hints('b.plim')).toEqual([]);
});

test('a hover answers before and after all files are read', async () => {
  const client = await start({ files: { 'athletes.plim': athletes } });
  await client.open('a.plim', log('2026-11-02', 'Back Squat: 5 @ 100 kg'));
  expect(await client.hover('a.plim', 2, 20)).toBe('**100 kg = 220.5 lb**');
});

test('a line is completed from a session in another file, and an edit counts at once', async () => {
  const client = await start({
    files: { 'athletes.plim': athletes, 'a.plim': log('2026-11-02', 'Back Squat: 5 @ 100 kg') },
  });
  await client.open('b.plim', log('2026-11-09', 'Back Squat: '));
  const ask = async () => {
    const list = await client.request<{ items: { label: string; detail?: string }[] }>(
      'textDocument/completion',
      {
        textDocument: { uri: 'file:///practice/b.plim' },
        position: { line: 1, character: 14 },
        context: { triggerKind: 2, triggerCharacter: ' ' },
      },
    );
    return list.items[0];
  };
  await expect.poll(ask).toMatchObject({ label: '5 @ 100 kg', detail: 'as on 2 Nov' });
  await client.open('a.plim');
  await client.type('a.plim', '100 kg', '105 kg');
  expect(await ask()).toMatchObject({ label: '5 @ 105 kg' });
});

test('a fix changes the very version that it was offered for', async () => {
  const client = await start({ files: { 'athletes.plim': athletes } });
  await client.open('a.plim', log('2026-11-02', 'Bakc Squat: 5 @ 60 kg'));
  await expect.poll(() => client.problems('a.plim')).toEqual(['2:3 unknown-movement']);
  const [first] = await client.actions('a.plim', 'Bakc');
  expect(first).toMatchObject({
    title: 'Write Back Squat',
    kind: 'quickfix',
    edit: { documentChanges: [{ textDocument: { version: 1 }, edits: [{ newText: 'Back Squat' }] }] },
  });
  expect(await client.actions('a.plim', 'Bakc', ['refactor.extract'])).toEqual([]);
});

test('an editor that knows no settings, refreshes or folders is served with the defaults', async () => {
  const client = await start({ capabilities: {} });
  await client.open('a.plim', log('2026-11-02', ...rounds('3:00, 3:30')));
  await expect.poll(async () => (await client.lenses('a.plim')).length).toBe(2);
});

test.each([
  ['nothing', ''],
  ['noise', '\u0000\ufffd@@@ ::: ((( 5x5x5x5 @ @ kg | | |\nsession\nsession 2026-99-99 @\n  : 5\n  A A A'],
  ['a mark and lone returns', '\ufeffsession 2026-11-02 Quill Harrow\r  Back Squat: 5 @ 60 kg\r'],
])('%s in a file stops no request', async (_name, text) => {
  const client = await start({ files: { 'athletes.plim': athletes } });
  await client.open('a.plim', text);
  const lines = text.split(/\r\n|\r|\n/);
  for (const [line, content] of lines.entries()) {
    for (let column = 0; column <= content.length; column++)
      await client.hover('a.plim', line + 1, column + 1);
  }
  await client.lenses('a.plim');
  await client.hints('a.plim');
  await client.actions('a.plim', text);
  expect(client.log).toEqual([]);
});

test('a request that fails is answered with nothing, is logged, and harms no other', async () => {
  const client = await start({ files: { 'athletes.plim': athletes } });
  await client.open('a.plim', log('2026-11-02', 'Back Squat: 5 @ 100 kg'));
  const textDocument = { uri: 'file:///practice/a.plim' };
  expect(await client.request('textDocument/hover', { textDocument })).toBeNull();
  await expect.poll(() => client.log).toEqual([expect.stringContaining('No hover: TypeError')]);
  expect(await client.hover('a.plim', 2, 20)).toContain('100 kg');
});

test('what an editor tells of the last commit is set against what it holds, until it closes the file', async () => {
  const plan = (sets: string): string => `plan Ebb\n  weeks 2\n  day 1\n    Back Squat: ${sets} @ 60 kg\n`;
  const client = await start({ files: { 'athletes.plim': athletes } });
  await client.open('a.plim', plan('4x5'));
  const uri = 'file:///practice/a.plim';
  const refreshed = client.refreshes.lenses;
  await client.notify('plimsoll/committedText', { uri, text: plan('3x5') });
  const lens = expect.stringContaining('since HEAD: +1 set, +300 kg a week');
  await expect.poll(() => client.lenses('a.plim')).toContainEqual(lens);
  await expect.poll(() => client.refreshes.lenses).toBeGreaterThan(refreshed);
  expect(await client.request('plimsoll/revision', { uri })).toContain(
    '- day 1\n  - Back Squat: 3x5 → 4x5 @ 60 kg\n',
  );
  await client.notify('plimsoll/committedText', { uri, missing: 'restricted' });
  await expect.poll(() => client.lenses('a.plim')).not.toContainEqual(lens);
  expect(await client.hover('a.plim', 1, 7)).toContain('Restricted Mode');
  await client.close('a.plim');
  await client.open('a.plim', plan('4x5'));
  expect(await client.hover('a.plim', 1, 7)).not.toContain('Restricted Mode');
});
