import { Command } from 'commander';
import { EXIT, Failure } from '../failure.ts';
import { questionOf, type RunOptions, takenOf } from '../runOptions.ts';
import { overloadOf } from '../runTyped.ts';

const many = (text: string, before: readonly string[]): string[] => [...before, text];

export function runCommand(): Command {
  return new Command('run')
    .summary('look at a run with every measured cable')
    .description(
      'Volts at the load, heat, fuse, mass and cost of a run with every measured cable of a package, and with nominal sizes for reference. For direct current up to 60 V. An estimate.',
    )
    .argument('<package>', 'folder or .zip of a data package, or the name of a trial on the shelf')
    .option('--cable <name>', 'only this cable; may be said again', many, [])
    .requiredOption('--load <amount>', 'steady load, such as 80A or 600W')
    .requiredOption('--length <length>', 'one way out, such as 5m or 16ft')
    .option('--peak <amount>', 'load at its peak')
    .option('--peak-share <share>', 'share of the time at the peak; 0.2 is taken')
    .option('--peak-seconds <s>', 'how long a peak lasts; 30 is taken')
    .option(
      '--efficiency <share>',
      'output over input of a load in watts; 0.9 is taken, 1: the watts are what it draws',
    )
    .option('--supply <volts>', 'supply at rest', '12.6')
    .option('--charging <volts>', 'supply while it charges, or none; 14.2 for every 12 V is taken')
    .option('--supply-ohms <mohm>', 'resistance of the source, mohm, or a range', '2-8')
    .option('--return <way>', 'same, body, or ohms of the way back such as 1.2mohm or 0.5-3mohm', 'same')
    .option('--joints <mohm>', 'all joints together, mohm; four lugs, a fuse holder and a clamp are taken, 1.05')
    .option('--ambient <C>', 'warmest surroundings, °C; 40 is taken')
    .option('--bundle <n>', 'cables that touch and carry the same', '1')
    .option('--layer <mm>', 'carpet or trim round it: thickness, or thickness and W/(m K)')
    .option('--drop <amount>', 'what may be lost, at the peak where there is one, such as 0.5V or 4%; 0.5V is taken')
    .option('--measured <V,V@A>', 'volts lost on plus and minus side, as measured at a current')
    .option('--installed <cable>', 'the cable that was there when they were measured')
    .option('--sizes <system>', 'nominal sizes for reference: awg, mm2 or none', 'awg')
    .option('--profile <file>', 'a load that changes: lines of seconds and amount')
    .option('--overload <amps>', 'also say how long each lasts in one run under so many amps, such as 250A')
    .option('--json', 'print it in its machine-readable form', false)
    .option('--ascii', 'only characters that every terminal has', false)
    .addHelpText(
      'after',
      '\nExamples:\n  cupel run demo --load 120A --length 4m --return body\n  cupel run demo --cable quill --load 600W --peak 1500W --length 16ft --json',
    )
    .action(run);
}

/** Widest table that is printed, and what is taken where no terminal tells, in columns. */
const WIDEST = 100;
const USUAL = 80;

