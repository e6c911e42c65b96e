/** Every page that holds parts made by the program, and what makes them. */
import { assayDemoText, refusalExamples } from './demoFindings.ts';
import { findingsFields } from './findingsFields.ts';
import { findingsSchemaText } from './findingsSchema.ts';
import { type BlockMakers, fillBlocks } from './markedBlocks.ts';
import {
  awgLimits,
  disagreementWords,
  faultTable,
  levelsTable,
  metalTable,
  metricLimits,
  sightTable,
  usualLayWords,
  usualLimitsTable,
} from './methodTables.ts';
import { columnTables, filesTable, quantityTable, unitTable } from './packageTables.ts';
import { planMethods } from './planMethods.ts';
import { runFields } from './runFields.ts';
import { promises, singleLots, unseenTable } from './simulatedFigures.ts';

/** Reads a file of the project by its path from the top. */
export type ReadFile = (path: string) => string;

export const PAGES = ['README.md', 'docs/file-format.md', 'docs/method.md'];
const SCHEMA = 'docs/findings.schema.json';
const FIGURES = 'docs/figures.md';

function makersOf(read: ReadFile): BlockMakers {
  return {
    'assay-demo': assayDemoText,
    promises: () => promises(read(FIGURES)),
    'single-lots': () => singleLots(read(FIGURES)),
    unseen: () => unseenTable(read(FIGURES)),
    files: filesTable,
    columns: columnTables,
    quantities: quantityTable,
    units: unitTable,
    refusals: refusalExamples,
    'findings-fields': findingsFields,
    'run-fields': runFields,
    'plan-methods': planMethods,
    metals: metalTable,
    faults: faultTable,
    'usual-limits': usualLimitsTable,
    'usual-lay': usualLayWords,
    sights: sightTable,
    'awg-limits': awgLimits,
    'metric-limits': metricLimits,
    levels: levelsTable,
    disagreement: disagreementWords,
  };
}

/** Path → text of every page and schema as the program makes it now. */
export function madePages(read: ReadFile): Map<string, string> {
  const makers = makersOf(read);
  return new Map([
    ...PAGES.map((path): [string, string] => [path, fillBlocks(read(path), makers)]),
    [SCHEMA, findingsSchemaText()],
  ]);
}
