import { parseSync } from 'vite';

export interface SyntaxNode {
  type: string;
  [key: string]: unknown;
}

/** Every syntax node of a TypeScript text with the node that holds it, outermost first. Throws on text that does not parse. */
export function syntaxNodes(path: string, text: string): { node: SyntaxNode; parent: SyntaxNode | null }[] {
  const parsed = parseSync(path, text);
  if (parsed.errors.length > 0) throw new Error(`${path} does not parse: ${parsed.errors[0]?.message}`);
  const found: { node: SyntaxNode; parent: SyntaxNode | null }[] = [];
  collect(parsed.program, null, found);
  return found;
}

function collect(
  value: unknown,
  parent: SyntaxNode | null,
  into: { node: SyntaxNode; parent: SyntaxNode | null }[],
): void {
  if (Array.isArray(value)) {
    for (const item of value) collect(item, parent, into);
    return;
  }
  if (typeof value !== 'object' || value === null) return;
  const isNode = typeof (value as SyntaxNode).type === 'string';
  const node = isNode ? (value as SyntaxNode) : parent;
  if (isNode) into.push({ node: value as SyntaxNode, parent });
  for (const child of Object.values(value)) collect(child, node, into);
}

/** The name, when a node is a bare identifier. */
export function identifierName(value: unknown): string | null {
  const node = value as SyntaxNode | null;
  return node?.type === 'Identifier' ? String(node.name) : null;
}

/** Everything that a module names in an import, an export-from, a dynamic import or a type import. */
export function importedNames(path: string, text: string): string[] {
  const holders = [
    'ImportDeclaration',
    'ExportAllDeclaration',
    'ExportNamedDeclaration',
    'ImportExpression',
    'TSImportType',
  ];
  return syntaxNodes(path, text)
    .filter(({ node }) => holders.includes(node.type))
    .map(({ node }) => (node.source as SyntaxNode | null | undefined)?.value)
    .filter((value): value is string => typeof value === 'string');
}
