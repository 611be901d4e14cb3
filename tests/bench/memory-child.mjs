/** Run by measure-memory.mjs in a process of its own: builds jobs in the server's services and prints bytes of heap for each. */
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { sampleJobs } from './texts.mjs';

const product = await import(pathToFileURL(process.argv[2]).href);
const { URI, EmptyFileSystem } = product;
const { shared } = product.createServerServices(EmptyFileSystem, {});
shared.workspace.Imports.roots = [URI.parse('memory:/jobs')];
const { LangiumDocumentFactory, LangiumDocuments, DocumentBuilder } = shared.workspace;
const add = (name, text) => {
    const document = LangiumDocumentFactory.fromString(text, URI.parse(`memory:/jobs/${name}`));
    LangiumDocuments.addDocument(document);
    return document;
};
const catalogues = new URL('../../examples/', import.meta.url);
const build = documents => DocumentBuilder.build(documents, { validation: true });
await build(product.catalogueUses.map(name => add(name, readFileSync(new URL(name, catalogues), 'utf8'))));

const texts = sampleJobs(product, 1000, 1000).map(job => product.writeFile(product.fileOf(job), 'in', 'compact'));
const settle = async () => {
    for (let i = 0; i < 4; i++) { globalThis.gc(); await new Promise(resolve => { setTimeout(resolve, 20); }); }
    return process.memoryUsage().heapUsed;
};
const addSome = async (from, to) => { for (let i = from; i < to; i += 50) await build(texts.slice(i, Math.min(to, i + 50)).map((text, j) => add(`job-${i + j}.hotroom`, text))); };
await addSome(0, 100);
const before = await settle();
await addSome(100, 1000);
const after = await settle();
console.log(JSON.stringify({ bytesPerJob: (after - before) / 900, heap: after }));
