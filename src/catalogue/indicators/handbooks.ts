import { frozen } from '../../frozen.js';
import type { Source } from '../../source.js';

// The tables that ranges and constants come from, and how far each was checked. A handbook that could not be opened is
// cited where another page prints the same numbers: `crcInUsp` are those of the CRC Handbook that stand in USP 32 too.

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
export const bishopInAlberta: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'bishop-1972',
  where: 'chapter 3 (E. Bányai)',
  checked:
    'the same number stands in a reprint of the Alberta data booklet to one decimal; that the work prints it is from memory',
});
export const bishopInGuide: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'bishop-1972',
  where: 'chapter 3 (E. Bányai)',
  checked:
    'the same number stands in the open chemistry guide for the Junior Science Olympiad; that the work prints it is from memory',
});
export const crcInEasychem: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'crc-handbook',
  where: 'table Acid-Base Indicators',
  checked:
    'the same numbers stand in the table of common indicators at easychem.com.au; that the work prints them is from memory',
});
export const crcInGuide: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'crc-handbook',
  where: 'table Acid-Base Indicators',
  checked:
    'the same numbers stand in the open chemistry guide for the Junior Science Olympiad; that the work prints them is from memory',
});
export const crcInUniversal: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'crc-handbook',
  where: 'table Acid-Base Indicators',
  checked:
    'the same numbers stand in the encyclopedia article on universal indicator; that the work prints them is from memory',
});
export const crcInUsp: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'crc-handbook',
  where: 'table Acid-Base Indicators',
  checked:
    'the same numbers stand in USP 32, Reagents, Indicators, opening list; that the work prints them is from memory',
});
export const crcInWikipedia2004: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'crc-handbook',
  where: 'table Acid-Base Indicators',
  checked:
    'the same numbers stand in a copy of the 2004 encyclopedia table; that the work prints them is from memory',
});
export const harrisInGuide: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'harris-2016',
  where: 'table 11-3',
  checked:
    'the same numbers stand in the open chemistry guide for the Junior Science Olympiad; that the work prints them is from memory',
});
export const harrisInSlides: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'harris-2016',
  where: 'table 11-3',
  checked:
    'the same numbers stand in lecture slides on how simple indicators work; that the work prints them is from memory',
});
export const kolthoffInAlberta: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'kolthoff-1937',
  where: 'table of indicator constants',
  checked:
    'the same number stands in a reprint of the Alberta data booklet; that the work prints it is from memory',
});
export const kolthoffInGuide: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'kolthoff-1937',
  where: 'table of indicator constants',
  checked:
    'the same number stands in the open chemistry guide for the Junior Science Olympiad to one decimal; that the work prints it is from memory',
});
export const lai: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'lai-2016',
  where: 'pK at infinite dilution and 25 °C, in the abstract',
  checked: 'abstract in the repository of the University of Montana',
});
export const skoogInCourse: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'skoog-2014',
  where: 'table 14-1',
  checked:
    'the same number stands in the page of a course on indicators, monomole.com; that the work prints it is from memory',
});
export const skoogInGuide: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'skoog-2014',
  where: 'table 14-1',
  checked:
    'the same number stands in the open chemistry guide for the Junior Science Olympiad; that the work prints it is from memory',
});
export const thymolBlue1998: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'talanta-1998-thymol-blue',
  where: 'pKa of thymol blue at low ionic strength, in the abstract',
  checked: 'read there',
});
export const usp32: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'usp-32',
  where: 'Reagents, Indicators, opening list of pH ranges',
  checked: 'a copy at drugfuture.com',
});
export const yaoByrne: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'yao-byrne-2001',
  where: 'pK as a function of temperature, in the abstract',
  checked: 'abstract in the repository of the University of South Florida',
});
export const crcInEncyclopedia: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'crc-handbook',
  where: 'table Acid-Base Indicators',
  checked:
    'the same numbers stand in two copies of the encyclopedia table of 2007; that the work prints them is from memory',
});
export const kolthoffInEncyclopedia: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'kolthoff-1937',
  where: 'table of indicators',
  checked:
    'the same numbers stand in two copies of the encyclopedia table of 2007; that the work prints them is from memory',
});
