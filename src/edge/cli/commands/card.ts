import { extname, join } from 'node:path';
import { Command, Option } from 'commander';
import { ABOUTS, type About } from '../../../report/publish/cards/aspects.ts';
import { CARD_SIZES, type CardSize } from '../../../report/publish/cards/canvas.ts';
import { CARD_KINDS, type CardKind, type CardLook, type CardSource } from '../../../report/publish/cards/card.ts';
import { METHODS } from '../../../report/publish/cards/methods.ts';
import { EXIT, Failure } from '../failure.ts';
import { readLevel } from '../options.ts';

interface CardOptions {
  output: string;
  replace: boolean;
  kind: CardKind;
  about: About;
  cable: string[];
  method?: string;
  step?: string;
  size: CardSize;
  dark: boolean;
  transparent: boolean;
  all: boolean;
  part?: string;
  level: number;
}

export function cardCommand(): Command {
  return new Command('card')
    .summary('draw a card for film or a post')
    .description(
      'Draws a card as .png or .svg; with --all every card that the trial has something for, into a folder, with the text for a description box.',
    )
    .argument('<package>', 'folder or .zip of a data package, or the name of a trial on the shelf')
    .requiredOption('-o, --output <path>', 'file that ends in .png or .svg; with --all a folder that is there')
    .option('--replace', 'write over files that are there already', false)
    .addOption(new Option('--kind <kind>', 'what the card shows').choices(CARD_KINDS).default('one'))
    .addOption(new Option('--about <what>', 'which finding it shows').choices(ABOUTS).default('inside'))
    .option('--cable <name>', 'a cable; twice for a card of two', (name, before: string[]) => [...before, name], [])
    .addOption(new Option('--method <name>', 'for --kind method').choices(METHODS.map(({ method }) => method)))
    .addOption(new Option('--step <n>', 'for --kind one: how much is shown').choices(['1', '2', '3', '4']))
    .addOption(new Option('--size <size>', 'width and height, px').choices(CARD_SIZES).default('1920x1080'))
    .option('--dark', 'light on dark', false)
    .option('--transparent', 'leave the ground out', false)
    .option('--all', 'every card', false)
    .option('--part <name>', 'of a sealed part')
    .option('--level <share>', 'share of cases in which an interval holds the true value', readLevel, 0.95)
    .addHelpText(
      'after',
      '\nExamples:\n  cupel card demo --cable quill -o quill.png\n  cupel card demo --kind two --cable quill --cable brackenfell --size 1080x1920 -o two.svg\n  cupel card demo --all --transparent -o cards',
    )
    .action(card);
}

async function card(named: string, options: CardOptions): Promise<void> {
  const ending = extname(options.output).toLowerCase();
  if (!options.all && ending !== '.png' && ending !== '.svg')
    throw new Failure(`--output was "${options.output}"; expected a file that ends in .png or .svg.`, EXIT.wrongUse);
  const { refuseWithoutFolder } = await import('../../files/refuseWithoutFolder.ts');
  refuseWithoutFolder(options.all ? join(options.output, 'card.png') : options.output);
  const { publishedOf } = await import('../publishedOf.ts');
  const {
    findings,
    trial,
    part = null,
  } = await publishedOf(named, { part: options.part, level: options.level, draws: 0 });
  const source: CardSource = { findings, trial, part };
  const look: CardLook = { size: options.size, dark: options.dark, transparent: options.transparent };
  if (options.all) return await allOf(source, look, options);
  const { cardSvg } = await import('../../../report/publish/cards/card.ts');
  const { kind, about, cable, method, step } = options;
  const svg = await drawn(() =>
    cardSvg(source, { kind, about, cables: cable, method, step: step ? Number(step) : undefined }, look),
  );
  await write(options.output, ending === '.svg' ? svg : await png(svg), options.replace);
  process.stdout.write(`Card written to ${options.output}.\n`);
}

/** Text boxes of most places take at least so many characters. */
const DESCRIPTION_LIMIT = 5000;

async function allOf(source: CardSource, look: CardLook, { output, replace }: CardOptions): Promise<void> {
  const { allCards, cardSvg } = await import('../../../report/publish/cards/card.ts');
  const { descriptionText } = await import('../../../report/publish/cards/description.ts');
  const cards = allCards(source.findings);
  for (const { name, wish } of cards)
    await write(join(output, `${name}.png`), await png(cardSvg(source, wish, look)), replace);
  const { text } = descriptionText(source.findings, source.trial, { limit: DESCRIPTION_LIMIT, links: [] });
  await write(join(output, 'description.txt'), `${text}\n`, replace);
  process.stdout.write(`${cards.length} cards and description.txt written to ${output}.\n`);
}

async function drawn(draw: () => string): Promise<string> {
  const { NoCard } = await import('../../../report/publish/cards/card.ts');
  try {
    return draw();
  } catch (error) {
    if (error instanceof NoCard) throw new Failure(error.message, EXIT.wrongUse);
    throw error;
  }
}

async function png(svg: string): Promise<Uint8Array> {
  const { cardPng } = await import('../../publish/png.ts');
  return cardPng(svg);
}

async function write(path: string, content: Uint8Array | string, replace: boolean): Promise<void> {
  const { writeWholeFile } = await import('../../files/writeFile.ts');
  writeWholeFile(path, content, replace);
}
