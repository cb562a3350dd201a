import type { FileGiven } from './orders.ts';

/** Every file of what was dropped, folders gone through to the bottom, named by its path. */
export async function droppedFiles(transfer: DataTransfer): Promise<FileGiven[]> {
  const entries = [...transfer.items]
    .map((item) => item.webkitGetAsEntry())
    .filter((entry) => entry !== null);
  if (entries.length === 0) return [...transfer.files].map((file) => ({ name: file.name, file }));
  return (await Promise.all(entries.map(filesOf))).flat();
}

/** Files chosen in a dialog, with the path below the chosen folder where there is one. */
export function chosenFiles(files: FileList): FileGiven[] {
  return [...files].map((file) => ({ name: file.webkitRelativePath || file.name, file }));
}

async function filesOf(entry: FileSystemEntry): Promise<FileGiven[]> {
  const name = entry.fullPath.replace(/^\//, '');
  if (isFile(entry)) {
    const file = await new Promise<File | null>((resolve) => entry.file(resolve, () => resolve(null)));
    return [{ name, file }];
  }
  if (!isFolder(entry)) return [];
  const reader = entry.createReader();
  const found: FileSystemEntry[] = [];
  // A reader gives a folder in parts, and an empty part when there is no more.
  for (;;) {
    const part = await new Promise<FileSystemEntry[]>((resolve, reject) =>
      reader.readEntries(resolve, reject),
    );
    if (part.length === 0) break;
    found.push(...part);
  }
  return (await Promise.all(found.map(filesOf))).flat();
}

const isFile = (entry: FileSystemEntry): entry is FileSystemFileEntry => entry.isFile;
const isFolder = (entry: FileSystemEntry): entry is FileSystemDirectoryEntry => entry.isDirectory;
