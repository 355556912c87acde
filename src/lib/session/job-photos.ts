import type { StoredPhoto } from '../notebook/photo-store.ts';
import type { Photo } from '../notebook/records.ts';
import type { Notebook } from '../notebook/store.ts';

interface Parts {
  readonly notebook: Notebook;
  readonly now: () => number;
  readonly named: () => readonly Photo[];
  /** writes these pictures into the job's record */
  readonly name: (photos: Photo[]) => void;
}

/** The pictures of a job. Their contents are stored separately; the record holds their names. */
export class JobPhotos {
  readonly #parts: Parts;

  constructor(parts: Parts) {
    this.#parts = parts;
  }

  /** Stores a picture, and only then adds it to the record. */
  async add(photo: StoredPhoto, shows: string): Promise<void> {
    const { notebook, named, now } = this.#parts;
    await notebook.savePhoto(photo);
    const others = named().filter(({ id }) => id !== photo.id);
    this.set([...others, { id: photo.id, shows, at: now() }]);
  }

  /**
   * Changes the list in the record. Removed pictures stay stored until the next cleaning up, so that they can
   * come back.
   */
  set(photos: readonly Photo[]): void {
    this.#parts.name([...photos]);
  }

  content(id: string): Promise<StoredPhoto | null> {
    return this.#parts.notebook.photo(id);
  }
}
