import type { Severity } from '../core/finding.js';
import type { SyntaxProblemId } from '../syntax/problem.js';

/** A mistake in how the language is used. These have public ids, documentation and severities like every other rule. */
export interface LanguageRule {
    readonly title: string;
    readonly severity: Severity;
    readonly why: string;
    /** Two short pieces of a file: the first shows the mistake, the second the cure. */
    readonly bad: string;
    readonly good: string;
}
export type LanguageRuleId = SyntaxProblemId
    | 'figure-unreadable' | 'division-by-zero' | 'mixed-dimensions' | 'name-in-calculation' | 'part-not-expected' | 'length-not-exact' | 'unit-missing'
    | 'value-of-another-kind' | 'unknown-name' | 'fact-repeated' | 'block-repeated' | 'fact-missing' | 'name-missing' | 'wall-missing'
    | 'name-taken' | 'block-without-body' | 'property-with-body' | 'use-not-found' | 'use-outside-workspace' | 'use-not-a-path' | 'name-from-two-files'
    | 'value-out-of-range' | 'date-impossible' | 'reading-failed' | 'file-without-a-job' | 'nothing-to-override' | 'made-from-itself' | 'argument-missing' | 'argument-not-expected'
    | 'argument-does-not-fit' | 'names-in-a-ring' | 'name-without-value' | 'waiver-incomplete' | 'waiver-not-allowed' | 'waiver-not-needed' | 'waiver-expired'
    | 'waiver-of-unknown-finding';

const error = (title: string, why: string, bad: string, good: string): LanguageRule => ({ title, severity: 'error', why, bad, good });

