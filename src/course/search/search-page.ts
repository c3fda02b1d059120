import MiniSearch from 'minisearch';
import type { SearchEntry } from './entries.ts';

/** Finds words in the whole course as they are typed; the index is fetched at the first of them. */
const field = document.querySelector<HTMLInputElement>('#search-words')!;
const list = document.querySelector<HTMLOListElement>('#search-found')!;
const told = document.querySelector<HTMLElement>('#search-told')!;
const root = document.documentElement.dataset.root ?? '/';

let opening: Promise<{ index: MiniSearch<SearchEntry>; entries: SearchEntry[] }> | null = null;

async function open() {
  const entries = (await (await fetch(`${root}search.json`)).json()) as SearchEntry[];
  const index = new MiniSearch<SearchEntry>({
    fields: ['title', 'text'],
    searchOptions: { boost: { title: 3 }, prefix: true, fuzzy: 0.15, combineWith: 'AND' },
  });
  index.addAll(entries);
  return { index, entries };
}

async function search(): Promise<void> {
  const words = field.value.trim();
  opening ??= open();
  const { index, entries } = await opening;
  if (words !== field.value.trim()) return;
  const found = words === '' ? [] : index.search(words).slice(0, 30);
  list.replaceChildren(...found.map(({ id }) => item(entries[id as number]!)));
  told.textContent =
    words === '' ? '' : found.length === 0 ? `Nothing is found for “${words}”.` : `${found.length} found.`;
}

function item({ title, address, text }: SearchEntry): HTMLLIElement {
  const place = document.createElement('li');
  const link = document.createElement('a');
  link.href = `${root}${address.slice(1).replace(/\/(#|$)/, '/index.html$1')}`;
  link.textContent = title;
  const start = document.createElement('p');
  start.textContent = text.length > 160 ? `${text.slice(0, 160).replace(/\s\S*$/, '')} …` : text;
  place.append(link, start);
  return place;
}

field.addEventListener('input', () => {
  search().catch(() => {
    told.textContent = 'The list of words could not be loaded. The contents name every lesson.';
  });
});
