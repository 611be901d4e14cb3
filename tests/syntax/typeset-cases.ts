/**
 * What a hand, a word processor or another country may write, the one message it must give, and what the fix makes of it; no `fixed` where it can mean two things. A quote that is not closed
 * takes the rest of its line, so such a case is the last on it.
 */
export interface TypesetCase { readonly written: string; readonly message: string; readonly fixed?: string; readonly id?: string; readonly isLastOnLine?: true }

const dashes = 'can mean a range, a subtraction or a join. Write to for a range, a hyphen between spaces to subtract, and a hyphen without spaces to join.';
const times = '‘×’ can divide the figures of a size or multiply. Write x between spaces for a size, such as 8" x 4", and * to multiply.';

export const typesetCases: readonly TypesetCase[] = [
    // fractions
    { written: 'top 34½"', message: '34½" has the fraction sign ½; a fraction is written with a slash. Write 34-1/2".', fixed: 'top 34-1/2"' },
    { written: 'top 34 ¾"', message: '34 ¾" has the fraction sign ¾; a fraction is written with a slash. Write 34-3/4".', fixed: 'top 34-3/4"' },
    { written: 'top ⅛"', message: '⅛" has the fraction sign ⅛; a fraction is written with a slash. Write 1/8".', fixed: 'top 1/8"' },
    { written: 'top 34-¼"', message: '34-¼" has the fraction sign ¼; a fraction is written with a slash. Write 34-1/4".', fixed: 'top 34-1/4"' },
    { written: 'top 7\'6½"', message: '7\'6½" has the fraction sign ½; a fraction is written with a slash. Write 7\'6-1/2".', fixed: 'top 7\'6-1/2"' },
    { written: 'top 7\'-½"', message: '7\'-½" has the fraction sign ½; a fraction is written with a slash. Write 7\'-1/2".', fixed: 'top 7\'-1/2"' },
    { written: 'top 2½ in', message: '2½ in has the fraction sign ½; a fraction is written with a slash. Write 2-1/2 in.', fixed: 'top 2-1/2 in' },
    { written: 'top 34 3⁄4"', message: '34 3⁄4" has the fraction line ⁄; a fraction is written with a slash. Write 34-3/4".', fixed: 'top 34-3/4"' },
    { written: 'top 36" - ½"', message: '½" has the fraction sign ½; a fraction is written with a slash. Write 1/2".', fixed: 'top 36" - 1/2"' },
    // dashes and minus signs inside a figure
    { written: 'top 34–3/4"', message: '34–3/4" has the dash –; a hyphen joins the parts of a figure. Write 34-3/4".', fixed: 'top 34-3/4"' },
    { written: 'top 7\'–6"', message: '7\'–6" has the dash –; a hyphen joins the parts of a figure. Write 7\'-6".', fixed: 'top 7\'-6"' },
    { written: 'top 34–½"', message: '34–½" has the dash –; a hyphen joins the parts of a figure. Write 34-1/2".', fixed: 'top 34-1/2"' },
    { written: 'top 34−3/4"', id: 'unclear-sign', message: '34−3/4" has a minus sign inside; a hyphen without spaces joins, and one between spaces subtracts. Write the one that is meant.' },
    { written: 'top 34–36/4"', id: 'unclear-sign', message: '34–36/4" has the dash –; a range is written with to, and a hyphen between spaces subtracts. Write the one that is meant.' },
    // dashes and minus signs between values
    { written: 'top 36" − 2"', message: '‘−’ is a typeset minus sign; a hyphen is needed to subtract. Write -.', fixed: 'top 36" - 2"' },
    { written: 'top 36" – 2"', message: '‘–’ is a dash; a hyphen is needed to subtract. Write -.', fixed: 'top 36" - 2"' },
    { written: 'ambient −10 degC', message: '‘−’ is a typeset minus sign; a hyphen is needed to subtract. Write -.', fixed: 'ambient -10 degC' },
    { written: 'top 34"–36"', id: 'unclear-sign', message: `‘–’ ${dashes}` },
    { written: 'top 34" –2"', id: 'unclear-sign', message: `‘–’ ${dashes}` },
    { written: 'slat_gap 1/4" – 3/4"', id: 'unclear-sign', message: `‘–’ ${dashes}` },
    // negative lengths
    { written: 'from left -36"', id: 'negative-length', message: '-36" is negative; a length of 0 or more is needed. Write it without the sign, and a distance from the side it is measured from.' },
    { written: 'from left −36"', id: 'negative-length', message: '-36" is negative; a length of 0 or more is needed. Write it without the sign, and a distance from the side it is measured from.' },
    { written: 'top -36 mm', id: 'negative-length', message: '-36 mm is negative; a length of 0 or more is needed. Write it without the sign, and a distance from the side it is measured from.' },
    { written: 'size 8" x -4"', id: 'negative-length', message: '-4" is negative; a length of 0 or more is needed. Write it without the sign, and a distance from the side it is measured from.' },
    // degrees
    { written: 'ambient 68 °F', message: '68 °F has a degree sign; the unit is degF. Write 68 degF.', fixed: 'ambient 68 degF' },
    { written: 'ambient 68°F', message: '68°F has a degree sign; the unit is degF. Write 68 degF.', fixed: 'ambient 68 degF' },
    { written: 'ambient 20 ºC', message: '20 ºC has a degree sign; the unit is degC. Write 20 degC.', fixed: 'ambient 20 degC' },
    { written: 'ambient 20 ℃', message: '20 ℃ has a degree sign; the unit is degC. Write 20 degC.', fixed: 'ambient 20 degC' },
    { written: 'ambient 68 degrees F', message: '68 degrees F has its unit in words; the unit is degF. Write 68 degF.', fixed: 'ambient 68 degF' },
    { written: 'ambient 20 deg C', message: '20 deg C has its unit in words; the unit is degC. Write 20 degC.', fixed: 'ambient 20 degC' },
    { written: 'ambient 68°', id: 'unclear-sign', message: '68° does not say on which scale; a temperature is written 68 degF or 20 degC. Write the one that is meant.' },
    // two foot marks
    { written: 'top 36\'\'', message: '36\'\' has two foot marks; the inch mark is ". Write 36".', fixed: 'top 36"' },
    { written: 'top 7\'6\'\'', message: '7\'6\'\' has two foot marks; the inch mark is ". Write 7\'6".', fixed: 'top 7\'6"' },
    { written: 'top 34 3/4′′', message: '34 3/4′′ has two foot marks; the inch mark is ". Write 34 3/4".', fixed: 'top 34 3/4"' },
    // the multiplication sign
    { written: 'size 8" × 4"', message: '‘×’ is another sign than x; the figures of a size have x between spaces. Write 8" x 4".', fixed: 'size 8" x 4"' },
    { written: 'size 8"×4"', message: '‘×’ is another sign than x; the figures of a size have x between spaces. Write 8" x 4".', fixed: 'size 8" x 4"' },
    { written: 'size 8"x4"', message: '‘x’ touches a figure; the figures of a size have x between spaces. Write 8" x 4".', fixed: 'size 8" x 4"' },
    { written: 'size 200 mm X 100 mm', message: '‘X’ is another sign than x; the figures of a size have x between spaces. Write 200 mm x 100 mm.', fixed: 'size 200 mm x 100 mm' },
    { written: 'size 2 × 4"', id: 'unclear-sign', message: times },
    { written: 'size (2" + 1") × 4"', id: 'unclear-sign', message: times },
    // spaces of word processors
    { written: 'top 34\u00a03/4"', message: '34\u00a03/4" has a no-break or thin space; a plain space is needed. Write 34 3/4".', fixed: 'top 34 3/4"' },
    { written: 'top 2210\u202fmm', message: '2210\u202fmm has a no-break or thin space; a plain space is needed. Write 2210 mm.', fixed: 'top 2210 mm' },
    { written: 'top 2\u2009210 mm', message: '2\u2009210 mm has a space inside; the digits of a figure stand without spaces. Write 2210 mm.', fixed: 'top 2210 mm' },
    { written: 'top\u200934"', message: 'A thin or wide space of a word processor stands here; a plain space is needed. Write one.', fixed: 'top 34"' },
    // decimal commas
    { written: 'top 34,5 mm', id: 'decimal-comma', message: '34,5 mm has a decimal comma; the decimal mark is a point. Write 34.5 mm.', fixed: 'top 34.5 mm' },
    { written: 'top 0,125"', id: 'decimal-comma', message: '0,125" has a decimal comma; the decimal mark is a point. Write 0.125".', fixed: 'top 0.125"' },
    { written: 'top 1,200 mm', id: 'decimal-comma', message: '1,200 mm can be read as 1200 and as 1.200; the decimal mark is a point, and thousands are not divided. Write the one that is meant.' },
    { written: 'top 1,234.5 mm', id: 'decimal-comma', message: '1,234.5 mm has several points or commas; the decimal mark is one point, and thousands are not divided. Write the figure that is meant.' },
        { written: 'lengths 8,10 ft', id: 'decimal-comma', message: '8,10 ft can be read as one figure and as two; the decimal mark is a point, and a comma between two values has a space behind it. Write 8.10 or 8, 10.' },
    // curly quotes of a figure, and of a text
    { written: 'top 7’6”', id: 'curly-quote', message: '7’6” has the curly quotes of a word processor. Write 7\'6".', fixed: 'top 7\'6"' },
    { written: 'top 34½”', message: '34½” has the fraction sign ½; a fraction is written with a slash. Write 34-1/2".', fixed: 'top 34-1/2"' },
    ...([['“', '”'], ['„', '“'], ['”', '”'], ['‟', '”'], ['«', '»'], ['‘', '’'], ['‹', '›'], ['“', '"'], ['"', '”']] as const).map(([open, close]) => (
        { written: `number ${open}2417 B${close}`, id: 'curly-quote', message: `${open}2417 B${close} stands in the quotes of a word processor; straight quotes are needed. Write "2417 B".`, fixed: 'number "2417 B"', ...(open === '"' && { isLastOnLine: true as const }) })),
    { written: 'number “a 72" room, designer’s choice \\ 2”', id: 'curly-quote', message: '“a 72" room, designer’s choice \\ 2” stands in the quotes of a word processor; straight quotes are needed. Write "a 72\\" room, designer’s choice \\\\ 2".', fixed: 'number "a 72\\" room, designer’s choice \\\\ 2"' },
    { written: 'number ‘the owner’s wish’', id: 'curly-quote', message: '‘the owner’s wish’ stands in the quotes of a word processor; straight quotes are needed. Write "the owner’s wish".', fixed: 'number "the owner’s wish"' },
    { written: 'use “catalogue/skerry.hotroom”', id: 'curly-quote', message: '“catalogue/skerry.hotroom” stands in the quotes of a word processor; straight quotes are needed. Write "catalogue/skerry.hotroom".', fixed: 'use "catalogue/skerry.hotroom"' },
    { written: 'number “2417', id: 'text-not-closed', message: 'This text begins with “ and is not closed. A text stands between two straight quotes (") on one line.', isLastOnLine: true },
];
