/**
 * The highlighting grammar of editors, made from the vocabulary and from the literal expressions of the grammar. Langium's own generator is not
 * used: to it every `34"` opens a text.
 */

/** Literal expressions of a Langium grammar by the names of their terminals. */
export function terminalsOf(grammar) {
    return Object.fromEntries([...grammar.matchAll(/^(?:hidden )?terminal (\w+): \/(.*)\/;$/gm)].map(([, name, expression]) => [name, expression.replace(/\\u([0-9a-f]{4})/gi, '\\x{$1}')]));
}

/** Expression for any of some words, as whole words: a hyphen belongs to a word. */
const anyOf = words => `(?<![\\w-])(?:${[...words].sort().join('|')})(?![\\w-])`;
const one = (words, groups = '') => `(?:${[...words].sort().join('|')})(?![\\w-])${groups}`;

/**
 * @param vocabulary the table of blocks
 * @param functions names of the functions
 * @param terminals expressions from `terminalsOf`
 * @returns a TextMate grammar, ready to be written as JSON
 */
export function textmateGrammar(vocabulary, functions, terminals) {
    const blocks = Object.keys(vocabulary);
    const properties = new Set(Object.values(vocabulary).flatMap(block => Object.entries(block.properties).flatMap(([key, { aliases = [] }]) => [key, ...aliases])));
    const operators = ['and', 'else', 'if', 'or', 'then', 'to', 'x'];
    const walls = ['front', 'left', 'back', 'right'];
    const choices = new Set(Object.values(vocabulary).flatMap(block => Object.values(block.properties).flatMap(({ type }) => type.choices ?? [])));
    for (const word of [...walls, 'per', ...operators, ...blocks]) choices.delete(word);
    const named = blocks.filter(kind => vocabulary[kind].name !== 'none');
    const name = terminals.ID;
    // A fact begins a line, or follows a semicolon or a brace.
    const start = '(?:^|(?<=[;{}]))[ \\t]*';
    // The header of a block has its brace on the same line; without it the same word may be a fact.
    const header = '(?=[^;}]*(?:\\{|[ \\t]is[ \\t]))';
    const match = (scope, expression, captures) => ({ ...(scope && { name: `${scope}.hotroom` }), match: expression, ...(captures && { captures: Object.fromEntries(Object.entries(captures).map(([group, of]) => [group, { name: `${of}.hotroom` }])) }) });
    return {
        name: 'Hotroom',
        scopeName: 'source.hotroom',
        fileTypes: ['hotroom'],
        patterns: [
            match('comment.line.double-slash', terminals.COMMENT),
            match('constant.numeric.date', terminals.DATE),
            match('constant.numeric.length', terminals.LENGTH),
            match('constant.numeric.quantity', terminals.QUANTITY),
            match('constant.numeric', terminals.NUMBER),
            {
                name: 'string.quoted.double.hotroom', begin: '"', end: '"|$',
                patterns: [match('constant.character.escape', '\\\\.')],
            },
            match(undefined, `${start}(use)(?![\\w-])`, { 1: 'keyword.control.import' }),
            match(undefined, `${start}(let)(?![\\w-])(?:[ \\t]+(${name}))?`, { 1: 'keyword.other.statement', 2: 'entity.name.type' }),
            match(undefined, `${start}(waive)(?![\\w-])(?:[ \\t]+(${name}))?`, { 1: 'keyword.other.statement', 2: 'variable.other' }),
            match(undefined, `${start}(${one(named)})${header}[ \\t]+(?!on[ \\t])(${name})`, { 1: 'keyword.other.block', 2: 'entity.name.type' }),
            match(undefined, `${start}(${one(blocks)})${header}`, { 1: 'keyword.other.block' }),
            match(undefined, `${start}(${one(properties)})`, { 1: 'support.type.property-name' }),
            match(undefined, `${start}(${one(blocks)})`, { 1: 'keyword.other.block' }),
            match(undefined, `(?<=[ \\t])(is)[ \\t]+(${name})`, { 1: 'keyword.operator.word', 2: 'entity.other.inherited-class' }),
            match('support.function', `(?<![\\w.-])(?:${[...functions].sort().join('|')})(?=\\()`),
            match('variable.other.member', `(?<=[\\w]\\.)${name}`),
            match('variable.other', `${name}(?=\\.)`),
            match('constant.language.wall', anyOf(walls)),
            match('keyword.operator.word', anyOf(['on', 'from', 'per', 'is', 'because', 'by', 'until', ...operators])),
            match('support.class', anyOf(blocks)),
            match('constant.language', anyOf(choices)),
            match('variable.other', name),
            match('keyword.operator.comparison', '[<>]=?|!?='),
            match('keyword.operator.arithmetic', '[-+*/]'),
            match('punctuation.separator', '[,;]'),
            match('punctuation.accessor', '\\.'),
            match('punctuation.section.group', '[()]'),
            match('punctuation.section.block', '[{}]'),
        ],
    };
}