/** Every mistake of the language with its documentation. */
export const languageRules: Readonly<Record<LanguageRuleId, LanguageRule>> = {
    'unexpected-character': error('A character that is not used', 'The line cannot be read with it, so its fact would be lost.', 'top = 37"', 'top 37"'),
    'text-not-closed': error('A text without its closing quote', 'A text ends on the line it begins on, so that one missing quote cannot swallow the rest of the file.', 'number "2417', 'number "2417"'),
    'curly-quote': { ...error('Curly quotes of a word processor', 'They look like the inch and foot marks and are other characters; the figure is read as meant.', 'height 7\u20196\u201d', 'height 7\'6"'), severity: 'warning' },
    'typeset-sign': { ...error('A sign of a word processor or another keyboard', 'It looks like a sign of the language and is another character; the figure is read as meant.', 'top 34\u00bd"', 'top 34-1/2"'), severity: 'warning' },
    'unclear-sign': error('A sign that can be read in two ways', 'A dash may mean a range, a subtraction or a join, and \u00d7 a size or a product; a size is never guessed.', 'depth 34"\u201336"', 'depth 34" to 36"'),
    'file-too-large': error('A file beyond what is read', 'It is no job anybody wrote by hand, and reading it would hold up every other file.', '((((((…))))))', 'top 37"'),
    'negative-length': error('A negative length', 'Nothing on a drawing is shorter than nothing; what was meant instead is not known.', 'from left -36"', 'from left 36"'),
    'decimal-comma': error('A decimal comma', 'A comma divides the members of a list, so 2,5 m would be two figures.', 'length 2,5 m', 'length 2.5 m'),
    'unknown-unit': error('A unit that does not exist', 'A figure in a unit nobody knows cannot be cut.', 'top 37inch', 'top 37 in'),
    'inch-mark-missing': error('A foot figure without its inch mark', '7\'6 could be meant as feet and inches or as two figures.', 'height 7\'6', 'height 7\'6"'),
    'hyphen-spacing': error('A hyphen that neither joins nor subtracts', 'A hyphen inside a figure joins (34-3/4"), between spaces it subtracts; anything else can be read both ways.', 'depth 34" -3/4"', 'depth 34" - 3/4"'),
    'value-missing': error('A value is missing', 'A fact, an operator or a comma without its value says nothing.', 'top', 'top 37"'),
    'bracket-not-closed': error('A bracket without its partner', 'Where the calculation ends is not known.', 'depth (37" - 2"', 'depth (37" - 2")'),
    'bracket-without-partner': error('A closing bracket that was never opened', 'Where the calculation begins is not known.', 'depth 37" - 2")', 'depth (37" - 2")'),
    'block-not-closed': error('A block without its closing brace', 'What follows would belong to the block.', 'bench upper on back {\n    top 37"', 'bench upper on back {\n    top 37"\n}'),
    'brace-without-partner': error('A brace without its partner', 'It closes or opens nothing.', '}', ''),
    'brace-missing': error('A block without its opening brace', 'The facts below the header belong to it only inside braces.', 'bench upper on back\n    top 37"\n}', 'bench upper on back {\n    top 37"\n}'),
    'brace-on-its-own-line': error('An opening brace on its own line', 'A header without a brace is a fact of its own.', 'bench upper on back\n{', 'bench upper on back {'),
    'line-without-a-word': error('A line that begins with a value', 'What the value is of is not known.', '37"', 'top 37"'),
    'two-facts-on-one-line': error('Two facts on one line', 'A fact ends at the end of its line or at a semicolon.', 'top 37" depth 20"', 'top 37"; depth 20"'),
    'part-out-of-place': error('A part that belongs elsewhere', 'The value cannot be read with it.', 'depth (37" 2")', 'depth (37" - 2")'),
    'kind-missing': error('A block that does not say what it is', 'A header begins with the kind of block; what stands in the block tells which one is meant.', 'upper on back { build Slatted; top 37"; depth 20" }', 'bench upper on back { build Slatted; top 37"; depth 20" }'),
    'figure-unreadable': error('A figure that cannot be read', 'A fraction has no zero below its line.', 'top 3/0"', 'top 3/4"'),
    'division-by-zero': error('A division by zero', 'It has no value.', 'depth 20" / (2 - 2)', 'depth 20" / 2'),
    'mixed-dimensions': error('A sum of unlike things', 'Lengths, currents and temperatures cannot be added to each other.', 'top 36" + 240 V', 'top 36" + 1"'),
    'name-in-calculation': error('A name where a figure stands', 'A calculation is made of figures with their units.', 'depth width / 2', 'depth 72" / 2'),
    'part-not-expected': error('A word or value too many', 'What it belongs to is not known.', 'top 37" 20"', 'top 37"'),
    'length-not-exact': error('A length no mark can show', 'Lengths are kept exactly; a third of a millimetre has no exact place on any rule.', 'top 1 m / 3', 'top 333.3 mm'),
    'unit-missing': error('A figure without its unit', '37 could be inches, millimetres or anything else.', 'top 37', 'top 37"'),
    'value-of-another-kind': error('A value of another kind', 'The fact takes another kind of value.', 'top "high"', 'top 37"'),
    'unknown-word': error('A word that is not known here', 'A misspelled fact would silently be left out of the job.', 'topp 37"', 'top 37"'),
    'unknown-name': error('A name nothing answers to', 'Everything that depends on it cannot be worked out.', 'model Tarn6', 'model Tarn60'),
    'fact-repeated': error('A fact written twice', 'Which of the two holds is not known.', 'top 37"\ntop 38"', 'top 37"'),
    'block-repeated': error('A second block where one is allowed', 'Which of the two holds is not known.', 'room { … }\nroom { … }', 'room { … }'),
    'fact-missing': error('A fact is missing', 'The block means nothing without it.', 'bench upper on back { top 37" }', 'bench upper on back { build Slatted; top 37"; depth 20" }'),
    'name-missing': error('A block without its name', 'Marks, findings and references need it.', 'bench on back { … }', 'bench upper on back { … }'),
    'wall-missing': error('A block without its wall', 'Where it stands is not known.', 'bench upper { … }', 'bench upper on back { … }'),
    'name-taken': error('A name used twice', 'Marks and references would mean two things.', 'bench upper on back { … }\nbench upper on left { … }', 'bench upper on back { … }\nbench side on left { … }'),
    'block-without-body': error('A block without its facts', 'A header alone says nothing.', 'bench upper on back', 'bench upper on back { … }'),
    'property-with-body': error('A fact with braces', 'It takes a value, not facts.', 'top { 37" }', 'top 37"'),
    'use-not-found': error('A used file that is not there', 'Everything it gives is missing.', 'use "catalog/skerry.hotroom"', 'use "catalogue/skerry.hotroom"'),
    'use-outside-workspace': error('A used file outside the folder', 'A job has to build the same for everybody, from what is in the folder.', 'use "../../elsewhere/skerry.hotroom"', 'use "catalogue/skerry.hotroom"'),
    'use-not-a-path': error('A use without a path', 'What is used is not known.', 'use skerry', 'use "catalogue/skerry.hotroom"'),
    'name-from-two-files': error('One name from two used files', 'Which of the two is meant is not known.', 'use "a.hotroom"\nuse "b.hotroom"   // both give Slatted', 'use "a.hotroom"'),
    'value-out-of-range': error('A range that runs backwards', 'Nothing lies in it.', 'slat_gap 3/4" to 1/4"', 'slat_gap 1/4" to 3/4"'),
    'date-impossible': error('A day that is not in the calendar', 'It never comes.', 'measured_on 2026-02-30', 'measured_on 2026-02-28'),
    'file-without-a-job': { ...error('A file with nothing in it', 'Nothing was checked, and that should not look like a sound job.', '// to be written', 'job first "My first room" { rules us_dwelling }'), severity: 'info' },
    'nothing-to-override': error('Something said of a block that is not there', 'A misspelled name would silently leave the series as it is.', 'job one is cottage {\n    bench uper { top 38" }\n}', 'job one is cottage {\n    bench upper { top 38" }\n}'),
    'made-from-itself': error('Made from itself', 'Where it begins is not known.', 'series a is b { … }\nseries b is a { … }', 'series a is b { … }\nseries b { … }'),
    'argument-missing': error('A value the series asks for is missing', 'What is made from it cannot be worked out.', 'job one is cottage()', 'job one is cottage(72")'),
    'argument-not-expected': error('A value the series does not ask for', 'Where it belongs is not known.', 'job one is cottage(72", 96", 84")', 'job one is cottage(72", 96")'),
    'argument-does-not-fit': error('A value outside of what the series allows', 'The maker has not thought the series through for it.', 'job one is cottage(400")', 'job one is cottage(72")'),
    'names-in-a-ring': error('Names that need each other', 'None of them can be worked out first.', 'let a = b + 1"\nlet b = a - 1"', 'let a = 20"\nlet b = a - 1"'),
    'name-without-value': error('A name whose value is not known', 'What it needs is not written, or cannot be worked out.', 'let free = upper.length', 'let free = room.inside.width'),
    'waiver-incomplete': error('A waiver that does not say enough', 'Who reads it later must see the reason, who decided, and until when.', 'waive head-clearance-too-low on upper', 'waive head-clearance-too-low on upper because "low room, signed" by "design office" until 2027-03-01'),
    'waiver-not-allowed': error('A waiver of what cannot be waived', 'Clearances of the heater, the sensor, the limiter, glass and the door latch keep people from harm; nobody may sign them away.', 'waive clearance-beside-too-small on stove because "…" by "…" until 2027-03-01', ''),
    'waiver-not-needed': { ...error('A waiver nothing answers to', 'A waiver that is kept after its cause is gone would hide the next one.', 'waive head-clearance-too-low on upper because "…" by "…" until 2027-03-01   // the bench is low enough', ''), severity: 'warning' },
    'waiver-expired': { ...error('A waiver whose day has passed', 'What was accepted for a time has to be looked at again.', 'waive head-clearance-too-low on upper because "…" by "…" until 2020-01-31', 'waive head-clearance-too-low on upper because "…" by "…" until 2027-01-31'), severity: 'warning' },
    'waiver-of-unknown-finding': error('A waiver of a finding that does not exist', 'It waives nothing.', 'waive head-clearence-too-low on upper because "…" by "…" until 2027-03-01', 'waive head-clearance-too-low on upper because "…" by "…" until 2027-03-01'),
    'reading-failed': error('A line that cannot be read', 'Its fact would be lost.', '???', 'top 37"'),
};
export const isLanguageRule = (id: string): id is LanguageRuleId => Object.hasOwn(languageRules, id);
