import { expect, test } from 'vitest';
import { languageRules } from '../../language/src/model/language-rules.js';
import { allRuleHelp, ruleHelp, ruleHelpMarkdown, ruleHelpText } from '../../language/src/renderings/rule-help.js';
import { settingsRules } from '../../language/src/settings/settings-rules.js';
import { allRules } from '../../language/src/rules/index.js';

test('every rule and every mistake of the language has its page', () => {
    const ids = allRuleHelp().map(({ id }) => id);
    expect(new Set(ids)).toEqual(new Set([...allRules.map(({ id }) => id), ...Object.keys(languageRules), ...Object.keys(settingsRules)]));
    expect(ids).toHaveLength(new Set(ids).size);
    for (const help of allRuleHelp()) {
        const text = ruleHelpText(help, 100);
        for (const words of [help.id, help.title]) expect(text).toContain(words);
        for (const line of help.good.split('\n').filter(one => one.trim() !== '')) expect(text).toContain(line.trimEnd());
    }
});

test('a page in full', () => {
    expect(ruleHelpText(ruleHelp('unit-missing')!, 120)).toBe([
        'unit-missing (language)', 'A figure without its unit', '', '37 could be inches, millimetres or anything else.', '',
        'Usually an error; cannot be waived: the text has to be readable; a fix is offered where the meaning is plain.', '', 'Wrong', '    top 37', '', 'Right', '    top 37"', '',
    ].join('\n'));
});

test('sources are cited with edition and clause, and memory is owned up to', () => {
    const help = { ...ruleHelp('unit-missing')!, family: 'heater', isWaivable: false, fixes: 'review', bad: '', good: '```\nx', sources: [
        { kind: 'standard', document: 'Code', edition: '2020', clause: '4.2', text: 'no nearer', fromMemory: true }, { kind: 'practice', text: 'usual' }, { kind: 'geometry', text: 'It has to fit.' },
    ] } as const;
    expect(ruleHelpText(help, 200)).toContain('Sources\n- Code 2020, 4.2: no nearer (figure from memory of the document)\n- common practice, no source: usual\n- It has to fit.\n');
    expect(ruleHelpText(help, 200)).toContain('can never be waived; a fix is offered that changes the design');
    expect(ruleHelpText(help, 200)).not.toContain('Wrong');
    // the fence is longer than the longest run in the example
    expect(ruleHelpMarkdown(help)).toContain('````hotroom\n```\nx\n````');
});

test.each(['nothing', '', 'constructor', '__proto__'])('%j is no rule', id => { expect(ruleHelp(id)).toBeUndefined(); });
