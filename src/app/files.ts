import { isRefusal } from '../document/command.ts';
import type { OctavoDocument } from '../document/types.ts';
import { writeFile, readFile } from '../exchange/file.ts';
import { fileName, handOut } from './hand-out.ts';

/** Hands the document to the browser as a file of our own format. */
export function saveToFile(document: OctavoDocument): void {
  offerFile(writeFile(document), `${fileName(document.title)}.octavo.json`);
}

/** Hands a text to the browser as a file. */
export function offerFile(text: string, name: string): void {
  handOut(text, name, 'application/json');
}

/** Lets the reader choose a file; a sentence where it is no document of ours, nothing where none was chosen. */
export async function openFromFile(): Promise<OctavoDocument | string | undefined> {
  const file = await chooseFile();
  if (!file) return undefined;
  const document = readFile(await file.text());
  return isRefusal(document) ? `${file.name}: ${document.refused}` : document;
}

/** Lets the reader choose a file; nothing where none was chosen. */
export function chooseFile(): Promise<File | undefined> {
  const input = window.document.createElement('input');
  input.type = 'file';
  input.accept = '.json,application/json';
  return new Promise((resolve) => {
    input.addEventListener('change', () => resolve(input.files?.[0]));
    input.addEventListener('cancel', () => resolve(undefined));
    input.click();
  });
}
