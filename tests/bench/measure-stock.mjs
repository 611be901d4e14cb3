import { median } from './figures.mjs';

/**
 * Stock plans of random jobs: each stock of each job, and orders of several rooms put together, planned with the real solver.
 * Small is at most 150 pieces of one stock.
 */
export async function measureStock(prepared) {
    const { product } = prepared;
    const requests = await requestsOf(prepared);
    const solver = new product.HighsInProcess(`${prepared.folder}/highs.wasm`);
    await solver.warm();
    await product.planStock(requests.small[0].request, solver);
    const run = async list => {
        const results = [];
        for (const { pieces, request } of list) {
            const start = performance.now();
            const plan = await product.planStock(request, solver);
            results.push({ pieces, took: performance.now() - start, gap: plan.proof === 'proven' ? 0 : plan.proof.gap });
        }
        return results;
    };
    return { small: await run(requests.small), large: await run(requests.large) };
}

export const summary = (results, limitMs) => ({
    count: results.length,
    proven: results.filter(({ gap }) => gap === 0).length,
    within: results.filter(({ took }) => took <= limitMs).length,
    provenWithin: results.filter(({ took, gap }) => gap === 0 && took <= limitMs).length,
    median: median(results.map(({ took }) => took)),
    slowest: Math.max(...results.map(({ took }) => took)),
    worstGap: Math.max(...results.map(({ gap }) => gap)),
    pieces: median(results.map(({ pieces }) => pieces)),
});

/** Requests of single jobs (small) and of several jobs cut together (large). */
async function requestsOf({ product, readExample }) {
    const { shared, hotroom } = product.createHotroomServices();
    const { LangiumDocumentFactory, LangiumDocuments, DocumentBuilder } = shared.workspace;
    shared.workspace.Imports.roots = [product.URI.parse('memory:/jobs')];
    const add = (name, text) => {
        const document = LangiumDocumentFactory.fromString(text, product.URI.parse(`memory:/jobs/${name}`));
        LangiumDocuments.addDocument(document);
        return document;
    };
    for (const name of product.catalogueUses) add(name, readExample(name));
    const jobs = product.fc.sample(product.randomJob, { seed: 8, numRuns: 120 });
    const documents = jobs.map(({ job }, i) => add(`job-${i}.hotroom`, product.writeFile(product.fileOf(job))));
    await DocumentBuilder.build(LangiumDocuments.all.toArray());
    const byStock = new Map();
    for (const document of documents) {
        const [{ job, results }] = product.analyze(document, hotroom).jobs;
        for (const { stock, request } of product.stockTasks(results.parts, product.stockOffers(job))) if (request) byStock.set(stock, [...byStock.get(stock) ?? [], request]);
    }
    const count = ({ pieces }) => pieces.reduce((total, piece) => total + piece.count, 0);
    const together = requests => ({ ...requests[0], pieces: requests.flatMap(({ pieces }, i) => pieces.map(piece => ({ ...piece, mark: `${i + 1}/${piece.mark}` }))) });
    const wanted = (request, least, most) => { const pieces = count(request); return pieces >= least && pieces <= most ? [{ pieces, request }] : []; };
    const single = [...byStock.values()].flat();
    const [small, large] = [[], []];
    for (const requests of byStock.values()) {
        for (let i = 0; i + 6 <= requests.length && i < 60; i += 6) small.push(...wanted(together(requests.slice(i, i + 6)), 30, 150));
        for (let i = 0; i + 40 <= requests.length; i += 40) large.push(...wanted(together(requests.slice(i, i + 40)), 151, 800));
    }
    return { small: [...single.slice(0, 40).flatMap(request => wanted(request, 1, 150)), ...small].slice(0, 90), large: large.slice(0, 10) };
}
