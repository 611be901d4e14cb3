import { nearestName } from '../../../language/src/core/nearest.js';
import { allRuleHelp, ruleHelp, ruleHelpText } from '../../../language/src/renderings/rule-help.js';
import type { Command } from './command.js';
import { widthOf } from './console.js';
import { exitCodes, usageFailure } from './exit-codes.js';
import { shown } from './files.js';

export const explain: Command = {
    name: 'explain', takes: 'RULE…', summary: 'Say what a rule is about, where it comes from and what cures it.',
    doc: ['A rule is named by the id printed with a finding, with or without its family. Without a name every rule is listed.'],
    options: [],
    examples: ['hotroom explain unknown-word', 'hotroom explain'],
    async run(args, { stdout }) {
        const width = widthOf(stdout);
        const all = allRuleHelp();
        if (args.files.length === 0) {
            const families = [...new Set(all.map(({ family }) => family))];
            const idWidth = Math.max(...all.map(({ id }) => id.length));
            stdout.write(families.map(family => `${family}\n${all.filter(help => help.family === family).map(({ id, severity, title }) => `  ${id.padEnd(idWidth)}  ${severity.padEnd(7)}  ${title}\n`).join('')}`).join('\n'));
            return exitCodes.none;
        }
        const found = args.files.map(name => {
            const id = name.replace(/^.*\//, '');
            const help = ruleHelp(id);
            if (help) return help;
            const meant = nearestName(id, all.map(other => other.id));
            throw usageFailure(`There is no rule called ${shown(name)}.${meant === undefined ? ' hotroom explain lists them all.' : ` Is ${meant} meant?`}`);
        });
        stdout.write(found.map(help => ruleHelpText(help, width)).join('\n'));
        return exitCodes.none;
    },
};