async function run(named: string, options: RunOptions): Promise<void> {
  const question = questionOf(options);
  const taken = takenOf(options);
  const system = options.sizes.toLowerCase();
  if (!['awg', 'mm2', 'none'].includes(system))
    throw new Failure(`--sizes was "${options.sizes}"; expected awg, mm2 or none.`, EXIT.wrongUse);
  const overload = options.overload === undefined ? null : overloadOf(options.overload);
  const { runProblems, smallOverload } = await import('../../../methods/current/runCheck/problems.ts');
  const asked = runProblems(question);
  const problems = asked.length > 0 ? asked : smallOverload(overload, question);
  if (problems.length > 0) throw new Failure(problems.join(' '), EXIT.dataSaysNo);
  const { candidates, missing } = await candidatesOf(named, options.cable);
  const { nominalSizes } = await import('../../../methods/current/runCheck/nominal.ts');
  const { runCheck } = await import('../../../methods/current/runCheck/runCheck.ts');
  const rating = Math.min(...candidates.map((c) => c.rating), LEAST_NOMINAL_RATING);
  const nominal = system === 'none' ? [] : nominalSizes(system as 'awg' | 'mm2', rating);
  const installed = question.measured?.cable ?? null;
  if (installed !== null && ![...candidates, ...nominal].some((c) => c.id === installed))
    throw new Failure(`--installed was "${installed}"; expected a cable of this run.`, EXIT.wrongUse);
  const check = runCheck(question, candidates, nominal, { charted: options.json });
  for (const m of missing) process.stderr.write(`${m.name} is left out: ${m.text}.\n`);
  const profile = options.profile === undefined ? null : await profiled(options.profile, question, candidates);
  const { overloads } = await import('../../../methods/current/runCheck/overload.ts');
  if (options.json) {
    const { runJson } = await import('../../../report/runJson.ts');
    const lasting = overloads(question, check.answers, overload).map(({ cable, current, seconds }) => ({
      cable: cable.id,
      current_A: current,
      seconds_to_rating: seconds,
    }));
    const json = { ...(runJson(question, check, taken) as object), overload: lasting, profile, left_out: missing };
    process.stdout.write(`${JSON.stringify(json, null, 2)}\n`);
    return;
  }
  const { runTable } = await import('../../../report/text/runTable.ts');
  const width = Math.min(process.stdout.columns ?? USUAL, WIDEST);
  process.stdout.write(
    runTable(question, check, {
      width,
      ascii: options.ascii,
      taken,
      overloads: overload === null ? [] : overloads(question, check.answers, overload),
    }),
  );
  for (const p of profile ?? [])
    process.stdout.write(
      `Under the profile ${p.name} comes to ${p.peak_C.toFixed(0)} °C after ${Math.round(p.peak_at_s)} s, ${p.margin_K.toFixed(0)} K below its rating.\n`,
    );
}

/** K: nominal sizes are rated at the lowest usual, 60 °C, or lower where a measured cable is. */
const LEAST_NOMINAL_RATING = 333.15;

async function candidatesOf(named: string, wanted: readonly string[]) {
  const { journalOf } = await import('../journalOf.ts');
  const { fold } = await import('../../../trial/fold.ts');
  const { findingsOf } = await import('../../../findings/findings.ts');
  const { rowsOfTrial } = await import('../../../findings/rows/rowsOfTrial.ts');
  const { runCandidates } = await import('../../../findings/current/runCables.ts');
  const { entries } = await journalOf(named);
  const trial = fold(entries);
  const findings = findingsOf(trial, { draws: 0, standingDraws: 0 });
  const { cables, missing } = runCandidates(trial, rowsOfTrial(trial), findings);
  if (wanted.length === 0) {
    if (cables.length === 0)
      throw new Failure(
        `No cable of ${named} can be run: ${missing[0]?.text ?? 'none was measured'}.`,
        EXIT.dataSaysNo,
      );
    return { candidates: cables, missing };
  }
  const candidates = wanted.map((name) => {
    const found = cables.find((c) => c.id === name || c.name === name);
    if (found) return found;
    const lacking = missing.find((m) => m.cable === name || m.name === name);
    if (lacking) throw new Failure(`${lacking.name} cannot be run: ${lacking.text}.`, EXIT.dataSaysNo);
    const known = [...cables.map((c) => c.id), ...missing.map((m) => m.cable)];
    throw new Failure(`No cable called "${name}" is in ${named}; it holds: ${known.join(', ')}.`, EXIT.wrongUse);
  });
  return { candidates, missing: [] };
}

async function profiled(
  path: string,
  question: ReturnType<typeof questionOf>,
  candidates: Awaited<ReturnType<typeof candidatesOf>>['candidates'],
) {
  const { readBytes } = await import('../../files/readBytes.ts');
  const { ProfileRefused, profileAnswer, profileFromText } = await import(
    '../../../methods/current/runCheck/profile.ts'
  );
  try {
    const holds = profileFromText(new TextDecoder().decode(readBytes(path)));
    return candidates.map((cable) => {
      const a = profileAnswer(question, cable, holds);
      return {
        cable: cable.id,
        name: cable.name,
        peak_C: a.peak - 273.15,
        peak_at_s: a.peakAt,
        margin_K: a.margin,
        lost_V: a.lost,
        lost_Wh: a.energy / 3600,
      };
    });
  } catch (error) {
    if (error instanceof ProfileRefused || error instanceof RangeError)
      throw new Failure(error.message, EXIT.dataSaysNo);
    throw error;
  }
}
