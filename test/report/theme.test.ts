import { describe, expect, it } from 'vitest';
import { jacketColour, jacketDeclarations } from '../../src/report/jacketColour.ts';
import {
  darkTheme,
  lightTheme,
  paperTheme,
  ROLES,
  type Theme,
  themeDeclarations,
  variablesTheme,
} from '../../src/report/theme.ts';
import { expectClose } from '../tolerance.ts';

/** Contrast of two colours, WCAG 2.2, "relative luminance" and "contrast ratio". */
function contrast(a: string, b: string): number {
  const luminance = (hex: string): number => {
    const [r, g, b2] = [1, 3, 5].map((i) => {
      const c = Number.parseInt(hex.slice(i, i + 2), 16) / 255;
      return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r! + 0.7152 * g! + 0.0722 * b2!;
  };
  const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high! + 0.05) / (low! + 0.05);
}

describe('the colours', () => {
  it('are measured by the known ends of the scale', () => {
    expectClose(contrast('#FFFFFF', '#000000'), 21, { relative: 1e-12, because: 'WCAG 2.2: 21:1 at most' });
  });

  it.each([
    ['light', lightTheme],
    ['dark', darkTheme],
    ['paper', paperTheme],
  ])('%s: text reads (4.5:1) and marks are seen (3:1)', (_name, theme) => {
    for (const role of ['ink', 'ink2', 'copperText'] as const) {
      expect(contrast(theme[role], theme.ground), role).toBeGreaterThan(4.5);
      expect(contrast(theme[role], theme.sheet), role).toBeGreaterThan(4.5);
    }
    for (const role of ['edge', 'copper', 'copperLine', 'tinLine', 'alu', 'aluLine', 'claim'] as const) {
      expect(contrast(theme[role], theme.ground), role).toBeGreaterThan(3);
      expect(contrast(theme[role], theme.bed), role).toBeGreaterThan(3);
    }
    expect(contrast(theme.claim, theme.copper)).toBeGreaterThan(3);
  });

  it('stand in the style sheet as variables of the same roles', () => {
    expect(variablesTheme.copperLine).toBe('var(--copper-line)');
    expect(themeDeclarations(lightTheme)).toContain('--copper-line:#8C4826;');
    for (const role of ROLES) expect(themeDeclarations(darkTheme)).toContain(variablesTheme[role].slice(4, -1));
  });
});

describe('jackets', () => {
  it.each([
    ['black', 'black'],
    ['Matte BLACK', 'black'],
    ['dark blue, white print', 'blue'],
    ['Gray', 'grey'],
    ['crimson', 'red'],
    ['clear', 'clear'],
    ['', null],
    ['heliotrope', null],
    ['blackish', null],
    ['<script>', null],
  ])('%j is drawn as %s', (name, hue) => {
    expect(jacketColour(name, lightTheme).hue).toBe(hue);
  });

  it('keep orange and clear apart from metal and ground by a heavier outline', () => {
    expect(jacketColour('orange', lightTheme).outlineWidth).toBe(2);
    expect(jacketColour('clear', darkTheme).outlineWidth).toBe(2);
    expect(jacketColour('black', darkTheme).outlineWidth).toBe(1);
  });

  it('are never the colour of copper', () => {
    const distance = (a: string, b: string): number =>
      Math.hypot(
        ...[1, 3, 5].map((i) => Number.parseInt(a.slice(i, i + 2), 16) - Number.parseInt(b.slice(i, i + 2), 16)),
      );
    const themes: Theme[] = [lightTheme, darkTheme];
    for (const theme of themes) {
      for (const name of ['red', 'orange', 'brown', 'yellow', 'pink', 'beige']) {
        expect(distance(jacketColour(name, theme).fill, theme.copper), name).toBeGreaterThan(40);
      }
    }
  });

  it('have a variable for each', () => {
    expect(jacketColour('navy', variablesTheme).fill).toBe('var(--jacket-blue)');
    expect(jacketDeclarations('dark')).toContain('--jacket-blue:#38546F;');
  });
});
