import { mkdirSync, writeFileSync } from 'node:fs';
import { createEngine } from '../../src/engine/direct.ts';
import { page } from './page.ts';

const engine = createEngine();
mkdirSync('dist', { recursive: true });
writeFileSync('dist/reference.md', await page(engine));
engine.dispose();
