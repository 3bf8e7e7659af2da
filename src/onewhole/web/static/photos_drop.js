// Pictures that are dropped on a page, also whole folders of them, go into a form that sends them.

/** @param {FileSystemDirectoryEntry} folder @returns {Promise<FileSystemEntry[]>} */
async function entriesOf(folder) {
  const reader = folder.createReader();
  /** @type {FileSystemEntry[]} */
  const found = [];
  for (;;) {
    /** @type {FileSystemEntry[]} */
    const some = await new Promise((take, fail) => { reader.readEntries(take, fail); });
    if (!some.length) return found.sort((one, other) => one.name.localeCompare(other.name));
    found.push(...some);
  }
}

/** @param {FileSystemEntry} entry @returns {Promise<File[]>} */
async function filesOf(entry) {
  if (entry.name.startsWith(".")) return [];
  if (entry.isDirectory) {
    const inside = await entriesOf(/** @type {FileSystemDirectoryEntry} */ (entry));
    return (await Promise.all(inside.map(filesOf))).flat();
  }
  return [await new Promise((take, fail) => { /** @type {FileSystemFileEntry} */ (entry).file(take, fail); })];
}

/** @param {DataTransfer} dropped @returns {Promise<File[]>} */
async function droppedFiles(dropped) {
  const entries = [...dropped.items].flatMap((item) => item.webkitGetAsEntry?.() ?? []);
  if (!entries.length) return [...dropped.files];
  return (await Promise.all(entries.map(filesOf))).flat();
}

/** @param {DragEvent} event */
const hasFiles = (event) => Boolean(event.dataTransfer?.types.includes("Files"));

/**
 * Send pictures that are dropped anywhere on the page by a form with a field for files.
 * @param {HTMLFormElement} form
 * @param {HTMLInputElement} field
 * @param {() => Promise<boolean>} [ready] whether the page may be left now
 */
export function listenToDrops(form, field, ready = async () => true) {
  document.addEventListener("dragover", (event) => { if (hasFiles(event)) event.preventDefault(); });
  document.addEventListener("drop", async (event) => {
    if (!hasFiles(event) || !event.dataTransfer) return;
    event.preventDefault();
    const files = await droppedFiles(event.dataTransfer);
    if (!files.length || !(await ready())) return;
    const held = new DataTransfer();
    for (const file of files) held.items.add(file);
    field.files = held.files;
    form.requestSubmit();
  });
}
