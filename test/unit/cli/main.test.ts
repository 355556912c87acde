import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { afterAll, afterEach, describe, expect, test, vi } from 'vitest';
import { main } from '../../../src/cli/main.ts';
import { planJob } from '../../../src/lib/core/plan/plan-job.ts';
import type { PrintedPlan } from '../../../src/lib/words/en/printed-plan.ts';
import { amount, patched, pendant } from '../../fixtures/jobs.ts';

vi.mock(import('../../../src/lib/core/plan/plan-job.ts'), async (original) => {
  const actual = await original();
  return { ...actual, planJob: vi.fn(actual.planJob) };
});
// the papers have tests of their own: here it only counts whether they are asked for and written
const PAPERS = Uint8Array.of(37, 80, 68, 70);
vi.mock(import('../../../src/lib/print/make-papers.ts'), () => ({
  makePapers: vi.fn(() => Promise.resolve(PAPERS)),
}));

const folder = mkdtempSync(join(tmpdir(), 'etchwright-cli-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});
afterEach(() => {
  vi.restoreAllMocks();
});

interface Run {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs the command line in this process and catches what it prints. */
async function run(...argv: string[]): Promise<Run> {
  const printed = { out: '', err: '' };
  const out = vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    printed.out += String(text);
    return true;
  });
  const err = vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    printed.err += String(text);
    return true;
  });
  try {
    return { code: await main(argv), ...printed };
  } finally {
    out.mockRestore();
    err.mockRestore();
  }
}

let files = 0;
function fileOf(text: string): string {
  files += 1;
  const path = join(folder, `job-${files}.json`);
  writeFileSync(path, text);
  return path;
}
const jobFile = (patch: Readonly<Record<string, unknown>> = {}): string =>
  fileOf(JSON.stringify(patched(pendant(), patch)));
const planIn = ({ out }: Run): PrintedPlan => JSON.parse(out) as PrintedPlan;
const linesOf = (text: string): string[] => text.trimEnd().split('\n');

const electrical = ['current', 'volts', 'current_density', 'cell_resistance', 'limiting_current_density'];
const timeAndDepth = ['charge', 'run_time', 'first_look', 'depth', 'undercut', 'thinnest_line'];

describe('plan', () => {
  test('exit 0: prints the plan as JSON, with its ids and units', async () => {
    const done = await run('plan', jobFile());
    expect(done).toMatchObject({ code: 0, err: '' });
    const { figures, etchwright, dataVersion, cautions, refusals, steps } = planIn(done);
    expect(etchwright).toBe(1);
    expect(dataVersion).toMatch(/^\d{4}-\d{2}-\d{2}\./);
    for (const id of [...electrical, ...timeAndDepth, 'water_volume', 'salt_mass', 'hydrogen']) {
      expect(Object.keys(figures), id).toContain(id);
    }
    expect(figures['charge']).toMatchObject({ unit: 'A.h' });
    expect(figures['charge']?.sources).toContain('codata2018');
    expect(cautions.length).toBeGreaterThan(0);
    expect(refusals).toEqual([]);
    expect(steps.length).toBe(9);
  });
  test.each(['seed-head-pendant', 'wave-band-cuff', 'evening-class-tokens'])(
    'plans the example %s',
    async (name) => {
      const path = fileURLToPath(new URL(`../../../static/examples/${name}.json`, import.meta.url));
      expect(await run('plan', path)).toMatchObject({ code: 0, err: '' });
    },
  );
  test('reads a file that begins with a byte order mark', async () => {
    expect(await run('plan', fileOf(`\ufeff${JSON.stringify(pendant())}`))).toMatchObject({ code: 0 });
  });
  test('reads standard input for -', async () => {
    vi.spyOn(process, 'stdin', 'get').mockReturnValue(
      Readable.from([JSON.stringify(pendant())]) as unknown as typeof process.stdin,
    );
    const done = await run('plan', '-');
    expect(done.code).toBe(0);
    expect(planIn(done).title).toBe('Seed-head pendant');
  });
  test('exit 3: prints refusals, and no electrical, time or depth figure', async () => {
    const done = await run('plan', jobFile({ 'bath.salt': 'NaCl' }));
    expect(done).toMatchObject({ code: 3, err: '' });
    const { refusals, figures, settings } = planIn(done);
    expect(refusals.map(({ rule }) => rule)).toContain('chloride-on-silver');
    expect(refusals[0]?.text).not.toBe('');
    expect(refusals[0]?.instead).not.toBe('');
    for (const id of [...electrical, ...timeAndDepth]) expect(figures).not.toHaveProperty(id);
    expect(settings).toBeNull();
  });
});

