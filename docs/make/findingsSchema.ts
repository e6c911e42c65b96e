/** docs/findings.schema.json: the shape of findings.json for any program, its words from `findingsWords.ts`. */
import { z } from 'zod';
import {
  Claim,
  Comparison,
  Control,
  Findings,
  Measured,
  ResidualRow,
  ToolError,
  Warning,
} from '../../src/findings/schema.ts';
import { FINDINGS_WORDS } from './findingsWords.ts';

/** A node of the JSON schema, as far as it is walked here. */
export interface SchemaNode {
  $ref?: string;
  type?: string | readonly string[];
  description?: string;
  enum?: readonly string[];
  properties?: Record<string, SchemaNode>;
  required?: readonly string[];
  items?: SchemaNode | false;
  prefixItems?: readonly SchemaNode[];
  anyOf?: readonly SchemaNode[];
  additionalProperties?: SchemaNode | false;
  $defs?: Record<string, SchemaNode>;
}

/** Shapes that have a name of their own, in the order in which they are explained. */
const NAMED = { Measured, Claim, ResidualRow, ToolError, Comparison, Control, Warning };

/** What stands inside a list or beside a null. */
export function coreOf(node: SchemaNode): SchemaNode {
  if (node.anyOf) return coreOf(node.anyOf.find((one) => one.type !== 'null')!);
  return node.type === 'array' && node.items ? coreOf(node.items) : node;
}

/** Calls `visit` with every property below a node, by path: `engine.seed`, `cables[].label.size`. */
export function walk(node: SchemaNode, at: string, visit: (path: string, node: SchemaNode, optional: boolean) => void) {
  for (const [name, child] of Object.entries(node.properties ?? {})) {
    const path = at === '' ? name : `${at}.${name}`;
    visit(path, child, !(node.required ?? []).includes(name));
    const list = (child.anyOf ?? [child]).some((one) => one.type === 'array');
    walk(coreOf(child), list ? `${path}[]` : path, visit);
  }
}

/** The JSON schema of findings.json, each property described. */
export function findingsSchema(): SchemaNode {
  const registry = z.registry<{ id: string }>();
  for (const [id, shape] of Object.entries(NAMED)) registry.add(shape, { id });
  // As input: what a later version adds is no fault.
  const schema = z.toJSONSchema(Findings, { metadata: registry, io: 'input' }) as SchemaNode;
  walk(schema, '', describe);
  for (const [id, node] of Object.entries(schema.$defs ?? {})) walk(node, id, describe);
  return { ...schema, description: 'Findings of a trial, as cupel assay --json prints them and as published.' };
}

function describe(path: string, node: SchemaNode): void {
  const words = FINDINGS_WORDS[path];
  if (words !== undefined) node.description = words;
}

export function findingsSchemaText(): string {
  return `${JSON.stringify(findingsSchema(), null, 2)}\n`;
}
