import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const CSS = readFileSync(new URL('../../app/globals.css', import.meta.url), 'utf8');
const GROUNDS = ['ground', 'sheet', 'sunk'] as const;
const INKS = ['ink', 'ink-quiet', 'carbon', 'carbon-deep'] as const;
const NAMES = [
  ...GROUNDS,
  ...INKS,
  'rule',
  'carbon-wash',
  'on-carbon',
  'bar',
  'on-bar',
  'on-bar-quiet',
] as const;

type Palette = Record<(typeof NAMES)[number], string>;

/** The colours of a rule of the style sheet; of `light-dark(…)` the first or the second. */
function paletteOf(selector: string, side: 0 | 1 = 0): Palette {
  const block = CSS.split(`\n${selector} {`)[1]?.split('\n}')[0] ?? '';
  const entries = NAMES.map((name) => {
    const value = new RegExp(`--${name}: ([^;]+);`).exec(block)?.[1];
    const colours = value?.match(/#[0-9a-f]{6}/g) ?? [];
    const colour = colours[side] ?? colours[0];
    if (colour === undefined) throw new Error(`${selector} says no colour for --${name}.`);
    return [name, colour];
  });
  return Object.fromEntries(entries) as Palette;
}

/** Relative luminance and contrast ratio: W3C, WCAG 2.2, https://www.w3.org/TR/WCAG22/#dfn-relative-luminance. */
function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((low, high) => low - high);
  return (light + 0.05) / (dark + 0.05);
}

const PALETTES: [string, Palette][] = [
  ['paper', paletteOf(':root', 0)],
  ['graphite', paletteOf(':root', 1)],
  ['sun', paletteOf(':root[data-theme="sun"]')],
  ['night', paletteOf(':root[data-theme="night"]')],
];
const called = (name: string) => Object.fromEntries(PALETTES)[name] as Palette;

describe('contrast', () => {
  it('is reckoned as published: black on white is 21 to 1, pure red on black 5.25', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
    expect(contrast('#ff0000', '#000000')).toBeCloseTo(5.25, 2);
  });

  // Text 7:1: WCAG 2.2, 1.4.6 (AAA). Lines and controls 3:1: 1.4.11.
  it.each(PALETTES)('of %s: text 7 to 1 on every ground, lines 3 to 1', (_, palette) => {
    for (const ground of GROUNDS) {
      for (const ink of INKS) {
        expect(contrast(palette[ink], palette[ground]), `${ink} on ${ground}`).toBeGreaterThanOrEqual(7);
      }
      expect(contrast(palette.rule, palette[ground]), `rule on ${ground}`).toBeGreaterThanOrEqual(3);
    }
    for (const [ink, ground] of [
      ['on-carbon', 'carbon'],
      ['on-carbon', 'carbon-deep'],
      ['ink', 'carbon-wash'],
      ['carbon', 'carbon-wash'],
      ['on-bar', 'bar'],
      ['on-bar-quiet', 'bar'],
    ] as const) {
      expect(contrast(palette[ink], palette[ground]), `${ink} on ${ground}`).toBeGreaterThanOrEqual(7);
    }
  });

  it('of the sun palette is the widest there is', () => {
    const { ink, ground } = called('sun');
    expect(contrast(ink, ground)).toBeCloseTo(21, 5);
  });

  it('of the night palette comes with less light than graphite, and hardly any blue', () => {
    const night = called('night');
    expect(luminance(night.ink)).toBeLessThan(luminance(called('graphite').ink) * 0.6);
    for (const colour of Object.values(night)) {
      const [red = 0, , blue = 0] = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
      expect(blue, colour).toBeLessThanOrEqual(red / 2);
    }
  });
});