describe('--schema', () => {
  test('prints a JSON Schema in which every part of a job appears', async () => {
    const done = await run('plan', '--schema');
    expect(done).toMatchObject({ code: 0, err: '' });
    const schema = JSON.parse(done.out) as { properties: Record<string, unknown>; required: string[] };
    expect(Object.keys(schema.properties)).toEqual(
      expect.arrayContaining(['piece', 'cathode', 'tub', 'bath', 'resist', 'supply', 'place', 'paper']),
    );
    expect(schema.required).toContain('bath');
    for (const field of ['salt', 'strength', 'depth', 'openShare', 'maxVolts', 'waterByJug']) {
      expect(done.out).toContain(`"${field}"`);
    }
  });
});

describe('sheet', () => {
  test('exit 0: writes the papers and prints nothing', async () => {
    const out = join(folder, 'sheet.pdf');
    expect(await run('sheet', jobFile(), '--out', out)).toEqual({ code: 0, out: '', err: '' });
    expect(new Uint8Array(readFileSync(out))).toEqual(PAPERS);
  });
  test('exit 3: a refused job writes no file and prints why', async () => {
    const out = join(folder, 'refused.pdf');
    const done = await run('sheet', jobFile({ 'supply.volts': amount(10, 'V') }), '--out', out);
    expect(done.code).toBe(3);
    expect(planIn(done).refusals.map(({ rule }) => rule)).toEqual(['ten-volts']);
    expect(existsSync(out)).toBe(false);
  });
  test('exit 2: faults write no file', async () => {
    const out = join(folder, 'faults.pdf');
    expect((await run('sheet', jobFile({ title: undefined }), '--out', out)).code).toBe(2);
    expect(existsSync(out)).toBe(false);
  });
  test('exit 2: a path that cannot be written is named', async () => {
    const out = join(folder, 'no', 'such', 'folder', 'sheet.pdf');
    const done = await run('sheet', jobFile(), '--out', out);
    expect(done.code).toBe(2);
    expect(done.err).toMatch(/^--out: found ENOENT.*, expected a path that can be written\n$/);
  });
});

describe('exit 2: faults', () => {
  test('one line each on stderr, path: found X, expected Y, and nothing on stdout', async () => {
    const done = await run(
      'plan',
      jobFile({ 'piece.width': amount(2, 'm'), 'bath.salt': 7, 'tub.fill': amount(60, 'V'), extra: 1 }),
    );
    expect(done).toMatchObject({ code: 2, out: '' });
    expect(linesOf(done.err)).toHaveLength(4);
    for (const line of linesOf(done.err)) expect(line).toMatch(/^[\w.]+: found .+, expected .+$/);
    expect(done.err).toContain('piece.width: found 2 m, expected 0.001 to 1 m (1 to 1000 mm)\n');
  });
  test.each([
    ['text', 'not JSON'],
    ['nothing', ''],
    ['half a file', '{ "etchwright": 1, '],
  ])('%s is not JSON', async (_what, text) => {
    const done = await run('plan', fileOf(text));
    expect(done).toMatchObject({ code: 2, out: '' });
    expect(linesOf(done.err)).toHaveLength(1);
    expect(done.err).toMatch(/^job: found .+, expected JSON\n$/);
  });
  test('a missing file', async () => {
    const done = await run('plan', join(folder, 'nowhere.json'));
    expect(done).toMatchObject({ code: 2, out: '' });
    expect(done.err).toMatch(/^job: found ENOENT.*expected a readable job file/);
  });
  test.each([
    ['no command', []],
    ['an unknown command', ['etch', 'job.json']],
    ['no file', ['plan']],
    ['two files', ['plan', 'a.json', 'b.json']],
    ['an unknown option', ['plan', '--fast']],
    ['plan with --out', ['plan', 'a.json', '--out', 'b.pdf']],
    ['sheet without --out', ['sheet', 'a.json']],
    ['sheet with an empty --out', ['sheet', 'a.json', '--out']],
    ['sheet with --schema', ['sheet', '--schema', '--out', 'b.pdf']],
  ])('%s: says what was wrong and how to call it', async (_what, argv) => {
    const done = await run(...argv);
    expect(done).toMatchObject({ code: 2, out: '' });
    expect(done.err).toMatch(/^arguments: found .+, expected .+\nusage:/);
  });
});

test('exit 1: our own fault, told on stderr', async () => {
  vi.mocked(planJob).mockImplementationOnce(() => {
    throw new Error('something of ours broke');
  });
  const done = await run('plan', jobFile());
  expect(done).toMatchObject({ code: 1, out: '' });
  expect(done.err).toContain('something of ours broke');
});
