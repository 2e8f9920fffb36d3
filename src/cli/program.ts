// The commands and their options, read by commander; every failure comes back as an exit code.
import { Command, CommanderError } from 'commander';
import { SHELL_WORDS, sentenceOf, YEAR_WORDS } from '../words/index.ts';
import { runActivities } from './activities-command.ts';
import { runAgain } from './again-command.ts';
import { runCheck } from './check-command.ts';
import { Refused } from './failure.ts';
import type { Outputs } from './outputs.ts';
import { type PackOptions, runPack } from './pack-command.ts';
import { packageVersion } from './package-files.ts';
import { type RulerOptions, runRuler } from './ruler-command.ts';
import { runSchema } from './schema-command.ts';
import { print, tell } from './terminal.ts';
import type { YearOptions } from './year/command.ts';

/** Something could not be done as asked. */
const EXIT_REFUSED = 2;
const words = SHELL_WORDS;
const { options, commands } = words;

/**
 * Runs the command line `argv` (without node and script). The exit code: 0; 1 where `check` found what is not certain; 2 for
 * what is refused or failed; 130 where `year` was interrupted.
 */
export async function run(argv: readonly string[]): Promise<number> {
  let exitCode = 0;
  const program = programOf((code) => {
    exitCode = code;
  });
  try {
    await program.parseAsync(argv, { from: 'user' });
    return exitCode;
  } catch (error) {
    return exitCodeOf(error);
  }
}

function exitCodeOf(error: unknown): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : EXIT_REFUSED;
  if (error instanceof Refused) {
    for (const refusal of error.refusals) tell(`samewise: ${sentenceOf(refusal)}`);
    return EXIT_REFUSED;
  }
  tell(`samewise: ${words.defect(error instanceof Error ? error.message : String(error))}`);
  return EXIT_REFUSED;
}

/** The commands, ready to read a line; what `check` and `year` come to is told as an exit code. */
export function programOf(setExitCode: (code: number) => void): Command {
  const program = new Command('samewise')
    .description(words.about)
    .version(packageVersion())
    .addHelpText('after', words.examples)
    .exitOverride()
    .configureOutput({
      writeOut: print,
      writeErr: (text) => tell(text.trimEnd()),
      outputError: (message) => tell(asSentence(message)),
    });
  addPack(program);
  addYear(program, setExitCode);
  addCheck(program, setExitCode);
  addAgain(program);
  addRuler(program);
  addActivities(program);
  addSchema(program);
  return program;
}

/** Commander's own complaints in the form of ours. */
function asSentence(message: string): string {
  const [, words = message] = /^error: (.*)/s.exec(message) ?? [];
  return `samewise: ${words.trim().replace(/\n/g, ' ')}`;
}

function addPack(program: Command): void {
  const pack = program
    .command('pack')
    .description(commands.pack)
    .option('--activity <id>', options.activity)
    .option('--step <number>', options.step)
    .option('--age <years>', options.age)
    .option('--difficulty <logits>', options.difficulty)
    .option('--tasks <number>', options.tasks)
    .option('--sheets <number>', options.sheets)
    .option('--seed <number>', options.seed)
    .option('--paper <name>', options.paper)
    .option('--orientation <name>', options.orientation)
    .option('--print <name>', options.print)
    .option('--colours <names>', options.colours)
    .option('--hand <name>', options.hand)
    .option('--size <name>', options.size)
    .option('--ink <name>', options.ink)
    .option('--margin <name>', options.margin)
    .option('--letters-of <name>', options.lettersOf)
    .option('--own-letters', options.ownLetters)
    .option('--set <name=value>', options.set, collect, [])
    .option('--goals <names>', options.goals)
    .option('--recipe <file>', options.recipe)
    .option('--stock <file>', options.stock)
    .option('--children <names>', options.children)
    .option('--sorted <by>', options.sorted)
    .option('--per-child <folder>', options.perChild)
    .option('--quick', options.quick);
  addOutputs(pack).action((given: PackOptions) => runPack(given));
}

function addYear(program: Command, setExitCode: (code: number) => void): void {
  const { options: own } = YEAR_WORDS;
  program
    .command('year')
    .description(YEAR_WORDS.about)
    .option('--records <file>', own.records)
    .option('--list <file>', own.list)
    .option('--from <day>', own.from)
    .option('--weeks <number>', own.weeks)
    .option('--sheets <number>', own.sheets)
    .option('--paper <name>', options.paper)
    .option('--orientation <name>', options.orientation)
    .option('--print <name>', options.print)
    .option('--files <kinds>', own.files)
    .option('--out <folder>', own.out)
    .option('--language <tag>', options.language)
    .option('--single', options.single)
    .option('--measured <mm>', options.measured)
    .option('--no-answers', options.noAnswers)
    .option('--no-adult-page', options.noAdultPage)
    .option('--workers <number>', own.workers)
    .option('--anew', own.anew)
    .addHelpText('after', YEAR_WORDS.examples)
    .action(async (given: YearOptions) => {
      const { runYear } = await import('./year/command.ts');
      setExitCode(await runYear(given));
    });
}

function addCheck(program: Command, setExitCode: (code: number) => void): void {
  program
    .command('check')
    .description(commands.check)
    .argument('<file>', words.arguments.file)
    .action((file: string) => setExitCode(runCheck(file)));
}

function addAgain(program: Command): void {
  const again = program
    .command('again')
    .description(commands.again)
    .argument('<code...>', words.arguments.code)
    .option('--uncertain', options.uncertain);
  addOutputs(again).action((code: string[], given: Outputs) => runAgain(code.join(' '), given));
}

function addRuler(program: Command): void {
  program
    .command('ruler')
    .description(commands.ruler)
    .option('--paper <name>', options.paper)
    .option('--language <tag>', options.language)
    .option('--out <file>', options.out)
    .action((given: RulerOptions) => runRuler(given));
}

function addOutputs(command: Command): Command {
  return command
    .option('--out <file>', options.out)
    .option('--json <file>', options.json)
    .option('--svg <folder>', options.svg)
    .option('--pieces', options.pieces)
    .option('--key-card', options.keyCard)
    .option('--cards', options.cards)
    .option('--language <tag>', options.language)
    .option('--single', options.single)
    .option('--measured <mm>', options.measured)
    .option('--no-answers', options.noAnswers)
    .option('--no-adult-page', options.noAdultPage)
    .option('--by-hand', options.byHand)
    .option('--half-made', options.halfMade)
    .option('--sticker <mm>', options.sticker);
}

function addActivities(program: Command): void {
  program
    .command('activities')
    .description(commands.activities)
    .argument('[id]', words.arguments.activity)
    .option('--json', options.asJson)
    .action(runActivities);
}

function addSchema(program: Command): void {
  program
    .command('schema')
    .description(commands.schema)
    .argument('[name]', words.arguments.schema)
    .action(runSchema);
}

function collect(setting: string, before: readonly string[]): readonly string[] {
  return [...before, setting];
}
