import { frozen } from './frozen.js';

/** The books, papers and web pages that data come from: authors, title, year, DOI, each held once. */
export const works = /*#__PURE__*/ frozen({
  'alberta-data-booklet': 'Alberta Education, Chemistry Data Booklet',
  'bates-1973': 'R. G. Bates, Determination of pH: Theory and Practice, 2nd ed., Wiley (1973)',
  'bates-guggenheim-1960': 'R. G. Bates, E. A. Guggenheim, Pure Appl. Chem. 1, 163 (1960)',
  'biochemistry-tables': 'Tables of amino-acid pK in biochemistry textbooks',
  'bishop-1972': 'E. Bishop (ed.), Indicators, Pergamon (1972)',
  'bolton-hall-1967': 'P. D. Bolton, F. M. Hall, Aust. J. Chem. 20, 1797 (1967)',
  'buck-2002':
    'R. P. Buck et al., Measurement of pH. Definition, Standards, and Procedures (IUPAC Recommendations 2002), Pure Appl. Chem. 74, 2169–2200 (2002), doi:10.1351/pac200274112169',
  'busey-mesmer-1977': 'R. H. Busey, R. E. Mesmer, Inorg. Chem. 16, 2444 (1977)',
  'clark-1996':
    'W. M. Clark, The Determination of Hydrogen Ions, as quoted in a letter to New Scientist, 28 September 1996',
  'clp-2008':
    'Regulation (EC) No 1272/2008 on classification, labelling and packaging of substances and mixtures, Annex VI, table 3',
  'crc-handbook': 'CRC Handbook of Chemistry and Physics, CRC Press',
  'dahlgren-long-1960': 'G. Dahlgren, F. A. Long, J. Am. Chem. Soc. 82, 1303 (1960)',
  'das-ives-1961':
    'S. N. Das, D. J. G. Ives, Proc. Chem. Soc. 1961, 373; D. J. G. Ives, D. Prasad, J. Chem. Soc. B 1970, 1649',
  'davies-1938': 'C. W. Davies, J. Chem. Soc. 1938, 2093–2098, doi:10.1039/JR9380002093',
  'davies-1962': 'C. W. Davies, Ion Association, Butterworths (1962)',
  'debye-huckel-1923': 'P. Debye, E. Hückel, Phys. Z. 24, 185–206 (1923)',
  'dixon-1951':
    'W. J. Dixon, Ratios Involving Extreme Values, Ann. Math. Stat. 22, 68–78 (1951), doi:10.1214/aoms/1177729693',
  'eden-bates-1959': 'M. Eden, R. G. Bates, J. Res. Natl. Bur. Stand. 62, 161 (1959)',
  'ernst-menashi-1963': 'Z. L. Ernst, J. Menashi, Trans. Faraday Soc. 59, 230 (1963)',
  'eurachem-cg4':
    'EURACHEM/CITAC Guide CG 4, Quantifying Uncertainty in Analytical Measurement, 3rd ed. (2012)',
  'everett-pinsent-1952': 'D. H. Everett, B. R. W. Pinsent, Proc. R. Soc. London A 215, 416 (1952)',
  'fernandez-hepler-1959': 'L. P. Fernandez, L. G. Hepler, J. Am. Chem. Soc. 81, 1783 (1959)',
  'goldberg-2002':
    'R. N. Goldberg, N. Kishore, R. M. Lennen, Thermodynamic Quantities for the Ionization Reactions of Buffers, J. Phys. Chem. Ref. Data 31, 231–370 (2002), doi:10.1063/1.1416902',
  'grubbs-1969':
    'F. E. Grubbs, Procedures for Detecting Outlying Observations in Samples, Technometrics 11, 1–21 (1969), doi:10.1080/00401706.1969.10490657',
  'guntelberg-1926': 'E. Güntelberg, Z. Phys. Chem. 123, 199–247 (1926)',
  'harned-embree-1934': 'H. S. Harned, N. D. Embree, J. Am. Chem. Soc. 56, 1042 and 1050 (1934)',
  'harris-2016': 'D. C. Harris, Quantitative Chemical Analysis, 9th ed., Freeman (2016)',
  'hydrazine-page': 'chemicalnow.ru, Hydrazinium salts (in Russian)',
  'iapws-r11-07':
    'IAPWS R11-07(2019), Revised Release on the Ionization Constant of H2O, after A. V. Bandura, S. N. Lvov, J. Phys. Chem. Ref. Data 35, 15–30 (2006), doi:10.1063/1.1928231',
  'iso-1042': 'ISO 1042:1998, Laboratory glassware – One-mark volumetric flasks',
  'iso-385': 'ISO 385:2005, Laboratory glassware – Burettes',
  'iso-648': 'ISO 648:2008, Laboratory glassware – Single-volume pipettes',
  'izatt-1962': 'R. M. Izatt, J. J. Christensen, R. T. Pack, R. Bench, Inorg. Chem. 1, 828 (1962)',
  'junior-olympiad-guide': 'Open chemistry guide for the Junior Science Olympiad',
  'kell-1975': 'G. S. Kell, J. Chem. Eng. Data 20, 97–105 (1975), doi:10.1021/je60064a005',
  'kettler-1991':
    'R. M. Kettler, D. A. Palmer, D. J. Wesolowski, J. Solution Chem. 20 (9) (1991), dissociation of oxalic acid in NaCl to 175 °C',
  'kielland-1937': 'J. Kielland, J. Am. Chem. Soc. 59, 1675–1678 (1937), doi:10.1021/ja01288a032',
  'king-1952': 'E. J. King, G. W. King, J. Am. Chem. Soc. 74, 1212 (1952); citation from memory',
  'kolthoff-1937': 'I. M. Kolthoff, C. Rosenblum, Acid-Base Indicators, Macmillan (1937)',
  'kurz-farrar-1969': 'J. L. Kurz, J. M. Farrar, J. Am. Chem. Soc. 91, 6057 (1969)',
  'lai-2016': 'C.-Z. Lai et al., Limnol. Oceanogr. Methods 14, 864–873 (2016)',
  'maleic-bits':
    'Primary acidity constant of maleic acid in H2O and D2O at 298.2 K, repository of BITS Pilani, item 18980',
  'malmberg-maryott-1956': 'C. G. Malmberg, A. A. Maryott, J. Res. Natl. Bur. Stand. 56, 1–8 (1956)',
  'martell-smith-1974':
    'A. E. Martell, R. M. Smith, Critical Stability Constants, vols. 1–6, Plenum (1974–1989)',
  'merck-index': 'The Merck Index',
  'merck-table': 'Merck, table of pH indicators',
  'monk-2004': 'P. Monk, Physical Chemistry: Understanding our Chemical World, Wiley (2004)',
  'morris-1966': 'J. C. Morris, J. Phys. Chem. 70, 3798 (1966)',
  'naphtholphthalein-suppliers':
    'Suppliers’ pages of α-naphtholphthalein: benchchem.com b1169966, smolecule.com s604335',
  'nist-srd-46':
    'A. E. Martell, R. M. Smith, R. J. Motekaitis, NIST Critically Selected Stability Constants of Metal Complexes, NIST SRD 46',
  'openstax-chemistry-2e': 'P. Flowers, K. Theopold, R. Langley, W. R. Robinson, Chemistry 2e, OpenStax',
  'organic-text': 'Exercise of an organic chemistry textbook',
  'parker-1965':
    'V. B. Parker, Thermal Properties of Aqueous Uni-univalent Electrolytes, NSRDS-NBS 2, U.S. Government Printing Office (1965)',
  'perrin-1965':
    'D. D. Perrin, Dissociation Constants of Organic Bases in Aqueous Solution, Butterworths (1965), and Supplement (1972), digitised by IUPAC, doi:10.5281/zenodo.7236452',
  'plummer-busenberg-1982':
    'L. N. Plummer, E. Busenberg, Geochim. Cosmochim. Acta 46, 1011–1040 (1982), doi:10.1016/0016-7037(82)90056-4',
  'prohaska-2022':
    'T. Prohaska et al., Standard atomic weights of the elements 2021 (IUPAC Technical Report), Pure Appl. Chem. 94, 573–600 (2022)',
  'raposo-2002': 'J. C. Raposo et al., Talanta 57, 849–857 (2002), doi:10.1016/S0039-9140(02)00130-3',
  'rossini-1952':
    'F. D. Rossini et al., Selected Values of Chemical Thermodynamic Properties, NBS Circular 500 (1952)',
  'roy-2006-taps':
    'J. Chem. Thermodyn. 38, 413–417 (2006), thermodynamic constants of Taps from 278.15 K to 328.15 K',
  'serjeant-dempsey-1979':
    'E. P. Serjeant, B. Dempsey, Ionisation Constants of Organic Acids in Aqueous Solution, Pergamon (1979), digitised by IUPAC, doi:10.5281/zenodo.7236452',
  'sjoberg-1983': 'S. Sjöberg et al., Mar. Chem. 13, 35–44 (1983), doi:10.1016/0304-4203(83)90047-6',
  'skoog-2014':
    'D. A. Skoog, D. M. West, F. J. Holler, S. R. Crouch, Fundamentals of Analytical Chemistry, 9th ed., Brooks/Cole (2014)',
  'smith-1937': 'P. K. Smith, A. C. Taylor, E. R. B. Smith, J. Biol. Chem. 122, 109 (1937)',
  'smolyakov-primanchuk-1966': 'B. S. Smolyakov, M. P. Primanchuk, Russ. J. Phys. Chem. 40, 463 (1966)',
  'sydney-data-sheet':
    'University of Sydney, School of Chemistry, first-year data sheet Ionisation Constants of Acids in Water Solution at 298 K',
  'talanta-1998-thymol-blue':
    'Determination of pKa values for thymol blue in aqueous medium, Talanta 46, 1439–1452 (1998)',
  talbot:
    'H. P. Talbot, An Introductory Course of Quantitative Chemical Analysis, 6th ed., Project Gutenberg 12787',
  'tartrate-dalton-1994': 'J. Chem. Soc., Dalton Trans. 1994, doi:10.1039/DT9940002729',
  'thai-pharmacopoeia': 'Thai Pharmacopoeia',
  'usp-32':
    'United States Pharmacopeia 32 – National Formulary 27, Reagents, Indicators, and Solutions (2009)',
  'wagman-1982':
    'D. D. Wagman et al., The NBS Tables of Chemical Thermodynamic Properties, J. Phys. Chem. Ref. Data 11, Suppl. 2 (1982)',
  'wikipedia-ph-indicator-2004': 'Wikipedia, pH indicator, early version of the table',
  'wikipedia-ph-indicator-2007': 'Wikipedia, pH indicator, table as of 2007 and later',
  'wikipedia-sulfamic-acid': 'Wikipedia, Sulfamic acid',
  'wmo-2025': 'WMO Greenhouse Gas Bulletin No. 21, World Meteorological Organization (October 2025)',
  'yao-byrne-2001':
    'W. Yao, R. H. Byrne, Spectrophotometric determination of freshwater pH using bromocresol purple and phenol red, Environ. Sci. Technol. 35, 1197 (2001); authors and page from memory',
} as const);

/** The key of a work in `works`, or a user's own. */
export type Work = keyof typeof works | (string & {});
