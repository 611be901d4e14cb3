/**
 * A value of the product as plain data that can be compared: places in the text, units as written and blocks of the model are left out or become
 * names, and what a value won over is, because they are what a test changes on purpose; everything computed stays.
 */
export function canonical(value: unknown): unknown {
    if (typeof value === 'bigint') return `${value}n`;
    if (typeof value !== 'object' || value === null) return value;
    if (value instanceof Set) return [...value as Set<unknown>].map(canonical).sort();
    if (value instanceof Map) return Object.fromEntries([...value as Map<unknown, unknown>].map(([key, item]) => [String(key), canonical(item)] as const).sort(([a], [b]) => a < b ? -1 : 1));
    if (Array.isArray(value)) return value.map(canonical);
    const record = value as Readonly<Record<string, unknown>>;
    if ('uri' in record && 'start' in record && 'end' in record) return undefined;
    if ('values' in record && 'written' in record && 'children' in record) return `block ${String(record.kind)} ${nameOf(record)}`;
    if ('block' in record && 'name' in record && 'span' in record) return `link to ${String(record.name)}`;
    const keys = Object.keys(record).filter(key => !('span' in record && (key === 'unit' || key === 'wonOver'))).sort();
    return Object.fromEntries(keys.map(key => [key, canonical(record[key])] as const).filter(([, item]) => item !== undefined));
}

const nameOf = ({ name }: Readonly<Record<string, unknown>>): string => typeof name === 'object' && name !== null && 'value' in name ? String(name.value) : '';

/** A block of the model with all in it, as plain data without places; facts by key and blocks inside it by kind and name, whatever their order. */
export function canonicalBlock(block: { readonly kind: string; readonly values: object; readonly children: readonly unknown[] }): unknown {
    const record = block as unknown as Readonly<Record<string, unknown>> & { readonly children: readonly { readonly kind: string; readonly values: object; readonly children: readonly unknown[] }[] };
    const inside = record.children.map(child => ({ key: `${child.kind} ${nameOf(child as never)}`, value: canonicalBlock(child) }));
    return {
        kind: record.kind, name: nameOf(record), title: canonical(record.title), walls: canonical(record.walls), values: canonical(record.values), written: canonical(record.written), isWhole: record.isWhole,
        children: inside.sort((a, b) => a.key < b.key ? -1 : a.key > b.key ? 1 : 0),
    };
}

/** As text, to sort and compare by. */
export const asText = (value: unknown): string => JSON.stringify(canonical(value));
