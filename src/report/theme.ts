/**
 * The colours of every picture: bone ash in light, bone black in dark, white paper for the report. Copper is the only
 * strong colour; aluminium is a blue grey that is always ruled as well, because both are one grey in print.
 */
export interface Theme {
  name: 'light' | 'dark' | 'paper' | 'variables';
  /** What the picture is shown on: strands finer than a screen can part are tinted instead of drawn. */
  medium: 'screen' | 'print';
  ground: string;
  sheet: string;
  sunk: string;
  ink: string;
  ink2: string;
  edge: string;
  rule: string;
  copper: string;
  copperLine: string;
  copperText: string;
  tin: string;
  tinLine: string;
  alu: string;
  aluLine: string;
  bed: string;
  claim: string;
  jacketEdge: string;
  focus: string;
}

export const lightTheme: Theme = {
  name: 'light',
  medium: 'screen',
  ground: '#E5E8E5',
  sheet: '#F3F5F3',
  sunk: '#D8DCD9',
  ink: '#15191A',
  ink2: '#465052',
  edge: '#6A7372',
  rule: '#B4BAB7',
  copper: '#B4623A',
  copperLine: '#8C4826',
  copperText: '#85401C',
  tin: '#A0ABB0',
  tinLine: '#66737A',
  alu: '#6C8298',
  aluLine: '#53697E',
  bed: '#F3F5F3',
  claim: '#15191A',
  jacketEdge: '#15191A',
  focus: '#15191A',
};

export const darkTheme: Theme = {
  name: 'dark',
  medium: 'screen',
  ground: '#131617',
  sheet: '#1C2122',
  sunk: '#0B0D0E',
  ink: '#E7EAE7',
  ink2: '#A6AFAE',
  edge: '#808B8B',
  rule: '#3A4243',
  copper: '#BF6F46',
  copperLine: '#B06A46',
  copperText: '#E59C74',
  tin: '#8D989D',
  tinLine: '#8D989D',
  alu: '#788DA1',
  aluLine: '#7C91A5',
  bed: '#0B0D0E',
  claim: '#F2F4F2',
  jacketEdge: '#808B8B',
  focus: '#E7EAE7',
};

export const paperTheme: Theme = {
  ...lightTheme,
  name: 'paper',
  medium: 'print',
  ground: '#FFFFFF',
  sheet: '#FFFFFF',
  bed: '#FFFFFF',
  rule: '#BFC5C2',
};

/** Roles in the order of the table above, with the name of the style-sheet variable that holds each. */
const VARIABLES = {
  ground: '--ground',
  sheet: '--sheet',
  sunk: '--sunk',
  ink: '--ink',
  ink2: '--ink2',
  edge: '--edge',
  rule: '--rule',
  copper: '--copper',
  copperLine: '--copper-line',
  copperText: '--copper-text',
  tin: '--tin',
  tinLine: '--tin-line',
  alu: '--alu',
  aluLine: '--alu-line',
  bed: '--bed',
  claim: '--claim',
  jacketEdge: '--j-edge',
  focus: '--focus',
} as const;

export type Role = keyof typeof VARIABLES;
export const ROLES = Object.keys(VARIABLES) as Role[];

/**
 * A theme whose colours are style-sheet variables (`var(--copper)`), so that one drawing follows the page's scheme without
 * being drawn again. Not for files that leave the page: those need the literal values of the themes above.
 */
export const variablesTheme: Theme = {
  name: 'variables',
  medium: 'screen',
  ...(Object.fromEntries(ROLES.map((role) => [role, `var(${VARIABLES[role]})`])) as Record<Role, string>),
};

/** The declarations that give `variablesTheme` its values: `--ground:#E5E8E5;…`, to be put in a style-sheet rule. */
export function themeDeclarations(theme: Theme): string {
  return ROLES.map((role) => `${VARIABLES[role]}:${theme[role]};`).join('');
}
