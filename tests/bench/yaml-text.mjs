/** The same jobs as YAML text, line for line, and the JSON Schema that makes a YAML server check them: what a team without this language would write. */

/** @param file the tree of `tests/properties/job-text.ts` @param product the bundled product, for its writers */
export function writeYaml(file, product) {
    const lines = file.uses.length > 0 ? ['use:', ...file.uses.map(path => `  - ${path}`), ''] : [];
    for (const job of file.jobs) lines.push(...blockLines(job, '', product), '');
    return lines.join('\n');
}

function blockLines(block, indent, product) {
    const [head, more] = headerOf(block, product);
    const facts = [...more, ...block.body.filter(item => !product.isBlockText(item)).map(item => [item.key, scalar(product.writeValue(item.value, 'in'))])];
    if (product.isSmall(block)) return [`${indent}${head}: { ${facts.map(([key, value]) => `${key}: ${inFlow(value)}`).join(', ')} }`];
    return [
        `${indent}${head}:`, ...facts.map(([key, value]) => `${indent}  ${key}: ${value}`),
        ...block.body.filter(product.isBlockText).flatMap(item => blockLines(item, `${indent}  `, product)),
    ];
}

/** Kind and name are the key; title and walls become facts. */
function headerOf({ header }, product) {
    const words = header.map(piece => product.writeValue([piece], 'in'));
    const on = words.indexOf('on');
    const walls = on < 0 ? [] : [['on', scalar(words.slice(on + 1).join(' ').replaceAll(' ,', ','))]];
    const own = on < 0 ? words : words.slice(0, on);
    const title = own.filter(word => word.startsWith('"')).map(word => ['title', word]);
    return [own.filter(word => !word.startsWith('"')).join(' '), [...title, ...walls]];
}

const scalar = text => /^[A-Za-z0-9][^#:{}[\]&*!|>%@`]*$/.test(text) || /^"[^"\\]*"$/.test(text) ? text : `'${text}'`;
const inFlow = value => value.includes(',') ? `'${value.replaceAll('\'', '\'\'')}'` : value;

/** A JSON Schema of the vocabulary: every block with its facts, and none else. */
export function schemaOf(vocabulary) {
    const inside = parent => ({
        type: 'object', additionalProperties: false,
        properties: parent === 'file' ? { use: { type: 'array', items: { type: 'string' } } } : {
            title: { type: 'string' }, on: { type: 'string' },
            ...Object.fromEntries([...vocabulary.propertiesOf(parent)].map(([key, { property }]) => [key, valueSchema(property)])),
        },
        patternProperties: Object.fromEntries(vocabulary.blocksIn(parent).map(kind => [`^${kind}( [A-Za-z_][A-Za-z0-9_-]*)?$`, { $ref: `#/definitions/${kind}` }])),
    });
    const kinds = new Set();
    const visit = parent => { for (const kind of vocabulary.blocksIn(parent)) if (!kinds.has(kind)) { kinds.add(kind); visit(kind); } };
    visit('file');
    return { $schema: 'http://json-schema.org/draft-07/schema#', ...inside('file'), definitions: Object.fromEntries([...kinds].map(kind => [kind, inside(kind)])) };
}

/** As strict as a schema can be without knowing units: words are listed, figures are a pattern, names and texts are free. */
function valueSchema({ type, doc }) {
    const about = { description: doc };
    if (type.kind === 'choice') return { ...about, enum: [...type.choices] };
    if (type.kind === 'length') return { ...about, type: 'string', pattern: '^[0-9].*("|\'|mm|cm|m|in|ft)$' };
    if (type.kind === 'flag') return { ...about, enum: ['yes', 'no', true, false] };
    return { ...about, type: ['string', 'number'] };
}
