import { frozen } from '../../frozen.js';
import type { Source } from '../../source.js';

// The tables that ranges and constants come from, and how far each was checked.

export const alberta: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'alberta-data-booklet',
  where: 'Acid–Base Indicators at 298.15 K',
  checked: 'Moodle course page that reprints part of it',
});
export const bishop: Source = /*#__PURE__*/ frozen({
  kind: 'fromMemory',
  work: 'bishop-1972',
  note: 'chapter 3 (E. Bányai), not checked against the page',
});
export const crc: Source = /*#__PURE__*/ frozen({
  kind: 'fromMemory',
  work: 'crc-handbook',
  note: 'table Acid-Base Indicators, not checked against the page',
});
export const crcDirections: Source = /*#__PURE__*/ frozen({
  kind: 'fromMemory',
  work: 'crc-handbook',
  note: 'directions for indicator solutions, not checked against the page',
});
export const harris: Source = /*#__PURE__*/ frozen({
  kind: 'fromMemory',
  work: 'harris-2016',
  note: 'table 11-3, not checked against the page',
});
export const juniorOlympiad: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'junior-olympiad-guide',
  where: 'table of indicators',
  checked: 'read there',
});
export const kolthoff: Source = /*#__PURE__*/ frozen({
  kind: 'fromMemory',
  work: 'kolthoff-1937',
  note: 'table of indicator constants, not checked against the page',
});
export const monk: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'monk-2004',
  where: 'table 6.7, page 277',
  checked: 'read there',
});
export const skoog: Source = /*#__PURE__*/ frozen({
  kind: 'fromMemory',
  work: 'skoog-2014',
  note: 'table 14-1, not checked against the page',
});
export const sydney: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'sydney-data-sheet',
  where: 'table',
  checked: 'read there',
});
export const thaiPharmacopoeia: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'thai-pharmacopoeia',
  where: 'section 1.4',
  checked: 'Bureau of Drug and Narcotic web edition, section 1.4',
});
export const wikipedia2004: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'wikipedia-ph-indicator-2004',
  where: 'table',
  checked: 'fact-archive.com copy of that table',
});
export const wikipedia2007: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'wikipedia-ph-indicator-2007',
  where: 'table',
  checked: 'chemeurope.com encyclopedia and easychem.com.au copies of that table',
});
