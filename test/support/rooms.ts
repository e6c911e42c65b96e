import { builtinModules } from 'node:module';
import { posix } from 'node:path';
import { identifierName, importedNames, type SyntaxNode, syntaxNodes } from './syntax.ts';

/** What each room may import from besides itself. Reading downward, data flows; nothing points back up. */
export const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  units: [],
  numerics: [],
  journal: ['units', 'numerics'],
  trial: ['units', 'numerics', 'journal'],
  methods: ['units', 'numerics'],
  findings: ['units', 'numerics', 'journal', 'trial', 'methods'],
  report: ['units', 'numerics', 'journal', 'trial', 'methods', 'findings'],
  edge: ['units', 'numerics', 'journal', 'trial', 'methods', 'findings', 'report'],
};

/** Packages that touch the world, or belong to one part of the edge. */
const EDGE_PACKAGES = ['commander', 'hono', '@hono/', 'libsql', 'pg', 'preact', '@preact/', '@fontsource/', 'vite'];
/** Names that stand for the clock, the network, storage, the screen or ambient chance. */
const AMBIENT_OBJECTS = [
  'process',
  'console',
  'performance',
  'window',
  'document',
  'localStorage',
  'indexedDB',
  'navigator',
  'crypto',
];
const AMBIENT_CALLS = ['fetch', 'setTimeout', 'setInterval', 'Date', 'XMLHttpRequest', 'WebSocket', 'Worker'];

function roomOf(path: string): string {
  return path.split('/')[1] ?? '';
}

/** Breaches of the order of rooms in one file of src/, each as one sentence. Types count like everything else. */
export function roomBreaches(path: string, text: string): string[] {
  const room = roomOf(path);
  const allowed = MAY_IMPORT[room];
  if (allowed === undefined) return [`${path}: src/${room} is not one of the rooms`];
  return importedNames(path, text).flatMap((name) => {
    if (!name.startsWith('.')) return packageBreach(path, room, name);
    const target = posix.join(posix.dirname(path), name);
    if (!target.startsWith('src/')) return [`${path}: imports ${name}, which lies outside src/`];
    const targetRoom = roomOf(target);
    if (targetRoom !== room && !allowed.includes(targetRoom))
      return [`${path}: ${room} may not import from ${targetRoom} (${name})`];
    return edgeBreach(path, target);
  });
}

function packageBreach(path: string, room: string, name: string): string[] {
  const ofNode = name.startsWith('node:') || builtinModules.includes(name);
  if (ofNode && (room !== 'edge' || path.startsWith('src/edge/page/'))) return [`${path}: imports ${name} of Node.js`];
  if (
    room !== 'edge' &&
    EDGE_PACKAGES.some((start) => name === start || name.startsWith(start.endsWith('/') ? start : `${start}/`))
  )
    return [`${path}: imports ${name}, which belongs to the edge`];
  return [];
}

/** Inside the edge, what runs in a browser must not pull in what needs a disk. */
function edgeBreach(path: string, target: string): string[] {
  const needsDisk = [
    'src/edge/server/',
    'src/edge/cli/',
    'src/edge/files/',
    'src/edge/store/sqlite/',
    'src/edge/store/postgres/',
  ];
  if (path.startsWith('src/edge/page/') && needsDisk.some((start) => target.startsWith(start)))
    return [`${path}: the page imports ${target}, which needs a disk`];
  return [];
}

/** Uses of the clock, network, screen or ambient chance in a file above the edge, each as one sentence. */
export function impurities(path: string, text: string): string[] {
  if (roomOf(path) === 'edge') return [];
  return syntaxNodes(path, text).flatMap(({ node }) => {
    const what = ambientUse(node);
    return what === null ? [] : [`${path}: uses ${what}; hand it in instead`];
  });
}

function ambientUse(node: SyntaxNode): string | null {
  if (node.type === 'MemberExpression') {
    const object = identifierName(node.object);
    const property = identifierName(node.property);
    if (object === 'Math' && property === 'random') return 'Math.random';
    if (object === 'Date' && property === 'now') return 'Date.now';
    if (object === 'globalThis') return `globalThis.${property}`;
    if (object !== null && AMBIENT_OBJECTS.includes(object)) return `${object}.${property}`;
  }
  if (node.type === 'CallExpression' || node.type === 'NewExpression') {
    const callee = identifierName(node.callee);
    const empty = (node.arguments as unknown[]).length === 0;
    if (callee === 'Date' && node.type === 'NewExpression' && !empty) return null;
    if (callee !== null && AMBIENT_CALLS.includes(callee))
      return `${node.type === 'NewExpression' ? 'new ' : ''}${callee}(…)`;
  }
  if (node.type === 'MetaProperty') return 'import.meta';
  return null;
}
