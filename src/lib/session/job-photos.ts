import type { StoredPhoto } from '../notebook/photo-store.ts';
import type { Photo } from '../notebook/records.ts';
import type { Notebook } from '../notebook/store.ts';

interface Parts {
  readonly notebook: Notebook;
  readonly now: () => number;
  readonly named: () => readonly Photo[];
  /** names these in the job's record */
  readonly name: (photos: Photo[]) => void;
}

/** The pictures of a job: their contents in a store of their own, their names in the record. */
export class JobPhotos {
  readonly #parts: Parts;

  constructor(parts: Parts) {
    this.#parts = parts;
  }

  /** Keeps a picture; only then does the record name it. */
  async add(photo: StoredPhoto, shows: string): Promise<void> {
    const { notebook, named, now } = this.#parts;
    await notebook.savePhoto(photo);
    const others = named().filter(({ id }) => id !== photo.id);
    this.set([...others, { id: photo.id, shows, at: now() }]);
  }

  /** What is no longer named is kept until the notebook is next put in order, so that it can come back. */
  set(photos: readonly Photo[]): void {
    this.#parts.name([...photos]);
  }

  content(id: string): Promise<StoredPhoto | null> {
    return this.#parts.notebook.photo(id);
  }
}
