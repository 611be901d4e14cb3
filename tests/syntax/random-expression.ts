import fc from 'fast-check';

/**
 * Texts of expressions as the grammar describes them, level by level, so that every one is sound: figures, names, calls, brackets, products, sums, sizes,
 * ranges, comparisons, logic and choices in each other.
 */
const literal = fc.constantFrom('3', '12', '34 3/4"', '7\'6"', '34-3/4"', '2210 mm', '6 kW', '240 V', '68 degF', '255.8 ft3', '0', '2027-03-01', '"a text"');
const name = fc.constantFrom('w', 'aisle', 'left', 'yes', 'upper.top', 'room.inside.volume', 'bench.top', 'stove.model.power', 'head-room');
const callee = fc.constantFrom('min', 'max', 'sum', 'count', 'any', 'all', 'not', 'round_down', 'round_up', 'opposite', 'unheard_of');

/** Mostly one of a level, sometimes several with an operator between each two. */
const joined = (one: fc.Arbitrary<string>, operators: readonly string[], most = 3): fc.Arbitrary<string> => fc.oneof({ weight: 4, arbitrary: one }, {
    weight: 1, arbitrary: fc.tuple(one, fc.array(fc.tuple(fc.constantFrom(...operators), one), { minLength: 1, maxLength: most - 1 })).map(([first, rest]) => [first, ...rest.map(([operator, next]) => `${operator} ${next}`)].join(' ')),
});

function expression(depth: number): fc.Arbitrary<string> {
    const inner = depth > 0 ? expression(depth - 1) : undefined;
    const atom = inner ? fc.oneof({ weight: 3, arbitrary: literal }, { weight: 3, arbitrary: name }, { weight: 1, arbitrary: inner.map(text => `(${text})`) },
        { weight: 1, arbitrary: fc.tuple(callee, fc.array(inner, { minLength: 1, maxLength: 3 })).map(([of, args]) => `${of}(${args.join(', ')})`) }) : fc.oneof(literal, name);
    const sum = joined(joined(atom, ['*', '/']), ['+', '-']);
    const range = fc.oneof({ weight: 8, arbitrary: sum }, { weight: 1, arbitrary: joined(sum, ['x'], 2) }, { weight: 1, arbitrary: joined(sum, ['to'], 2) });
    // A sign stands where a value begins, and there only.
    const comparison = fc.tuple(fc.constantFrom('', '', '', '', '', '-'), name, joined(range, ['=', '!=', '<', '<=', '>', '>='], 2)).map(([sign, operand, text]) => sign === '' ? text : `-${operand} * ${text}`);
    // Behind a comparison a choice may stand, or a figure with its sign.
    const compared = inner ? fc.tuple(sum, fc.constantFrom('=', '<', '>='), fc.oneof(sum.map(text => `-(${text})`), fc.tuple(inner, inner, inner).map(([condition, yes, no]) => `if (${condition}) then (${yes}) else (${no})`)))
        .map(([left, operator, right]) => `${left} ${operator} ${right}`) : comparison;
    const either = joined(joined(fc.oneof({ weight: 5, arbitrary: comparison }, { weight: 1, arbitrary: compared }), ['and']), ['or']);
    return inner ? fc.oneof({ weight: 3, arbitrary: either }, { weight: 1, arbitrary: fc.tuple(either, inner, inner).map(([condition, yes, no]) => `if ${condition} then ${yes} else ${no}`) }) : either;
}
export const randomExpression: fc.Arbitrary<string> = expression(3).filter(text => text.length < 600);

/** The expression wherever one may stand: in a property, a `let`, a house rule, a value of a series. */
export const standing = (text: string): readonly string[] => [
    `job a { room { width ${text} } }`, `let a = ${text}\n`, `rule r { require ${text}; because "x" }`, `job a is s(${text}, w = 3") { bench b { top ${text}; when ${text} } }`, `heater h on front { model ${text} }`,
];
