import YAML from 'yaml';
import { interleaved, median } from './figures.mjs';
import { readWithChevrotain } from './peers/chevrotain-reader.mjs';
import { filePair, lineCount, sampleJobs } from './texts.mjs';

/** Text to tree, in this process: ours with its tidying, concrete tree and places against Chevrotain alone and against the `yaml` package on the same content. */
export async function measureParse({ product }) {
    const { parser } = product.createHotroomServices().hotroom;
    const results = [];
    for (const { jobs, rounds, warmUp } of [{ jobs: 1, rounds: 150, warmUp: 150 }, { jobs: 10, rounds: 30, warmUp: 10 }, { jobs: 100, rounds: 7, warmUp: 2 }]) {
        const { ours, yaml } = filePair(product, sampleJobs(product, jobs));
        const times = await interleaved({
            ours: () => { const { parserErrors } = parser.LangiumParser.parse(ours); if (parserErrors.length > 0) throw new Error('Our parser refuses the text'); },
            chevrotain: () => { readWithChevrotain(ours); },
            yaml: () => { const { errors } = YAML.parseDocument(yaml); if (errors.length > 0) throw new Error(`yaml refuses the text: ${errors[0].message}`); },
        }, { rounds, warmUp });
        results.push({ lines: lineCount(ours), ours: median(times.ours), chevrotain: median(times.chevrotain), yaml: median(times.yaml) });
    }
    return results;
}
