import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { PublishedRow } from './table.js';

/** A row with the topic it belongs to: the name of the file it stands in. */
export interface TopicRow extends PublishedRow { readonly topic: string }

const tables = readdirSync(fileURLToPath(new URL('./', import.meta.url))).filter(name => name.endsWith('.ts') && !name.endsWith('.test.ts') && !['all-rows.ts', 'table.ts'].includes(name)).sort();

/** Every row of every table in this folder, whatever its table is called. */
export async function allRows(): Promise<readonly TopicRow[]> {
    const found = await Promise.all(tables.map(async name => {
        const exported: unknown[] = Object.values(await import(`./${name.replace(/\.ts$/, '.js')}`) as Record<string, unknown>);
        return exported.flatMap(value => Array.isArray(value) ? value as unknown[] : [value]).filter(isRow).map(row => ({ ...row, topic: name.replace(/\.ts$/, '') }));
    }));
    return found.flat();
}

const isRow = (value: unknown): value is PublishedRow =>
    typeof value === 'object' && value !== null && 'published' in value && 'ours' in value && 'checks' in value && typeof value.ours === 'function';
