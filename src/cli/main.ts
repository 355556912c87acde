import { readFile, writeFile } from 'node:fs/promises';
import { text as readAll } from 'node:stream/consumers';
import { faultLine, shown } from '../lib/core/plan/fault.ts';
import type { Fault } from '../lib/core/plan/fault.ts';
import { jobJsonSchema, parseJob } from '../lib/core/plan/job-input.ts';
import type { JobInput } from '../lib/core/plan/job-input.ts';
import { solveCell } from '../lib/core/cell/solved-field.ts';
import { planJob } from '../lib/core/plan/plan-job.ts';
import { jobCode } from '../lib/link/job-code.ts';
import { shortCode } from '../lib/link/short-code.ts';
import { jobPapers } from '../lib/print/order.ts';
import { printPlan } from '$words/printed-plan.ts';
import { fontFiles } from './font-files.ts';

/** Exit codes for scripts: a plan, our own error, faulty input, a refused job. */
const exit = { plan: 0, ours: 1, input: 2, refused: 3 } as const;

const usage = `usage:
  npm run --silent plan -- job.json                    print the plan as JSON
  npm run --silent plan -- --schema                    print the job file's JSON Schema
  npm run --silent sheet -- job.json --out sheet.pdf   write the papers
job.json may be - for standard input.`;

/** All faults of the input. */
class InputFaults extends Error {
  readonly faults: readonly Fault[];
  constructor(...faults: readonly Fault[]) {
    super(faults.map(faultLine).join('\n'));
    this.faults = faults;
  }
}

interface Request {
  readonly command: 'plan' | 'sheet';
  readonly schema: boolean;
  readonly file: string;
  readonly out: string;
}

function readArguments([command, ...rest]: readonly string[]): Request {
  const wrong = (found: string, expected: string) => new InputFaults({ path: 'arguments', found, expected });
  if (command !== 'plan' && command !== 'sheet') throw wrong(shown(command), 'plan or sheet');
  const outAt = rest.indexOf('--out');
  const out = outAt < 0 ? undefined : rest[outAt + 1];
  const plain = rest.filter((word, i) => outAt < 0 || (i !== outAt && i !== outAt + 1));
  const schema = command === 'plan' && plain[0] === '--schema';
  if (command === 'sheet' && out === undefined) throw wrong('no --out', '--out sheet.pdf');
  if (command === 'plan' && outAt >= 0) throw wrong('--out', 'the sheet command, or no --out');
  const [file, extra] = plain;
  if (file === undefined) throw wrong('no file', 'a job file, or - for standard input');
  if (extra !== undefined) throw wrong(shown(extra), 'one job file');
  if (file.startsWith('--') && !schema)
    throw wrong(shown(file), command === 'plan' ? '--schema or a job file' : 'a job file');
  return { command, schema, file, out: out ?? '' };
}

async function readJob(file: string): Promise<JobInput> {
  let text: string;
  try {
    text = file === '-' ? await readAll(process.stdin) : await readFile(file, 'utf8');
  } catch (error) {
    throw new InputFaults({ path: '', found: reason(error), expected: `a readable job file at ${file}` });
  }
  let unknown: unknown;
  try {
    unknown = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch (error) {
    throw new InputFaults({ path: '', found: reason(error), expected: 'JSON' });
  }
  const parsed = parseJob(unknown);
  if ('faults' in parsed) throw new InputFaults(...parsed.faults);
  return parsed.job;
}

const reason = (error: unknown): string =>
  error instanceof Error ? (error.message.split('\n', 1)[0] ?? '') : String(error);

async function run(argv: readonly string[]): Promise<number> {
  const { command, schema, file, out } = readArguments(argv);
  if (schema) {
    print(jobJsonSchema());
    return exit.plan;
  }
  const plan = planJob(await readJob(file), solveCell);
  const refused = plan.refusals.length > 0;
  if (command === 'plan' || refused) print(printPlan(plan));
  if (refused) return exit.refused;
  if (command === 'sheet') {
    const { makePapers } = await import('../lib/print/make-papers.ts');
    const carried = jobCode(plan.job);
    const marks = { code: shortCode(carried), carried };
    const bytes = await makePapers({ kind: 'job', plan, order: { ...jobPapers, marks } }, fontFiles());
    try {
      await writeFile(out, bytes);
    } catch (error) {
      throw new InputFaults({ path: '--out', found: reason(error), expected: 'a path that can be written' });
    }
  }
  return exit.plan;
}

const print = (value: unknown): void => {
  process.stdout.write(`${JSON.stringify(value, null, 2)}\n`);
};

/**
 * Plans a job without a browser.
 * @returns the exit code: 0 a plan, 3 refused, 2 faulty input, 1 our own error
 */
export async function main(argv: readonly string[]): Promise<number> {
  try {
    return await run(argv);
  } catch (error) {
    if (error instanceof InputFaults) {
      process.stderr.write(`${error.message}\n`);
      if (error.faults.some(({ path }) => path === 'arguments')) process.stderr.write(`${usage}\n`);
      return exit.input;
    }
    process.stderr.write(`${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`);
    return exit.ours;
  }
}
