/** The findings explained field by field, out of the schema, for docs/file-format.md. */
import { coreOf, findingsSchema, type SchemaNode, walk } from './findingsSchema.ts';
import { FINDINGS_WORDS } from './findingsWords.ts';
import { code, markdownTable } from './markdownTable.ts';

const SHAPE_WORDS: Readonly<Record<string, string>> = {
  Measured: 'A figure with its uncertainty.',
  Claim: 'One meaning of a label, with its limit and outcome.',
  ResidualRow: 'One group of readings.',
  ToolError: 'How wrong one tool would have to be.',
  Comparison: 'Two cables side by side.',
  Control: 'A control piece.',
  Warning: 'Something to know.',
};

const nameOfRef = (ref: string): string => ref.replace('#/$defs/', '');

const TYPE_WORDS: Readonly<Record<string, string>> = { string: 'text', boolean: 'true or false' };
const typeWords = (type: string): string => TYPE_WORDS[type] ?? type;

/** `number`, `Measured or null`, `list of text`, `meets, falls short or not settled`. */
function kindWords(node: SchemaNode): string {
  if (node.$ref) return nameOfRef(node.$ref);
  if (node.anyOf) return node.anyOf.map((one) => (one.type === 'null' ? 'null' : kindWords(one))).join(' or ');
  if (node.enum) return node.enum.map(code).join(', ');
  if (node.prefixItems) return `${node.prefixItems.length} numbers`;
  if (node.type === 'array') return `list of ${kindWords(coreOf(node))}`;
  if (node.type === 'object') return node.properties ? 'object' : 'number for each name';
  return [node.type ?? ''].flat().map(typeWords).join(' or ');
}

function tableOf(node: SchemaNode, at: string): string {
  const rows: string[][] = [];
  walk(node, at, (path, child, optional) => {
    const words = FINDINGS_WORDS[path];
    if (words === undefined) throw new RangeError(`findings have "${path}" and docs/make/findingsWords.ts does not`);
    const shown = at === '' ? path : path.slice(at.length + 1);
    rows.push([code(shown), `${kindWords(child)}${optional ? ', may be absent' : ''}`, words]);
  });
  return markdownTable(['field', 'holds', 'meaning'], rows);
}

/** Paths that are explained although findings do not have them. */
export function strayWords(): string[] {
  const schema = findingsSchema();
  const paths = new Set<string>();
  const note = (path: string) => paths.add(path);
  walk(schema, '', note);
  for (const [id, node] of Object.entries(schema.$defs ?? {})) walk(node, id, note);
  return Object.keys(FINDINGS_WORDS).filter((path) => !paths.has(path));
}

/** One table for the findings and one for each shape that has a name. */
export function findingsFields(): string {
  const schema = findingsSchema();
  const named = Object.keys(SHAPE_WORDS).map(
    (id) => `#### ${id}\n\n${SHAPE_WORDS[id]}\n\n${tableOf(schema.$defs![id]!, id)}`,
  );
  return [tableOf(schema, ''), ...named].join('\n\n');
}
