import type { LangiumDocument } from 'langium';
import type { Analysis, JobAnalysis } from '../../language/src/analyze.js';
import { exampleText, TestWorkspace } from '../support/workspace.js';
import { writeFile, type FileText, type WrittenUnit } from './job-text.js';

/** One workspace for many random jobs: the catalogues are read once, and each job is a document that goes when it has been looked at. */
export class JobReader {
    private readonly workspace = new TestWorkspace();
    private count = 0;

    /** @param catalogue changes the text of the catalogues before they are read */
    constructor(private readonly catalogue: (text: string) => string = text => text) {}

    async analyse(text: string): Promise<Analysis> {
        const { LangiumDocuments } = this.workspace.shared.workspace;
        if (this.count++ === 0) {
            for (const path of ['catalogue/skerry.hotroom', 'catalogue/heaters.hotroom']) this.workspace.add(path, this.catalogue(exampleText(path)));
            await this.workspace.build();
        }
        const document: LangiumDocument = this.workspace.add(`job-${this.count}.hotroom`, text);
        await this.workspace.build(document);
        const analysis = this.workspace.analyze(document);
        // Everything a lazy result may still ask the document for is asked now.
        analysis.jobs.forEach(job => job.results.parts);
        LangiumDocuments.deleteDocument(document.uri);
        return analysis;
    }
    async job(file: FileText, unit: WrittenUnit = 'in'): Promise<JobAnalysis> {
        const [job] = (await this.analyse(writeFile(file, unit))).jobs;
        if (!job) throw new Error('The text holds no job');
        return job;
    }
}
