import { jobModels, type ModelOptions } from '../../language/src/exports/job-models.js';
import type { ExportedModel } from '../../language/src/exports/export-job.js';
import type { JobModel } from '../../language/src/exports/model-schema.js';
import { lowerFile } from '../../language/src/model/file.js';
import { exampleText, TestWorkspace } from '../support/workspace.js';

const catalogues = ['catalogue/skerry.hotroom', 'catalogue/heaters.hotroom', 'house/rules.hotroom'] as const;

/** Models of many texts; the catalogues are read once. */
export class ModelReader {
    private readonly workspace = new TestWorkspace();
    private isOpen = false;
    private count = 0;

    /** @param catalogue changes the text of the catalogues before they are read */
    constructor(private readonly catalogue: (text: string, path: string) => string = text => text) {}

    async exported(text: string, path = `job-${++this.count}.hotroom`, options: ModelOptions = {}): Promise<readonly ExportedModel[]> {
        if (!this.isOpen) {
            this.isOpen = true;
            for (const one of catalogues) this.workspace.add(one, this.catalogue(exampleText(one), one));
            await this.workspace.build();
        }
        const document = this.workspace.add(path, text);
        await this.workspace.build(document);
        try {
            return jobModels(lowerFile(document, this.workspace.hotroom), options);
        } finally {
            this.workspace.remove(document);
        }
    }
    async models(text: string, path?: string, options?: ModelOptions): Promise<readonly JobModel[]> {
        return (await this.exported(text, path, options)).map(({ model }) => model);
    }
}
