/** The demonstration trial: an invented rally club compares six invented makers' cable of one claimed size. */
import { drawsFrom } from '../../test/simulate/random.ts';
import { filesOf, type PackageTables, type Row, row } from '../../test/simulate/tables.ts';
import { abuseDay, abusePieces } from './abuseDay.ts';
import { apartLength, benchDay, tagLength } from './benchDay.ts';
import { bendDay, judgeDay, KITCHEN_SCALE } from './bendDay.ts';
import { HEATED_PIECE, heatDay } from './heatDay.ts';
import { asFirstTyped, beforeFirst, countedAgain, REPLY, sealedFolders, sealedRows } from './publishing.ts';
import { toolRows } from './tools.ts';
import { TRUTHS, type Truth } from './truths.ts';

const SEED = 20261003;
/** Days that were added later have draws of their own, so that what was there stays as it is. */
const BEND_SEED = 20261004;
const JUDGE_SEED = 20261005;
const ABUSE_SEED = 20261007;
const HEAT_SEED = 20261010;
const TRIAL = 'fenwater-2-awg';
const TITLE = 'Six 2 AWG battery cables (an invented trial)';
const DISCLOSURE =
  'Everything here is invented: the club, the makers, the cables and every reading. It is there to try the program with.';

/** Everything that was measured, as it was typed at first. */
function measured(): PackageTables {
  const benched = benchDay(TRUTHS, drawsFrom(SEED));
  return {
    trial: [
      row({
        trial: TRIAL,
        title: TITLE,
        purpose: 'Which cable to take for moving the battery to the boot',
        place: 'Fenwater Rally Club workshop (invented)',
        target_temperature: 20,
        temperature_unit: 'C',
        opened_on: '2026-10-03',
        disclosure: DISCLOSURE,
      }),
    ],
    cables: TRUTHS.map(cableRow),
    fittings: fittingRows(),
    instruments: [...toolRows(), KITCHEN_SCALE],
    specimens: [...TRUTHS.flatMap(specimenRows), ...TRUTHS.flatMap(abusePieces), HEATED_PIECE],
    evidence: TRUTHS.filter((truth) => truth.scraped !== null).map((truth) =>
      row({
        cable: truth.id,
        look: 'scraped_strand',
        where: 'outer',
        count: 10,
        seen: truth.scraped,
        by: 'club bench',
        at: '2026-10-03T15:20:00Z',
      }),
    ),
    readings: asFirstTyped([...benched, ...bendDay(TRUTHS, BEND_SEED, benched.length + 1)]),
    judgements: judgeDay(TRUTHS, JUDGE_SEED),
    endurance: abuseDay(TRUTHS, ABUSE_SEED),
    currents: heatDay(TRUTHS, HEAT_SEED),
  };
}

/** The whole trial: what was measured, what was put right since, what was sealed and what a maker said. */
export function demoTables(): PackageTables {
  const first = measured();
  const readings = first.readings ?? [];
  const { reading, struck } = countedAgain(readings, TRUTHS[0]!.strands);
  const said = { ...first, readings: [...readings, reading], struck: [struck], replies: [REPLY] };
  return { ...said, parts: sealedRows(TRIAL, beforeFirst(first), said) };
}

/** The files of the package with those of its sealed parts, name → text. */
export function demoFiles(): Map<string, string> {
  const tables = demoTables();
  return new Map([...filesOf(TRIAL, TITLE, DISCLOSURE, tables), ...sealedFolders(TRIAL, tables)]);
}

function cableRow(truth: Truth): Row {
  return row({
    cable: truth.id,
    maker: truth.maker,
    model: truth.model,
    role: truth.role,
    bought_from: 'a stall that was made up',
    bought_on: '2026-09-19',
    supplied_free: 'no',
    price: truth.price.toFixed(2),
    currency: 'EUR',
    bought_length: truth.boughtLength,
    bought_length_unit: 'm',
    claimed_size: truth.label.size,
    claimed_metal: truth.label.metal,
    claimed_strands: truth.label.strands,
    printed_on_jacket: truth.label.printed,
    jacket_colour: truth.jacketColour,
    condition: truth.note.includes('left over') ? 'opened' : 'new',
    stranding: truth.stranding,
    note: truth.note,
  });
}

/** The whole length is ohmed first; the other pieces are cut from it. */
function specimenRows(truth: Truth): Row[] {
  const whole = `${truth.id}-whole`;
  const piece = (kind: string, length: number, from: string, cutFrom: string | null, note = '') =>
    row({
      specimen: `${truth.id}-${kind}`,
      cable: truth.id,
      code: truth.code,
      cut_length: tagLength(length),
      cut_length_unit: 'mm',
      cut_from: cutFrom,
      kind,
      taken_from: from,
      note,
    });
  const rows = [piece('whole', truth.boughtLength, '', null), piece('apart', apartLength(truth), 'start', whole)];
  if (truth.role === 'control') return rows;
  return [
    ...rows,
    piece('bend', 0.4, 'middle', whole),
    piece('kept', 0.3, 'end', whole, 'sealed and tagged, for whoever wants to look again'),
  ];
}

function fittingRows(): Row[] {
  const fitting = (id: string, kind: string, bore: number, triedWith: string, tried: string) =>
    row({ fitting: id, kind, bore: bore.toFixed(1), unit: 'mm', tried_with: triedWith, tried });
  return [
    fitting('lug-9', 'lug', 9, 'nine-elms', 'goes in'),
    fitting('lug-10', 'lug', 10.5, 'saltmarsh', 'too loose to crimp'),
    fitting('ring-8', 'terminal', 8, 'brackenfell', 'will not go'),
  ];
}
