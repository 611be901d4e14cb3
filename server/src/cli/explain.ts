import { nearestName } from '../../../language/src/core/nearest.js';
import { wrap } from '../../../language/src/renderings/report-text.js';
import { wordHelp } from '../../../language/src/renderings/language-reference.js';
import { allRuleHelp, ruleHelp, ruleHelpText, type RuleHelp } from '../../../language/src/renderings/rule-help.js';
import { showCount } from '../../../language/src/renderings/show-figures.js';
import { functions } from '../../../language/src/model/functions.js';
import { blockKinds } from '../../../language/src/vocabulary/index.js';
import type { Command } from './command.js';
import { widthOf } from './console.js';
import { exitCodes, usageFailure } from './exit-codes.js';
import { shown } from './files.js';

export const explain: Command = {
    name: 'explain', takes: '[RULES|FAMILIES|WORDS…]', summary: 'Say what a rule is about and what cures it, or what a word of the language means.',
    doc: ['A rule is named by the id printed with a finding, with or without its family. The name of a family lists its rules; without a name the families are listed. A word of the language (a block, a fact, a function) is explained with what it takes.'],
    options: [],
    examples: ['hotroom explain', 'hotroom explain bench', 'hotroom explain unknown-word', 'hotroom explain bench_build', 'hotroom explain let'],
    async run(args, { stdout }) {
        const width = widthOf(stdout);
        const all = allRuleHelp();
        stdout.write(args.files.length === 0 ? familyTable(all, width) : args.files.map(name => textFor(name, all, width)).join('\n'));
        return exitCodes.none;
    },
};

/** What each family is about, in the order they are listed. */
const families: Readonly<Record<RuleHelp['family'], string>> = {
    job: 'what the job as a whole says, and decides between texts',
    site: 'the place the room is built in', shell: 'wall and ceiling panels', opening: 'doors and windows', bench: 'benches', heater: 'heater, sensor, controls, signs',
    electrical: 'circuits, supply, lights', air: 'vents and air change', climate: 'heat, steam, moisture and movement of wood', signing: 'who signed which revision', language: 'the text of a file itself', settings: 'the settings file of a project',
};

function familyTable(all: readonly RuleHelp[], width: number): string {
    const counts = (Object.keys(families) as RuleHelp['family'][]).map(family => ({ family, count: all.filter(help => help.family === family).length })).filter(({ count }) => count > 0);
    const longest = Math.max(...counts.map(({ family }) => family.length));
    return [
        ...wrap(`${showCount(all.length, 'rule')} in ${showCount(counts.length, 'family', 'families')}:`, width),
        ...counts.map(({ family, count }) => `  ${family.padEnd(longest)}  ${String(count).padStart(3)}  ${families[family]}`), '',
        ...wrap('hotroom explain FAMILY lists the rules of a family, as in hotroom explain bench.', width),
        ...wrap('hotroom explain RULE says what a rule wants and what cures it; the id of the rule stands behind the severity of every finding.', width), '',
    ].join('\n');
}

function textFor(name: string, all: readonly RuleHelp[], width: number): string {
    const own = all.filter(help => help.family === name.replace(/\/$/, ''));
    const word = wordHelp(name, width);
    if (own.length > 0) {
        const idWidth = Math.max(...own.map(({ id }) => id.length));
        return (word === undefined ? '' : `${word}\n`) + own.map(({ id, severity, title }) => `${id.padEnd(idWidth)}  ${severity.padEnd(7)}  ${title}\n`).join('');
    }
    const id = name.replace(/^.*\//, '');
    const help = ruleHelp(id);
    if (help) return ruleHelpText(help, width);
    if (word !== undefined) return word;
    throw usageFailure(`There is no rule and no word called ${shown(name)}.${meantBy(id, all)}`);
}

/** The nearest id, else those that hold the word: a person remembers `clearance`, seldom the whole id. */
function meantBy(id: string, all: readonly RuleHelp[]): string {
    const meant = nearestName(id, [...all.map(help => help.id), ...new Set(all.map(({ family }) => family)), ...blockKinds, ...Object.keys(functions)]);
    if (meant !== undefined) return ` Is ${meant} meant?`;
    const holding = id.length < 3 ? [] : all.map(help => help.id).filter(other => other.includes(id.toLowerCase()));
    if (holding.length === 0) return ' hotroom explain lists the families of rules.';
    return ` Rules with that word: ${holding.slice(0, mostIds).join(', ')}${holding.length > mostIds ? ` and ${holding.length - mostIds} more` : ''}.`;
}
const mostIds = 8;
